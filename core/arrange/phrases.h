#pragma once

#include "core/tune/tune.h"

namespace arrange {

// Bars go in pairs, and pairs in phrases of four bars, counted from where a part begins.
inline constexpr int barsInPair = 2;
inline constexpr int barsInPhrase = 4;

// Bars from where the part begins, 0 in its first full bar; a pick-up is not counted.
int barOfPart(tune::Tune const& tune, tune::BarIndex bar);

} // namespace arrange
