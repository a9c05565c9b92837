#pragma once

#include "core/base/list.h"
#include "core/tune/indices.h"

#include <vector>

namespace sheet {

// What the choice of line ends needs to know of one bar. Widths in spaces.
struct BarWidth {
    double natural = 0;
    double least = 0;
    double bars = 1;         // how much of a full bar it is: a pick-up counts little
    bool beginsPart = false; // a part, a repeat or a new key begins here
    double inPart = 0;       // bars of its part before it: phrases are four bars long
};

using BarWidths = base::List<tune::BarIndex, BarWidth>;

struct LineRoom {
    double width = 0;     // of a full line
    double firstHead = 0; // clef, key and meter of the first line
    double head = 0;      // clef and key of the others
    double preferredBars = 4;
    double preference = 1; // how strongly: 1 dances, less for airs
};

// The first bar of every line, the first line's included. Minimises the sum over all lines of
// how far each is stretched or squeezed, how far it is from the preferred number of bars, lines
// that begin inside a phrase, and parts that begin inside a line; exact, by dynamic programming.
// The last line may stay loose.
std::vector<tune::BarIndex> lineStarts(BarWidths const& bars, LineRoom const& room);

// How many of these lines begin inside a phrase of four bars.
int linesOffPhrase(BarWidths const& bars, std::vector<tune::BarIndex> const& starts);

} // namespace sheet
