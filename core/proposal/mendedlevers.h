#pragma once

#include "core/base/result.h"
#include "core/levers/leverplan.h"
#include "core/proposal/proposal.h"

#include <vector>

namespace proposal {

// The levers of a proposal that stands in its key. Notes that cannot be had as written are
// changed in the arrangement's tune and told as snags: first those that the arranger has
// decided, then the cheapest set of ways that lets the levers serve the rest
// (levers/waysround.h). `eased` are decided likewise, but not by the arranger, whose decisions go
// before them. Grace notes that no lever serves are left out. Faults only where the
// brief refuses snags: KeyBeyondTuning, NoteOffHarp, NoMomentForFlip.
base::Result<levers::Plan> mendedLevers(Proposal& out,
                                        std::vector<SnagChoice> const& eased = {});

// A line for a snag of the right hand in the arrangement, for its pages.
void tellOnPage(arrange::Arrangement& arrangement, Snag const& snag);

} // namespace proposal
