#pragma once

#include "core/base/index.h"

namespace arrange {

struct ArrangedPosition;
struct Candidate;
struct PlayedPosition;
// Into Arrangement::positions and Lattice::positions.
using PositionIndex = base::Index<ArrangedPosition>;
// Into the candidates of one position.
using CandidateIndex = base::Index<Candidate>;
// Into what playedPositions answers.
using PlayedPositionIndex = base::Index<PlayedPosition>;

} // namespace arrange
