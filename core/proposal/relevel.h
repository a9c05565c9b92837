#pragma once

#include "core/proposal/proposal.h"

#include <string>
#include <vector>

namespace proposal {

struct Relevelled {
    Proposal proposal;
    std::vector<std::string> changes; // sentences: which bars, from what to what
};

// "Make it level N": the same bars in the same key for another level, from any arrangement.
// Locks and fingers that still fit are kept; what is changed is said. Where the level allows no
// arrangement in this key (a beginner turns no levers in play), the brief's own key is asked
// for. Faults: those of propose.
base::Result<Relevelled> atLevel(Proposal const& from, harp::Level const& level);

// What the left hand and the levers do otherwise in one arrangement than in another of the same
// tune.
std::vector<std::string> changesBetween(Proposal const& from, Proposal const& to);

} // namespace proposal
