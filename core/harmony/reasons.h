#pragma once

#include "core/harmony/findchords.h"

namespace harmony {

// Why a chord may stand in a unit: what of the tune it holds, or what it does there.
// `before` and `after` are the chords beside it.
std::string chordReason(tune::Tune const& tune, Unit const& unit, music::Chord const& chord,
                        music::Chord const* before, music::Chord const* after, music::Key key);

} // namespace harmony
