#pragma once

#include "core/harp/harp.h"
#include "core/levers/notechoice.h"
#include "core/tune/playing.h"

#include <span>
#include <vector>

namespace levers {

// Strings tied by pitches that either can give, and the notes they play: what is decided
// together.
struct StringGroup {
    std::vector<harp::StringIndex> strings;
    std::vector<UseIndex> notes;
};

// The groups that have notes, from the options of each note.
std::vector<StringGroup> groupsOf(harp::Harp const& harp, NoteOptions const& options);

// When the notes begin and end, as places in the order of all such moments.
struct MomentOrder {
    base::List<UseIndex, int> begins;
    base::List<UseIndex, int> ends;
    bool leversTurn = true; // while playing
};

MomentOrder orderOf(Uses const& notes, bool leversTurn);

} // namespace levers
