#pragma once

#include "core/harp/hand.h"

#include <cmath>

namespace arrange {

// How hard a move of the hand along the strings is to aim, in bits as in Fitts' law: one string
// gap has one, an octave of seven gaps three [fitts54].
inline double bitsOfMove(double mm)
{
    constexpr double gapMm = 15;
    return std::log2(mm / gapMm + 1);
}

// Seconds the level allows for a move: as many for each bit as a leap of an octave takes.
inline double secondsForMove(harp::Level const& level, double mm)
{
    constexpr double bitsOfAnOctave = 3;
    return level.octaveLeapSeconds * bitsOfMove(mm) / bitsOfAnOctave;
}

} // namespace arrange
