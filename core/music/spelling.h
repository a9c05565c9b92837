#pragma once

#include "core/music/pitch.h"

namespace music {

// The pitch that a key of a keyboard (MIDI number) is written as under a signature: names from
// three fifths flatter than its major tonic to eight sharper.
Pitch spelt(int key, int sharps);

} // namespace music
