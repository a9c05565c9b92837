#pragma once

#include "core/sheet/score.h"
#include "core/sheet/ties.h"

#include <vector>

namespace sheet {

// A slur from one sign of the upper staff to another.
struct SlurSpan {
    struct End {
        tune::BarIndex bar = 0;
        StaffNoteIndex note = 0;
        friend auto operator<=>(End const&, End const&) = default;
    };
    End from;
    End to;
    friend bool operator==(SlurSpan const&, SlurSpan const&) = default;
};

// The slurs of the upper staff, in the order in which they end. One that never ends, or would
// hold one note only or eight bars and more, is none; an end on a rest counts for the note
// beside it.
std::vector<SlurSpan> slurSpans(base::List<tune::BarIndex, PrintedBar> const& bars);

// Slurs on one line, the parts of those that run on from the line before or into the next.
// Below where all stems point up, else above [gould11]; clear of all that the pen has drawn:
// draw them when the notes stand, and on a pen that holds notes only.
void drawSlurs(Pen& pen, StaffLine const& line, std::vector<SlurSpan> const& slurs);

} // namespace sheet
