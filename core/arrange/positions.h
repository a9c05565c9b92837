#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace arrange {

// One position for each chord span, in written order, with every time it is played. Spans that
// are never played (a chord for a second time that does not come) are left out.
std::vector<Position> positionsAsWritten(tune::Tune const& tune, tune::Playing const& playing);

// One position for each time a chord span is played, in the order of playing.
std::vector<Position> positionsByPass(tune::Tune const& tune, tune::Playing const& playing);

} // namespace arrange
