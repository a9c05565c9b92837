#include "ui/likeshapes.h"

#include <cstdlib>
#include <tuple>

namespace ui {

std::optional<int> candidateLike(proposal::Proposal const& proposal, int position,
                                 arrange::Voicing const& shape)
{
    auto const& candidates = proposal.lattice.candidates[static_cast<std::size_t>(position)];
    std::optional<int> best;
    std::tuple<bool, bool, int> bestAway;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        arrange::Voicing const& voicing = candidates[i].voicing;
        if (voicing.pattern != shape.pattern) continue;
        std::tuple const away{voicing.rhythm != shape.rhythm, voicing.rolled != shape.rolled,
                              std::abs(voicing.rootString - shape.rootString)};
        if (best && away >= bestAway) continue;
        best = static_cast<int>(i);
        bestAway = away;
    }
    return best;
}

std::vector<ShapeAt> atEveryChordLike(proposal::Proposal const& proposal, int position,
                                      arrange::Voicing const& shape)
{
    std::vector<ShapeAt> out;
    auto const& positions = proposal.arrangement.positions;
    auto const& here = positions[static_cast<std::size_t>(position)].position;
    for (std::size_t i = 0; i < positions.size(); ++i) {
        int const other = static_cast<int>(i);
        if (other == position || !(positions[i].position.chord == here.chord) ||
            positions[i].position.span != here.span)
            continue;
        auto const candidate = candidateLike(proposal, other, shape);
        if (!candidate || proposal.lattice.locks[i] == candidate) continue;
        out.push_back({other, *candidate});
    }
    return out;
}

std::optional<std::vector<ShapeAt>> swapped(proposal::Proposal const& proposal, int position,
                                            int other)
{
    auto const& positions = proposal.arrangement.positions;
    auto const here = candidateLike(proposal, position,
                                    positions[static_cast<std::size_t>(other)].voicing);
    auto const there = candidateLike(proposal, other,
                                     positions[static_cast<std::size_t>(position)].voicing);
    if (!here || !there) return std::nullopt;
    return std::vector<ShapeAt>{{position, *here}, {other, *there}};
}

} // namespace ui
