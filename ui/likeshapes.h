#pragma once

#include "core/proposal/proposal.h"

#include <optional>
#include <vector>

namespace ui {

// A shape taken from one place to others.

struct ShapeAt {
    arrange::PositionIndex position = 0;
    arrange::CandidateIndex candidate = 0; // of its lattice
    friend bool operator==(ShapeAt const&, ShapeAt const&) = default;
};

// The candidate of a position that is most like a shape: the same pattern, then the same rhythm,
// rolled or not, then the nearest root. None: the pattern cannot be played there.
std::optional<arrange::CandidateIndex> candidateLike(proposal::Proposal const& proposal,
                                                     arrange::PositionIndex position,
                                                     arrange::Voicing const& shape);

// The shape of a position at every other place that is like it; those where it is kept already
// or cannot be had are left out.
enum class Like {
    Chord, // the same chord as long
    Notes, // the same chord under the same notes of the tune, as where a bar comes again
    Close, // the end of a part or of the tune, whatever the chord
};
std::vector<ShapeAt> atEveryPlaceLike(proposal::Proposal const& proposal,
                                      arrange::PositionIndex position,
                                      arrange::Voicing const& shape, Like like);

// The shapes of two positions, each in the other's place. None: one of them cannot be played
// there.
std::optional<std::vector<ShapeAt>> swapped(proposal::Proposal const& proposal,
                                            arrange::PositionIndex position,
                                            arrange::PositionIndex other);

} // namespace ui
