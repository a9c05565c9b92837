#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

#include <vector>

namespace notation {

// Brackets for the groups that hold more than one pluck; what is plucked at once needs none
// [trade-3.3].
std::vector<PlacingBracket> placingBrackets(arrange::Arrangement const& arrangement);

} // namespace notation
