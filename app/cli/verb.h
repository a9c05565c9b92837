#pragma once

#include "app/cli/call.h"
#include "app/cli/option.h"
#include "app/exitstatus.h"

#include <string_view>
#include <vector>

namespace app {

// Options that belong together, bound to a call.
using Group = cli::Options (*)(Call&);

// One piece of work without a window: a row of the table in commands/verbs.cpp.
struct Verb {
    std::string_view name;
    std::string_view does; // one phrase, for --help
    std::vector<Group> groups;
    ExitStatus (*run)(Call const&);
    bool draws = false; // pages or widgets, for which Qt has to be started
};

} // namespace app
