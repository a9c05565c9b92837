#pragma once

#include <optional>
#include <string>
#include <vector>

namespace app {

// Whether the words after the program's name are files for the workbench, or nothing at all.
bool areForWorkbench(std::vector<std::string> const& words);

// Among files for the workbench, a word that is an option and no file: it takes none.
std::optional<std::string> optionAmong(std::vector<std::string> const& words);

// Does what the words ask for without a window; answers the exit status. `program` is the name
// under which it was started.
int runVerb(std::vector<std::string> const& words, char* program);

} // namespace app
