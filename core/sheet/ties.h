#pragma once

#include "core/sheet/notedrawing.h"

#include <vector>

namespace sheet {

// The bars of one staff on one line, in order.
struct StaffLine {
    std::vector<SetBar> bars;
    std::vector<BarPlace> places;
    std::vector<tune::BarIndex> indices;
};

// Ties curve away from the stem; in chords those of the upper half curve up and the others down
// [gould11]. A tie over the end of the line is drawn to the line's end, and from the
// line's beginning into notes that `tiedOver` names.
void drawTies(Pen& pen, StaffLine const& line, std::vector<music::Pitch> const& tiedOver);

} // namespace sheet
