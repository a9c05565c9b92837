#include "core/tune/endings.h"

#include <algorithm>

namespace tune {

int highest(std::vector<int> const& endings)
{
    return endings.empty() ? 0 : *std::ranges::max_element(endings);
}

bool endingEnds(Bars const& bars, BarIndex i, BarIndex to)
{
    if (bars[i].endingCloses || bars[i].repeatCloses || i + 1 == to) return true;
    return !bars[i + 1].endings.empty() || bars[i + 1].repeatOpens;
}

BarIndex endOfEnding(Bars const& bars, BarIndex i, BarIndex to)
{
    while (!endingEnds(bars, i, to)) ++i;
    return i;
}

} // namespace tune
