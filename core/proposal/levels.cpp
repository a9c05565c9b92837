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

base::Result<ForLevels> proposedForLevels(Brief const& brief,
                                          std::vector<harp::Level> const& levels)
{
    ForLevels out;
    Brief one = brief;
    one.passes = Passes::Written;
    for (harp::Level const& level : levels) {
        one.level = level;
        auto proposal = propose(one);
        if (!proposal) {
            out.leftOut.push_back(atLevel(proposal.error(), level));
            continue;
        }
        // What the first can play in a key, those above it can as well.
        if (std::holds_alternative<BestKey>(one.key)) one.key = proposal->arrangement.tune.key;
        out.proposals.push_back(*std::move(proposal));
    }
    if (out.proposals.empty()) return out.leftOut.front();
    return out;
}

} // namespace proposal
