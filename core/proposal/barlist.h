#pragma once

#include "core/tune/tune.h"

#include <set>
#include <string>

namespace proposal {

// "bar 3", "bars 3, 5-7 and 12", "the pick-up bar".
std::string barList(tune::Tune const& tune, std::set<tune::BarIndex> const& bars);

} // namespace proposal
