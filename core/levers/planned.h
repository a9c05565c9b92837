#pragma once

#include "core/levers/leverplan.h"
#include "core/levers/seating.h"
#include "core/levers/useindex.h"

namespace levers {

// leverPlanFor for a performance that is prepared once and planned in many keys: `uses` as
// moved (see uses.h), `key` that of the set-up.
Planning planned(harp::Harp const& harp, music::Key key, Uses uses,
                 Performance const& performance);

// The cheapest seating with its moments where notes have priced ways beside their seats, and
// what the plan costs; or what stands in the way. See Seatings for what is exact: levers that
// crowd are tried in that order until one seating has its moments, or `most` have none; with 0
// the first is taken as if no two levers crowded, unless it costs more than `dearest`.
struct MendedSeating {
    Seating seating;
    std::optional<Refused> refused;
    std::int64_t cost = 0;
    bool tooDear = false; // and no seating is told
};
MendedSeating mendedSeating(harp::Harp const& harp, Uses const& notes,
                            Performance const& performance, NoteChoices const& choices,
                            int most = 400, std::optional<std::int64_t> dearest = std::nullopt);

} // namespace levers
