#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"
#include "core/perform/slowing.h"

#include <optional>
#include <string>

namespace notation {

// Where a page says that the tempo falls from there to the end.
struct SlowingMark {
    Spot from;
    bool lastTime = false; // its bar is played before as well, and in time then
};

// None: the end is in time, or words of the tune itself say so already.
std::optional<SlowingMark> slowingMark(arrange::Arrangement const& arrangement,
                                       perform::Slowing slowing);

// As it is printed: "rit.", or "rit. last time".
std::string slowingWords(SlowingMark const& mark);

} // namespace notation
