#pragma once

#include "core/arrange/arrangement.h"

#include <span>
#include <string>
#include <vector>

namespace hands {

// A left-hand note whose finger is not the pattern's, and why.
struct ChangedFinger {
    arrange::PositionIndex position = 0;
    int note = 0;     // index into Voicing::notes
    int usual = 4;
    int finger = 4;
    std::string why; // "finger 2 has no time to come from string 14"
    friend bool operator==(ChangedFinger const&, ChangedFinger const&) = default;
};

struct LeftHand {
    std::vector<std::vector<int>> fingers;     // one for each note of each position's voicing
    std::vector<ChangedFinger> changed;        // by position, then note
    std::vector<arrange::PlacingGroup> groups; // position by position
    std::vector<int> unkept; // indices into what the player has set: no note there, or fingers
                             // that no hand has together
};

// The left hand's fingers: the pattern's, unless the hand, the move from the chord before or
// the player asks for others. The cheapest over the whole tune by the same exact dynamic
// programming as the right hand's, each finger other than the pattern's at a price. Fingers
// that the voicings have now are taken for the pattern's. A group never goes on beyond its
// position; it is linked where a finger stays on until the next is placed [trade-3.3]. Notes
// given to the right hand are in none.
LeftHand leftHand(arrange::Arrangement const& arrangement,
                  std::span<arrange::SetFinger const> set = {});

} // namespace hands
