#pragma once

#include "core/proposal/proposal.h"

#include <optional>
#include <vector>

namespace ui {

// A shape taken from one place to others.

struct ShapeAt {
    int position = 0;  // index into Arrangement::positions
    int candidate = 0; // of its lattice
    friend bool operator==(ShapeAt const&, ShapeAt const&) = default;
};

// The candidate of a position that is most like a shape: the same pattern, then the same rhythm,
// rolled or not, then the nearest root. None: the pattern cannot be played there.
std::optional<int> candidateLike(proposal::Proposal const& proposal, int position,
                                 arrange::Voicing const& shape);

// The shape of a position at every other place with the same chord as long; those that are there
// already or cannot have it are left out.
std::vector<ShapeAt> atEveryChordLike(proposal::Proposal const& proposal, int position,
                                      arrange::Voicing const& shape);

// The shapes of two positions, each in the other's place. None: one of them cannot be played
// there.
std::optional<std::vector<ShapeAt>> swapped(proposal::Proposal const& proposal, int position,
                                            int other);

} // namespace ui
