#pragma once

#include "core/hands/moves.h"

#include <vector>

namespace hands {

// Fingers for each pluck, and what they cost.
struct FingerPath {
    std::vector<Fingers> fingers;
    std::vector<Join> joins; // one for each pluck: how its fingers come there
    int cost = 0;
};

// The cheapest way through all plucks. Exact: no other chain of moves costs less. Ties fall the
// same way every time. Time grows with the plucks times the shapes a hand can be in.
FingerPath cheapestFingers(std::vector<Stroke> const& plucks, Player const& player);

} // namespace hands
