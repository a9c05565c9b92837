#pragma once

#include "core/levers/tuneset.h"
#include "core/proposal/brief.h"

#include <vector>

namespace proposal {

// The tunes of several briefs as a set on the harp of the first: keys that the briefs wish for,
// else the few best of each. Fault: the refusal of the first tune that has no key, or BadCall
// for more tunes than a set has.
inline constexpr std::size_t longestSet = 6;
base::Result<std::vector<levers::SetStep>> setOf(std::vector<Brief> const& briefs,
                                                 levers::SetOrder order);

} // namespace proposal
