#pragma once

#include "core/sheet/notedrawing.h"

#include <vector>

namespace sheet {

// What is set by the notes once they are drawn, each clear of all that is there already.

// A number at the beam where one beam holds the whole tuplet, else over a bracket [gould11].
void drawTuplets(Pen& pen, SetBar const& bar, BarPlace const& place, int barIndex,
                 std::vector<DrawnBeam> const& beams);

// Articulations at the notehead's side, ornaments, fermatas and signs above the staff. Marks
// that the sheet has no sign for are left out.
void drawMarks(Pen& pen, SetBar const& bar, BarPlace const& place, int barIndex);

enum class FingerSide { Above, Below };

// Fingers outside the staff, the highest note's number on top.
void drawFingers(Pen& pen, SetBar const& bar, BarPlace const& place, int barIndex,
                 FingerSide side);

} // namespace sheet
