#pragma once

#include "core/base/result.h"
#include "core/proposal/proposal.h"

#include <vector>

namespace proposal {

// One tune for several levels.
struct ForLevels {
    std::vector<Proposal> proposals;  // at least one
    std::vector<base::Fault> leftOut; // why a level cannot have the tune, with the level
};

// In the same key and with repeats as written, so that all can play together: the key is the
// one that serves the first of the levels that can have one; a level that cannot is left out.
// The arranger's locks hold where a level can play them. Faults: those of propose, with the
// level, where no level can.
base::Result<ForLevels> proposedForLevels(Brief const& brief,
                                          std::vector<harp::Level> const& levels);

} // namespace proposal
