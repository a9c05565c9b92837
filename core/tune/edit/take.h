#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <vector>

namespace tune {

// A note as it was played while the beats clicked, in seconds from the first beat of the first
// bar; one before it is of the pick-up.
struct HeardNote {
    double at = 0;
    std::optional<double> until; // when its key was let go; none: it rings on
    int midi = 60;
    friend bool operator==(HeardNote const&, HeardNote const&) = default;
};

// The same note as it is written, from the first beat of the first bar; below 0: in the
// pick-up.
struct TakenNote {
    music::Length at;
    music::Length length;
    int midi = 60;
    friend bool operator==(TakenNote const&, TakenNote const&) = default;
};

struct Taken {
    std::vector<TakenNote> notes; // in order, none overlaps the next
    int triplets = 0;             // beats that are divided in three where the metre halves them
    int leftOut = 0;              // notes that another was played with, or that fit no place
    double late = 0;              // seconds: how far behind the clicks she was throughout
};

// What was played, put on the beat: for each beat the division that fits best, halves and
// quarters, thirds, or quavers and semiquavers of compound metres; unusual ones only where the
// notes are clearly there. A constant lag (of sound and hands) is found first and taken away.
// Of notes that begin together, within 30 ms, the highest is the tune. A note lasts until the
// next, as a string rings, unless its key was let go half a beat or more before; the last one
// to the end of its bar. `secondsAWhole`: how long a whole note lasts by the clicks.
Taken quantised(std::vector<HeardNote> played, music::Meter meter, double secondsAWhole);

// The notes put into the bars of a tune from one on (index), in the place of what is there; the
// bars get longer in number where they must. What is played before its first beat goes to the
// end of the bar before, or becomes the pick-up. Bars that the notes do not reach stay; of a
// tune that is all rests they go. Pitches are spelt by the key.
Tune withTaken(Tune tune, BarIndex bar, Taken const& taken);

} // namespace tune
