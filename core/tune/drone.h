#pragma once

#include "core/tune/tune.h"

namespace tune {

// A tune without chord symbols over a drone of its key: the open fifth on the home note, from
// the first bar on and again where the key changes. A tune that has chords stays as it is.
// What to play until chords are found. [trade-7]: a drone of root and fifth is the safe
// fall-back of modal tunes.
Tune overDrone(Tune tune);

} // namespace tune
