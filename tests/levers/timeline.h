#pragma once

#include "core/levers/leverplan.h"

namespace lines {

// Set-up and flips of the lever plan alone, or why there is none.
inline base::Result<harp::LeverTimeline>
timelineFor(harp::Harp const& harp, tune::Tune const& tune, tune::Playing const& playing,
            tune::Tempo tempo, harp::Level const& level)
{
    levers::Planning planning = levers::leverPlanFor(harp, tune, playing, tempo, level);
    if (!planning.plan) return planning.refusal->fault;
    return std::move(planning.plan->timeline);
}

} // namespace lines
