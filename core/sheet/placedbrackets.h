#pragma once

#include "core/sheet/attachments.h"
#include "core/sheet/pen.h"

#include <vector>

namespace sheet {

// The part of one bracket on one line.
struct PlacedBracket {
    double left = 0;
    double right = 0;
    bool opens = true;  // a hook at its left: it does not come in from the line before
    bool closes = true; // a hook at its right
    bool linked = false;
    tune::BarIndex bar = 0;
};

// Outside the fingers, hooks towards the notes. One that is linked to the bracket before begins
// over its end and stands further out.
void drawPlacings(Pen& pen, std::vector<PlacedBracket> const& brackets, FingerSide side);

} // namespace sheet
