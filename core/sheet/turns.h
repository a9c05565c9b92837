#pragma once

#include "core/sheet/score.h"

namespace sheet {

// Seconds for which one hand has nothing to pluck at the end of a line, the longer of both:
// from its last note before this bar to its first from it on, at the tune's tempo. Strings ring
// by themselves, so a hand is free once it has plucked; on a sheet of one staff only the hand
// that plays it is known.
double freeBefore(Score const& score, tune::BarIndex bar);

// Long enough to turn a page and to find the strings again; found by trying, no source.
inline constexpr double enoughToTurn = 1.2;

} // namespace sheet
