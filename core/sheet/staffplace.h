#pragma once

#include "core/music/pitch.h"

namespace sheet {

enum class Clef { Treble, Bass };

// Half spaces above the middle line, which is B4 in the treble and D3 in the bass clef.
constexpr int staffStep(music::Pitch pitch, Clef clef)
{
    constexpr int middleOfTreble = music::diatonicStep({music::Letter::B, 0, 4});
    constexpr int middleOfBass = music::diatonicStep({music::Letter::D, 0, 3});
    return music::diatonicStep(pitch) - (clef == Clef::Treble ? middleOfTreble : middleOfBass);
}

// Staff spaces below the top line.
constexpr double yOfStep(int step) { return 2.0 - step / 2.0; }

constexpr bool onLine(int step) { return step % 2 == 0; }

// Ledger lines a notehead needs: positive above the staff, negative below, 0 inside.
constexpr int ledgerLines(int step)
{
    if (step >= 6) return (step - 4) / 2;
    if (step <= -6) return (step + 4) / 2;
    return 0;
}

} // namespace sheet
