#pragma once

#include "core/tune/tune.h"

#include <vector>

// First, second and later endings as they stand in the bars.
namespace tune {

// The last time through that the numbers over an ending name; 0 where there are none.
int highest(std::vector<int> const& endings);

// Whether an ending that holds bar i stops with it. `to`: one past the last bar it may reach.
bool endingEnds(Bars const& bars, BarIndex i, BarIndex to);

// The last bar of the ending that holds bar i.
BarIndex endOfEnding(Bars const& bars, BarIndex i, BarIndex to);

} // namespace tune
