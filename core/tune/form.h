#pragma once

#include "core/tune/tune.h"

#include <string>
#include <vector>

namespace tune {

// What is played of a tune in all: a few bars before it, the whole tune so many times, a few
// bars after it [music-7].
struct FormWish {
    int introduction = 0; // bars; 0: none
    int ending = 0;
    std::vector<std::string> times{}; // what the page says at each time through; empty: once
};

// Where a bar comes from.
struct BarOrigin {
    BarIndex bar = 0;  // of the tune it was made from
    int firstNote = 0; // so many of that bar's notes are left out before its first one
    friend bool operator==(BarOrigin const&, BarOrigin const&) = default;
};

struct Formed {
    Tune tune;
    base::List<BarIndex, BarOrigin> from; // for each bar of `tune`
};

// The tune with its introduction and ending, both its own last phrase, and as many times
// through as are wished for, written out one after another. Repeats stay repeats; where the
// tune has a way back (D.C., D.S.) or an order of parts it is written out as it is played. Bars
// say their role and time, and the first of each is worded: "Introduction", "Ending". Where an
// introduction meets the pick-up of the tune its last bar makes room for it; an ending closes
// with a full bar.
Formed formed(Tune const& tune, FormWish const& wish);

} // namespace tune
