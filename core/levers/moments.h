#pragma once

#include "core/levers/clock.h"

#include <vector>

namespace levers {

// One window for each gap such that no hand is wanted at two levers at once, with the least
// total cost. Exact; ties fall the same way every time. `choices` are the windows of each gap,
// not empty. Empty when no such choice exists. Time grows with the windows of gaps that get
// into each other's way.
std::vector<Window> chosenWindows(std::vector<std::vector<Window>> const& choices);

// Whether one hand would be wanted at two levers at once. Windows may touch, and a hand that
// turns one lever to and fro stays there: windows of the same string may overlap.
bool overlap(Window const& a, Window const& b);

} // namespace levers
