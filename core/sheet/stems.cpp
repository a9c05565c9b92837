#include "core/sheet/stems.h"

#include "core/sheet/geometry.h"

#include <algorithm>
#include <cstdlib>

namespace sheet {

Stem stemDirection(std::span<int const> steps)
{
    int highest = 0;
    int lowest = 0;
    int sum = 0;
    for (int step : steps) {
        highest = std::max(highest, step);
        lowest = std::min(lowest, step);
        sum += step;
    }
    if (highest != -lowest) return highest > -lowest ? Stem::Down : Stem::Up;
    return sum < 0 ? Stem::Up : Stem::Down;
}

double stemLengthFor(int nearestStep, Stem stem, int flags)
{
    double const towardsMiddle = (stem == Stem::Up ? -nearestStep : nearestStep) / 2.0;
    return std::max(geometry::stemLength, towardsMiddle) +
           std::max(0, flags - 2) * geometry::stemPerExtraFlag;
}

} // namespace sheet
