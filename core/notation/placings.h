#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

#include <vector>

namespace notation {

// Which of the placing brackets are printed: all; those that tell the reader something (a hold
// that is new, a leap to it, fingers that cross, a finger that stays); none.
enum class Placings { All, Helpful, None };

// Brackets for the groups that hold more than one pluck; what is plucked at once needs none
// [trade-3.3].
std::vector<PlacingBracket> placingBrackets(arrange::Arrangement const& arrangement,
                                            Placings which = Placings::All);

} // namespace notation
