#pragma once

#include "core/arrange/arrangement.h"
#include "core/tune/changes.h"

#include <vector>

namespace levers {

// A note of the tune that is plucked on another string than the one of its letter: E flat on a
// D string with its lever up. A player reads strings, so that the page names it by the string.
struct SpeltByString {
    int playedBar = 0; // index into Playing::bars
    tune::NotePlace place;
    int string = 0;
    music::Pitch plucked; // as the string is named: what its lever makes of it
    music::Pitch written; // the tune's own name
    friend bool operator==(SpeltByString const&, SpeltByString const&) = default;
};

// All of them, each time they are played, in order of time. What the left hand and the notes
// added below the tune pluck is named by its string anyhow (HandNote::pitch).
std::vector<SpeltByString> speltByString(arrange::Arrangement const& arrangement);

} // namespace levers
