#pragma once

#include "core/levers/seating.h"

namespace levers {

// leverPlan for a performance that is prepared once and planned in many keys: `notes` as moved,
// `key` that of the set-up.
base::Result<harp::LeverTimeline> planned(harp::Harp const& harp, music::Key key,
                                          std::span<tune::PlayedNote const> notes,
                                          Performance const& performance);

} // namespace levers
