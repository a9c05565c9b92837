#pragma once

#include "core/arrange/lattice.h"
#include "core/proposal/brief.h"

#include <optional>
#include <vector>

namespace proposal {

// The lock that commits a candidate. `moved`: how far the tune stands from its written key.
Lock lockFor(arrange::Lattice const& lattice, arrange::PositionIndex position,
             arrange::CandidateIndex candidate, harp::Harp const& harp, music::Interval moved);

// The position a lock speaks of; none when the tune no longer has it.
std::optional<arrange::PositionIndex> positionOf(Lock const& lock,
                                                 arrange::Lattice const& lattice);

// The candidate of that position which a lock asks for; none when it cannot be played there.
std::optional<arrange::CandidateIndex>
candidateOf(Lock const& lock, arrange::Lattice const& lattice, arrange::PositionIndex position,
            harp::Harp const& harp, music::Interval moved);

// Locks of a brief as the solver wants them, and those that found no place (indices into
// `locks`). Of two that ask different things of one position the first is kept.
struct PlacedLocks {
    base::List<arrange::PositionIndex, std::optional<arrange::CandidateIndex>> byPosition;
    std::vector<std::size_t> dropped;
};
PlacedLocks placed(std::vector<Lock> const& locks, arrange::Lattice const& lattice,
                   harp::Harp const& harp, music::Interval moved);

} // namespace proposal
