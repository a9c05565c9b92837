#pragma once

#include "core/harp/harp.h"
#include "core/proposal/keyranking.h"

#include <string>
#include <vector>

namespace files {

// Ranked keys as JSON: a list of {"key", "mode", "moved_semitones", "possible", "setup", "flips",
// "room_below", "rank", "reason", "levers_raised", "notes_lost", "cost", "chords"}; strings in
// "setup" count from 1, the lowest; "cost" in thousandths of a point, null where there is no
// arrangement; "notes_lost" null where more than can be counted would be.
std::string keysJson(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys);

} // namespace files
