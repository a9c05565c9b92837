#pragma once

#include "core/hands/moves.h"
#include "core/music/meter.h"
#include "core/tune/tune.h"

namespace hands {

// The time a hand has, by how long ago it plucked last. Between notes that are not placed
// together a hand needs more than the level's rate gives: 0.15 s [trade-3.4].
inline Pause pauseFor(music::Length since, bool rested, music::Meter meter, tune::Tempo tempo,
                      double notesPerSecond)
{
    constexpr double forPlacing = 0.15; // seconds
    music::Length const beat = beatLength(meter);
    if (rested || since >= beat * music::Rational(2)) return Pause::Rested;
    if (since >= beat) return Pause::Beat;
    double const seconds = since.wholes.toDouble() * 4 * 60 / tune::quartersPerMinute(tempo);
    return seconds < 1 / notesPerSecond + forPlacing ? Pause::Hurried : Pause::None;
}

} // namespace hands
