#pragma once

#include "core/levers/clock.h"

#include <vector>

namespace levers {

// One window for each gap such that windows of the same hand do not overlap (they may touch),
// with the least total cost. Exact; ties fall the same way every time.
// `choices` are the windows of each gap, not empty. Empty when no such choice exists.
// When the cheapest windows do not overlap, they are the answer and nothing is
// searched; else the time grows with all windows times the sets of gaps open at once.
std::vector<Window> chosenWindows(std::vector<std::vector<Window>> const& choices);

// Whether one hand would have to be in two windows at once.
bool overlap(Window const& a, Window const& b);

} // namespace levers
