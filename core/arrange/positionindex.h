#pragma once

#include "core/base/index.h"

namespace arrange {

struct ArrangedPosition;
struct PlayedPosition;
using PositionIndex = base::Index<ArrangedPosition>;     // into Arrangement::positions
using PlayedPositionIndex = base::Index<PlayedPosition>; // into what playedPositions answers

} // namespace arrange
