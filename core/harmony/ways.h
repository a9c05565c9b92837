#pragma once

#include "core/harmony/findchords.h"

namespace harmony {

// What a way adds to each degree before the chain is solved, in 1/nat nats, and to staying.
struct Leaning {
    int plainBonus = 0; // to I, IV and V; in minor i, iv, v, V, III and VII
    int stayBonus = 0;
};
Leaning leaningOf(Way way);

// Whether the degree is one of the plain chords of a mode.
bool isPlain(Degree degree, music::Mode mode);

// Turns the triads found into what the way plays: sevenths and passing basses, open fifths, one
// drone. Chords that are kept stay as they are.
void dress(Suggestion& suggestion, tune::Tune const& tune, Way way);

} // namespace harmony
