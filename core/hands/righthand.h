#pragma once

#include "core/arrange/arrangement.h"

#include <span>
#include <vector>

namespace hands {

// What the right hand does through the whole tune.
struct RightHand {
    std::vector<arrange::NoteFingers> fingers; // in written order, every note that begins
    std::vector<arrange::AddedBelow> added;    // those of the arrangement, with their fingers
    std::vector<arrange::GivenNote> given;     // likewise
    std::vector<arrange::PlacingGroup> groups; // in written order; every note is in one
    std::vector<int> unkept; // indices into what the player has set: no note there, or fingers
                             // in no order that a hand has
};

// The cheapest over the whole tune as written, by exact dynamic programming over hand positions
// (trade-3.3: neighbouring fingers on neighbouring strings, thumb highest, repeated strings
// change finger, crossing under and over, slides as the level allows). Strings are those on
// which the lever plan has the notes when they are first played. Fingers that the player has
// set stand. Reads tune, playing, harp, levers, hand, level, tempo, and what the right hand
// adds or takes from the left.
RightHand rightHand(arrange::Arrangement const& arrangement,
                    std::span<arrange::SetFinger const> set = {});

} // namespace hands
