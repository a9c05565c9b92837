#pragma once

#include "core/arrange/lattice.h"

#include <vector>

namespace arrange {

// The choice with the least total cost that keeps the locks, and every candidate's regret
// against it. Exact: no other choice costs less. Among equal totals the one with the lowest
// candidate numbers, read from the first position. The regret of a candidate that a lock rules
// out is measured with that one lock lifted. Time grows with positions * candidates squared.
Solution solved(Lattice const& lattice);

// The k best choices, cheapest first, ties by lowest candidate numbers. Keeps the locks.
std::vector<Choice> bestChoices(Lattice const& lattice, int k);

} // namespace arrange
