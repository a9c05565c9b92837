#pragma once

#include "core/levers/leverplan.h"
#include "core/levers/seating.h"

namespace levers {

// leverPlanFor for a performance that is prepared once and planned in many keys: `uses` as
// moved (see uses.h), `key` that of the set-up.
Planning planned(harp::Harp const& harp, music::Key key, std::vector<tune::PlayedNote> uses,
                 Performance const& performance);

} // namespace levers
