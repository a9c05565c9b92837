#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tune {

// What sends the player elsewhere, or ends the piece: marks of ABC 2.1, section 4.14, and what
// a page says for them.
struct WayMark {
    std::string_view mark;  // "D.S.alfine"
    std::string_view words; // "D.S. al Fine"
};

// From a mark or from words, however they are spelt: "Da Capo", "d.c.", "To Coda".
std::optional<WayMark> wayMark(std::string_view markOrWords);

// The order of bars once a D.C. or D.S. is followed. `order`: as played with their repeats,
// no jump followed. The way back is played without repeats, with the last endings, to the Fine,
// or by way of the coda, or to a hold at the end of a section, or to the end. A mark counts
// after the bar that it stands in; one on the first note of a section stands at the end of the
// bar before. (Common practice, no source.) None where the tune has no jump, more than one, an
// order of parts, or where a bar would never be played.
std::optional<std::vector<BarIndex>> orderWithJump(Tune const& tune,
                                                   std::vector<BarIndex> const& order);

// The first bar with a mark that would send the player back.
std::optional<BarIndex> barOfJump(Tune const& tune);

// Takes such marks and words from a bar that is written out as played.
void dropWayMarks(Bar& bar);

} // namespace tune
