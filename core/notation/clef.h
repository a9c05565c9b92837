#pragma once

#include "core/music/pitch.h"

namespace notation {

enum class Clef { Treble, Bass };

// Half spaces above the middle line, which is B4 in the treble and D3 in the bass clef.
constexpr int staffStep(music::Pitch pitch, Clef clef)
{
    constexpr int middleOfTreble = music::diatonicStep({music::Letter::B, 0, 4});
    constexpr int middleOfBass = music::diatonicStep({music::Letter::D, 0, 3});
    return music::diatonicStep(pitch) - (clef == Clef::Treble ? middleOfTreble : middleOfBass);
}

} // namespace notation
