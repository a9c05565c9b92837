#pragma once

#include "core/arrange/arrangement.h"

#include <span>
#include <vector>

namespace hands {

// Where the right hand may add a note below the tune.
struct Fullness {
    bool closes = false;      // where a part or a phrase of four bars comes to rest
    bool strongBeats = false; // on the first beat and the half bar
    friend bool operator==(Fullness const&, Fullness const&) = default;
};

using FullnessByBar = base::List<tune::BarIndex, Fullness>;

// A third, a sixth or an octave below single notes of the tune (in this order of liking), as
// levers and chord have it: a tone of the chord, on every pass the same. Only where there is
// room: the fingers lie at ease and have the level's time to be placed before and after (a beat
// at levels 1 and 2), the left hand stays two strings below and wants none of the strings while
// the note is counted, and no lever of them is turned meanwhile. Fingers are not chosen yet.
// `byBar` empty: `wish` holds for all bars.
std::vector<arrange::AddedBelow> addedBelow(arrange::Arrangement const& arrangement,
                                            Fullness const& wish,
                                            FullnessByBar const& byBar = {});

} // namespace hands
