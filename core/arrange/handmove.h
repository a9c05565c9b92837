#pragma once

#include "core/harp/hand.h"

#include <algorithm>
#include <cmath>

namespace arrange {

// A string gap at middle C, in mm.
inline constexpr double gapMm = 15;

// How far two fingers reach from each other at most, in mm, the lower string's first; 0 for
// fingers out of their order.
inline double widestMm(harp::HandModel const& hand, int low, int high)
{
    for (harp::PairReach const& pair : hand.pairs)
        if (pair.low == low && pair.high == high)
            return std::min(hand.limitMm, pair.hardGaps * gapMm);
    return 0;
}

// How hard a move of the hand along the strings is to aim, in bits as in Fitts' law: one string
// gap has one, an octave of seven gaps three [fitts54].
inline double bitsOfMove(double mm)
{
    return std::log2(mm / gapMm + 1);
}

// Seconds the level allows for a move: as many for each bit as a leap of an octave takes.
inline double secondsForMove(harp::Level const& level, double mm)
{
    constexpr double bitsOfAnOctave = 3;
    return level.octaveLeapSeconds * bitsOfMove(mm) / bitsOfAnOctave;
}

} // namespace arrange
