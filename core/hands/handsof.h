#pragma once

#include "core/arrange/arrangement.h"
#include "core/hands/addedbelow.h"
#include "core/pattern/pattern.h"

#include <span>
#include <vector>

namespace hands {

// What the player asks of the hands. Refers to others' values, which must outlive it.
struct HandWishes {
    pattern::PatternBook const& book;
    Fullness right;
    std::span<arrange::SetFinger const> set;
};

// Gives an arrangement, whose voicings are the solver's, what its hands do: stretches eased,
// notes added below the tune, the fingers of both hands, what is placed together, and the
// remarks that the player needs. Answers which of the fingers that the player has set could not
// be kept: indices into HandWishes::set.
std::vector<int> placeHands(arrange::Arrangement& arrangement, HandWishes const& wishes);

} // namespace hands
