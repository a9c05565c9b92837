#pragma once

#include "core/music/time.h"

#include <string>

namespace music {

// A time signature as written: 6/8 is {6, 8}. Free meter is not a Meter; a tune without one is
// barred by its bar lines alone and carries the meter the reader assumed.
struct Meter {
    int beats = 4;
    int unit = 4;
    bool common = false; // written as C or C|
    friend constexpr bool operator==(Meter const&, Meter const&) = default;
};

constexpr Length barLength(Meter m) { return {Rational(m.beats, m.unit)}; }

// Meters whose beat divides in three: 6/8, 9/8, 12/8 and the like.
constexpr bool isCompound(Meter m) { return m.unit >= 8 && m.beats % 3 == 0 && m.beats > 3; }

// The length of one beat as a player counts it: dotted in compound meters.
constexpr Length beatLength(Meter m)
{
    return {isCompound(m) ? Rational(3, m.unit) : Rational(1, m.unit)};
}
constexpr int beatsInBar(Meter m) { return isCompound(m) ? m.beats / 3 : m.beats; }

// How heavy a place in the bar is: 3 the first beat, 2 the half bar of meters with an even
// number of beats, 1 any other beat, 0 between beats.
constexpr int beatStrength(Meter m, Length fromBarStart)
{
    if (fromBarStart.wholes == Rational(0)) return 3;
    Rational const beat = fromBarStart / beatLength(m);
    if (beat.denominator() != 1) return 0;
    int const beats = beatsInBar(m);
    return beats % 2 == 0 && beat == Rational(beats / 2) ? 2 : 1;
}

// "6/8"
inline std::string text(Meter m)
{
    return std::to_string(m.beats) + '/' + std::to_string(m.unit);
}

} // namespace music
