#pragma once

#include "core/perform/lilt.h"
#include "core/perform/slowing.h"

#include <vector>

namespace perform {

// What kinds of tune do in time that the page does not show; tables in shared/.
struct DanceWays {
    std::vector<KindOfLilt> lilts;
    std::vector<KindOfSlowing> slowings;
    // A player is told of a slowing that leaves no more of the tempo than this. With 0.9 the
    // last beat before the end is 8 % longer, three times what the ear notices of one tone
    // [science-9]; less is the freedom that players take unasked (no source).
    double toldTo = 1;
};

// The slowing that a page tells of: none where it is too small for that.
inline Slowing told(DanceWays const& ways, Slowing slowing)
{
    return slowing.to <= ways.toldTo ? slowing : Slowing{};
}

} // namespace perform
