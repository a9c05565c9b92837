#pragma once

#include "core/sheet/pen.h"
#include "core/tune/tune.h"

#include <vector>

namespace sheet {

enum class Stroke { Thin, Thick, Dots };

// What stands at the border of two bars, from left to right.
struct BarLineShape {
    struct Part {
        Stroke stroke = Stroke::Thin;
        double left = 0;
        friend bool operator==(Part const&, Part const&) = default;
    };
    std::vector<Part> parts;
    double width = 0;
};

// The border after one bar and before the next; either may be absent at the ends of a line.
// A repeat that opens takes the place of a plain bar line.
BarLineShape barLineShape(tune::Bar const* before, tune::Bar const* after,
                          MusicFont const& font);

// Draws it down from the top line of the first staff to the bottom line of the last; dots stand
// in every staff. `staves` holds the y of every staff's top line.
void drawBarLine(Pen& pen, BarLineShape const& shape, double x,
                 std::vector<double> const& staves);

} // namespace sheet
