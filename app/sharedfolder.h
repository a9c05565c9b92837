#pragma once

#include <filesystem>

namespace app {

// Where the tables of the program lie: the folder named by SALLOW_SHARED, else share/sallow
// beside the installed program, else the checkout it was built from.
std::filesystem::path sharedFolder();

} // namespace app
