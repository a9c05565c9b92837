#pragma once

#include "core/tune/tune.h"

#include <filesystem>
#include <vector>

// Every tune of the ABC files of a folder, by the files' names. `unread` counts on for tunes
// that cannot be read or have no notes, and for files that are no tunebooks.
std::vector<tune::Tune> tunesIn(std::filesystem::path const& folder, int& unread);
