#include "core/proposal/levels.h"

#include <string>

namespace proposal {

namespace {

base::Fault atLevel(base::Fault fault, harp::Level const& level)
{
    std::string const name = "level " + std::to_string(level.number);
    fault.place = fault.place.empty() ? name : name + ", " + fault.place;
    return fault;
}

} // namespace

base::Result<std::vector<Proposal>> proposedForLevels(Brief const& brief,
                                                      std::vector<harp::Level> const& levels)
{
    std::vector<Proposal> proposals;
    Brief one = brief;
    one.passes = Passes::Written;
    for (harp::Level const& level : levels) {
        one.level = level;
        auto proposal = propose(one);
        if (!proposal) return atLevel(proposal.error(), level);
        // What the first can play in a key, those above it can as well.
        if (std::holds_alternative<BestKey>(one.key)) one.key = proposal->arrangement.tune.key;
        proposals.push_back(*std::move(proposal));
    }
    return proposals;
}

} // namespace proposal
