#include "core/sheet/spacing.h"

#include "core/sheet/geometry.h"

#include <algorithm>
#include <cmath>

namespace sheet {

double spaceFor(music::Length duration)
{
    double const crotchets = 4 * duration.wholes.toDouble();
    return geometry::crotchetSpace * std::pow(crotchets, geometry::spacingPower);
}

std::vector<double> columnsAt(ColumnRow const& row, double stretch)
{
    std::vector<std::vector<Strut>> endingAt(row.springs.size() + 1);
    for (Strut const& strut : row.struts)
        endingAt[static_cast<std::size_t>(strut.to)].push_back(strut);
    std::vector<double> x{0};
    for (std::size_t i = 0; i < row.springs.size(); ++i) {
        double next = x[i] + row.springs[i].fixed + stretch * row.springs[i].elastic;
        for (Strut const& strut : endingAt[i + 1])
            next = std::max(next, x[static_cast<std::size_t>(strut.from)] + strut.least);
        x.push_back(next);
    }
    return x;
}

double widthAt(ColumnRow const& row, double stretch) { return columnsAt(row, stretch).back(); }

double stretchFor(ColumnRow const& row, double width)
{
    double low = leastStretch;
    if (widthAt(row, low) >= width) return low;
    double high = 2;
    while (widthAt(row, high) < width && high < 1e6) high *= 2;
    constexpr int halvings = 50; // to the last bits of a double
    for (int i = 0; i < halvings; ++i) {
        double const middle = (low + high) / 2;
        (widthAt(row, middle) < width ? low : high) = middle;
    }
    return high;
}

} // namespace sheet
