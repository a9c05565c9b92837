#pragma once

#include "core/levers/leverplan.h"
#include "core/proposal/proposal.h"

namespace proposal {

// What one point of the lever plan is worth in the score, in thousandths of a point: a bass note
// given up on the first beat (40 points of the plan) is a clear fault (1000).
inline constexpr arrange::Points pointsOfPlan = 25;

// What the flips of a timeline cost by themselves, apart from what the left hand gives up.
arrange::Points effortOf(harp::LeverTimeline const& levers);

// Plan and voicing made to agree: the same flips at the moments that take least from the left
// hand, by the solution for a left hand that need not turn levers at all. What a window costs
// is the regret of the best voicing that leaves it free, added up over the positions it
// touches: nothing where the best arrangement leaves it free anyhow. `unhindered` is a proposal
// solved with flips that keep no hand busy (see withIdleFlips).
levers::Plan suitedToLeft(levers::Plan plan, Proposal const& unhindered);

// The same timeline with flips that keep no hand busy.
harp::LeverTimeline withIdleFlips(harp::LeverTimeline levers);

} // namespace proposal
