#pragma once

#include "core/base/result.h"
#include "core/proposal/proposal.h"

#include <vector>

namespace proposal {

// One tune for several levels in the same key and octave, repeats as written, so that all can
// play together: the key is the one that serves the first of the levels that can have one. The
// arranger's locks hold where a level can play them. Faults: those of propose, with the level.
base::Result<std::vector<Proposal>> proposedForLevels(Brief const& brief,
                                                      std::vector<harp::Level> const& levels);

} // namespace proposal
