#pragma once

#include "core/music/time.h"

#include <vector>

namespace sheet {

// Two columns that must lie at least so far apart, whatever stands between.
struct Strut {
    int from = 0;
    int to = 0;
    double least = 0;
};

// Distance from one column of the line to the next: a part that never changes and a part that
// stretches with the line, in spaces.
struct Spring {
    double fixed = 0;
    double elastic = 0;
};

// Columns of one line (or one bar): n springs join n + 1 columns.
struct ColumnRow {
    std::vector<Spring> springs;
    std::vector<Strut> struts;
};

// The elastic distance a moment of this duration is due: grows as a power of the duration
// [ross70]: each doubling widens by about half.
double spaceFor(music::Length duration);

// x of every column, the first at 0, for a stretch of the elastic parts (1: natural).
std::vector<double> columnsAt(ColumnRow const& row, double stretch);
double widthAt(ColumnRow const& row, double stretch);

// The stretch at which the row fills the width. Never below `leastStretch`: a row that cannot
// be made so narrow keeps its least width.
inline constexpr double leastStretch = 0.2;
double stretchFor(ColumnRow const& row, double width);

} // namespace sheet
