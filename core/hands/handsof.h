#pragma once

#include "core/arrange/arrangement.h"
#include "core/hands/addedbelow.h"
#include "core/hands/righthand.h"
#include "core/pattern/pattern.h"

#include <optional>
#include <span>
#include <vector>

namespace hands {

// What the player asks of the hands. Refers to others' values, which must outlive it.
struct HandWishes {
    pattern::PatternBook const& book;
    Fullness right;
    std::span<arrange::SetFinger const> set;
    FullnessByBar rightByBar{}; // empty: `right` for all
};

// What the right hand added below the tune, and what it made of both. It took nothing from the
// left hand.
struct PlacedRight {
    std::vector<arrange::AddedBelow> added;
    RightHand hand;
};

// Gives an arrangement, whose voicings are the solver's, what its hands do: stretches eased,
// notes added below the tune, the fingers of both hands, what is placed together, and the
// remarks that the player needs. Answers which of the fingers that the player has set could not
// be kept: indices into HandWishes::set.
std::vector<int> placeHands(arrange::Arrangement& arrangement, HandWishes const& wishes);

// The same where an arrangement that differs in its left hand only may have been placed before:
// the right hand is not asked again for what it was asked then. `before` is empty at first and
// where anything else has changed.
std::vector<int> placeHands(arrange::Arrangement& arrangement, HandWishes const& wishes,
                            std::optional<PlacedRight>& before);

} // namespace hands
