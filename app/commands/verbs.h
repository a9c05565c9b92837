#pragma once

#include "app/cli/verb.h"

#include <span>

namespace app {

// The table of verbs, in the order in which --help lists them. A verb is a row here and a function
// in a file of its own.
std::span<Verb const> verbs();

ExitStatus arrange(Call const& call);
ExitStatus batch(Call const& call);
ExitStatus weigh(Call const& call);
ExitStatus keys(Call const& call);
ExitStatus patterns(Call const& call);
ExitStatus handout(Call const& call);
ExitStatus drill(Call const& call);
ExitStatus picture(Call const& call);
ExitStatus check(Call const& call);
ExitStatus tunes(Call const& call);

} // namespace app
