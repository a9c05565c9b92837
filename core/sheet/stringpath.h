#pragma once

#include "core/sheet/noteletters.h"
#include "core/sheet/pen.h"

#include <optional>
#include <vector>

namespace sheet {

// The strings that the left hand plucks at one moment of a line, lowest first.
struct PathStop {
    double x = 0; // the middle of the notes
    std::vector<music::Pitch> strings;
    tune::BarIndex bar = 0;
    std::optional<arrange::PositionIndex> position;
};

// From one stop to the next, at least, so that its beads can be read. In spaces.
inline constexpr double betweenStops = 2.1;

// A line under the staff and on it, under its note, a bead for every string of the left hand:
// its octave as harpers count it and its letter. Strings that are plucked together stand above
// each other, the lowest at the bottom. For players who do not read music [trade-6].
void drawStringPath(Pen& pen, std::vector<PathStop> const& stops, double width,
                    Helps const& helps);

} // namespace sheet
