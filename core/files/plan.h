#pragma once

#include "core/hands/difficulty.h"
#include "core/proposal/proposal.h"

#include <optional>
#include <string>

namespace files {

// plan.json: the arrangement as events, exact times as fractions. The form is a stable
// contract, described in DEVELOPERS.md. How difficult it is stands in it where that is given.
std::string planJson(proposal::Proposal const& proposal,
                     std::optional<hands::Difficulty> const& difficulty = std::nullopt);

// lattice.json: every position, candidate and cost that the solver used.
std::string latticeJson(proposal::Proposal const& proposal);

} // namespace files
