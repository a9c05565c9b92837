#pragma once

#include <filesystem>

namespace app {

// Where what the program keeps for its user lies: SALLOW_USER, else the folder "sallow" in the
// user's folder for data of programs. It may not be there yet.
std::filesystem::path userFolder();

} // namespace app
