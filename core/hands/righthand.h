#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace hands {

// What the right hand does through the whole tune.
struct RightHand {
    std::vector<arrange::NoteFingers> fingers; // in written order, every note that begins
    std::vector<arrange::PlacingGroup> groups; // in written order; every note is in one
};

// The cheapest over the whole tune as written, by exact dynamic programming over hand positions
// (trade-3.3: neighbouring fingers on neighbouring strings, thumb highest, repeated strings
// change finger, crossing under and over). Strings are those on which the lever plan has the
// notes when they are first played. Reads tune, playing, harp, levers and hand.
RightHand rightHand(arrange::Arrangement const& arrangement);

} // namespace hands
