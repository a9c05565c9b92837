#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace hands {

// The placing groups of the left hand, voicing by voicing: as many notes as the hand can lie on
// at once, each finger on one string and no pair of them beyond its reach. Where a note breaks
// a group, the new one is linked if the finger before it can stay on until it is placed
// [trade-3.3]. Notes given to the right hand are in none.
std::vector<arrange::PlacingGroup> leftGroups(arrange::Arrangement const& arrangement);

} // namespace hands
