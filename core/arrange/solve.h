#pragma once

#include "core/arrange/lattice.h"

#include <vector>

namespace arrange {

// Least costs of the two halves of a chain, cut after a position: what comes up to and with
// each candidate, and what follows it. Their sum is the least cost of a whole arrangement that
// uses the candidate. Locks of other positions are kept; the position's own lock is not
// applied.
struct CostTables {
    base::List<PositionIndex, Costs> own;  // each candidate's own cost, side by side
    base::List<PositionIndex, Costs> upTo; // for each position and candidate, its cost included
    base::List<PositionIndex, Costs> after; // what follows, its own cost not included
    friend bool operator==(CostTables const&, CostTables const&) = default;
};

// Time grows with positions * candidates squared; no order of candidates is assumed.
CostTables tables(Lattice const& lattice);

// The tables of a lattice that differs from the one they were made for only in the lock of one
// position: what lies before it stays in one half, what lies after it in the other.
CostTables tablesAfterLock(Lattice const& lattice, CostTables before, PositionIndex position);

// The choice with the least total cost that keeps the locks, and every candidate's regret
// against it. Exact: no other choice costs less. Among equal totals the one with the lowest
// candidate numbers, read from the first position. The regret of a candidate that a lock rules
// out is measured with that one lock lifted, so it can be negative.
Solution solved(Lattice const& lattice);
Solution solved(Lattice const& lattice, CostTables const& tables);

// The k best choices, cheapest first, ties by lowest candidate numbers; fewer when the lattice
// has fewer. Keeps the locks. After one solution the time grows with k * positions.
std::vector<Choice> bestChoices(Lattice const& lattice, int k);

} // namespace arrange
