#pragma once

#include "core/perform/lilt.h"
#include "core/perform/slowing.h"

#include <vector>

namespace perform {

// What kinds of tune do in time that the page does not show; tables in shared/.
struct DanceWays {
    std::vector<KindOfLilt> lilts;
    std::vector<KindOfSlowing> slowings;
};

} // namespace perform
