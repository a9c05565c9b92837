#pragma once

#include "core/harp/harp.h"
#include "core/levers/keyfit.h"

#include <string>
#include <vector>

namespace files {

// Ranked keys as JSON: a list of {"key", "mode", "moved_semitones", "possible", "setup", "flips",
// "room_below", "rank", "reason"}; strings in "setup" count from 1, the lowest.
std::string keysJson(harp::Harp const& harp, std::vector<levers::KeyFit> const& fits);

} // namespace files
