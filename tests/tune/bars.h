#pragma once

#include "core/tune/tune.h"

#include <string>
#include <vector>

// Small tunes for tests, one whole-bar note a bar.
namespace bars {

inline tune::Note note(music::Rational at, music::Rational length, int midiStep)
{
    tune::Note out;
    out.at = {at};
    out.length = {length};
    out.pitches = {music::naturalAt(midiStep)};
    return out;
}

// One bar filled by one note; the diatonic step of the pitch tells bars apart.
inline tune::Bar bar(int step, music::Rational length = music::Rational(1))
{
    tune::Bar out;
    out.length = {length};
    out.notes = {note(music::Rational(0), length, step)};
    return out;
}

inline tune::Tune of(tune::Bars bars)
{
    tune::Tune out;
    out.bars = std::move(bars);
    return out;
}

// So many plain bars of 4/4, C5 and up.
inline tune::Tune plain(int count)
{
    tune::Tune out;
    for (int i = 0; i < count; ++i) out.bars.push_back(bar(35 + i));
    return out;
}

} // namespace bars
