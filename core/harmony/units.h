#pragma once

#include "core/tune/tune.h"

#include <vector>

namespace harmony {

// A stretch of the tune that has one chord: half a bar, a whole bar of three beats, a third of
// a bar of 9/8 or 3/2. Pick-up bars have none: the hand rests there or the chord before holds.
struct Unit {
    tune::BarIndex bar = 0;
    music::Length at; // from the start of the bar
    music::Length length;
    bool opensBar = true; // the first of its bar
    int barOfPhrase = 0;  // 0 to 7: phrases are counted in eights, back from the strain's end
                          // where its length is no multiple of eight
    int barOfStrain = 0;  // from the strain's start
    int barsToEnd = 0;    // of the strain: 0 in its last bar
    bool firstBar = false; // of the tune
    bool first = false;    // unit of the tune
    int strain = 0;        // counted from the tune's start
};

// How long one chord of a bar lasts in this meter, at the least: see Unit.
music::Length unitLength(music::Meter meter);

// The units of the tune as written, in order. A strain begins anew at repeats, double bar lines
// and parts; a second ending stands in the place of the first.
std::vector<Unit> unitsOf(tune::Tune const& tune);

} // namespace harmony
