#pragma once

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"

#include <string>

// What most tests of proposals begin with: the shipped tables and a tune of a few bars.
namespace scenario {

// Read once.
files::Tables const& tables();

// The first tune of an ABC text; the test fails when it does not read.
tune::Tune tuneOf(std::string const& abc);

// Default harp, hand and style, as written, level 3.
proposal::Brief briefFor(tune::Tune tune, int level = 3);
proposal::Brief briefFor(std::string const& abc, int level = 3);

// Proposes; the test fails with the fault's sentence when it is refused.
proposal::Proposal proposed(proposal::Brief const& brief);

// Eight bars in G, two passes, one chord a bar but for the sixth: invented for these tests.
extern std::string const eightBars;

} // namespace scenario
