#pragma once

#include "core/arrange/lattice.h"

#include <optional>
#include <span>
#include <vector>

namespace arrange {

// In how many positions another take brings a new shape: a third of those that are not locked
// and have a choice of shapes, at least one, and never more than 48.
int newShapesWanted(Lattice const& lattice);

// Another take: the cheapest choice that has, in at least newShapesWanted positions, a shape
// (by the pattern's name) that none of the earlier takes has there. So it differs from each of
// them in at least as many. Exact under this rule; keeps the locks; ties fall to the lowest
// candidate numbers, read from the first position. None when no choice is new enough. Time
// grows with positions * candidates squared * newShapesWanted.
std::optional<Choice> anotherTake(Lattice const& lattice, std::span<Choice const> earlier);

// The best choice and up to `others` takes after it, each new against all before it.
std::vector<Choice> takes(Lattice const& lattice, Choice const& best, int others);

} // namespace arrange
