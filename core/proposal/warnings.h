#pragma once

#include "core/proposal/proposal.h"

#include <string>
#include <vector>

namespace proposal {

// What the arranger should know about a proposal that is no fault: sentences, in the order
// reading, key and tempo, locks, left hand, tune, care of the hands.
std::vector<std::string> warningsFor(Proposal const& proposal);

} // namespace proposal
