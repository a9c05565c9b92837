#pragma once

#include "core/sheet/columns.h"
#include "core/sheet/pen.h"

#include <string>
#include <vector>

namespace sheet {

// One line of music across the page, drawn in staff spaces from the left end of the top line of
// its first staff.
struct System {
    Pen pen;
    double top = 0; // how far it reaches, negative above the staff
    double bottom = 0;
    std::vector<Area> areas; // in spaces
    BarRange range;
    bool beginsPart = false;
    bool easyTurn = false; // at its end a hand is free for long enough
    std::string part; // the first part that begins on it, else empty
};

// Width in spaces of clef, key and (where it is to be shown) meter at a line's beginning, with
// the white before the first note.
double headWidth(SetScore const& score, tune::BarIndex firstBar);

// Sets the bars of a line so that it is as wide as asked. A line that would have to be
// stretched beyond `mostStretch` stays as wide as that makes it.
System system(SetScore const& score, BarRange range, double width, double mostStretch);

// The stretch that fills the width.
double systemStretch(SetScore const& score, BarRange range, double width);

} // namespace sheet
