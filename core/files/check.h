#pragma once

#include "core/harmony/findkey.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>

namespace files {

// What was read of one tune, as one line of JSON without its line end: the form that
// `check --json` prints, a stable contract described in DEVELOPERS.md. Notes stand in written
// order, ties joined, grace notes left out, lengths as fractions of a whole note; -1 is a rest
// and a list a chord. `found`: key and mode from the notes alone, where they were looked for.
std::string checkLine(tune::Tune const& tune,
                      std::optional<harmony::FoundKey> const& found = std::nullopt);

} // namespace files
