#pragma once

#include "core/levers/keyfit.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/proposal.h"
#include "core/proposal/remedies.h"

#include <functional>
#include <vector>

namespace ui {

// What the Session asks of core, as functions that a test may stand in for.
struct Engine {
    std::function<base::Result<proposal::Proposal>(proposal::Brief const&)> propose;
    std::function<base::Result<proposal::Proposal>(
        proposal::Proposal, arrange::PositionIndex position, arrange::CandidateIndex candidate,
        bool locked)>
        withChoice;
    std::function<proposal::Proposal(proposal::Proposal, arrange::PositionIndex position)>
        withoutLock;
    std::function<std::vector<proposal::Variant>(proposal::Proposal const&,
                                                 arrange::PositionIndex position)>
        variants;
    std::function<std::vector<levers::KeyFit>(proposal::Brief const&)> keyFits;
    // The same, each solved in full: takes longer.
    std::function<std::vector<proposal::RankedKey>(proposal::Brief const&)> rankedKeys;
    // What would help where propose refuses.
    std::function<std::vector<proposal::Remedy>(proposal::Brief const&)> remedies;
    // Another key, tempo or level that leaves fewer snags: slow, done in another thread, and
    // given up where it is no longer wanted.
    std::function<std::vector<proposal::WholeTuneWay>(proposal::Proposal const&,
                                                      std::function<bool()> const& wanted)>
        wholeTuneWays;
};

// The functions of core themselves. `levels`: those a remedy may offer.
Engine coreEngine(std::vector<harp::Level> levels = {});

} // namespace ui
