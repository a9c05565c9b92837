#pragma once

#include "core/base/index.h"

namespace arrange {

struct ArrangedPosition;
struct Candidate;
struct PlayedPosition;
using PositionIndex =
    base::Index<ArrangedPosition>; // into Arrangement::positions, Lattice::positions
using CandidateIndex = base::Index<Candidate>;           // into the candidates of one position
using PlayedPositionIndex = base::Index<PlayedPosition>; // into what playedPositions answers

} // namespace arrange
