#pragma once

#include "core/harp/harp.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/tuneset.h"

#include <string>
#include <vector>

namespace files {

// Ranked keys as JSON: a list of {"key", "mode", "moved_semitones", "possible", "setup", "flips",
// "room_below", "rank", "reason", "levers_raised", "notes_lost", "cost", "chords"}; strings in
// "setup" count from 1, the lowest; "cost" in thousandths of a point, null where there is no
// arrangement; "notes_lost" null where more than can be counted would be.
std::string keysJson(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys);

// A set as JSON: a list of {"tune", "title", "key", "mode", "moved_semitones", "setup",
// "setup_line", "flips", "changes": [{"string", "up"}], "seconds", "changes_line"} in the order
// of playing; "tune" is its X: number, "changes" are made before it.
std::string setJson(harp::Harp const& harp, std::vector<proposal::Brief> const& briefs,
                    std::vector<levers::SetStep> const& steps);

} // namespace files
