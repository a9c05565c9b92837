#pragma once

#include "core/proposal/proposal.h"

namespace proposal {

// A brief solved in one key with the flips where the lever plan puts them, without fingers and
// warnings: enough to compare keys. Its best cost is that of propose() there, or a little more
// where a proposal moves flips to suit the left hand. Faults as propose().
base::Result<Proposal> solvedAt(Brief const& brief, music::Interval moved);

} // namespace proposal
