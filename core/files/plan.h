#pragma once

#include "core/proposal/proposal.h"

#include <string>

namespace files {

// plan.json: the arrangement as events, exact times as fractions. The form is a stable
// contract, described in DEVELOPERS.md.
std::string planJson(proposal::Proposal const& proposal);

// lattice.json: every position, candidate and cost that the solver used.
std::string latticeJson(proposal::Proposal const& proposal);

} // namespace files
