#include "core/proposal/flipmoments.h"

#include <algorithm>
#include <limits>

namespace proposal {

namespace {

using arrange::Points;
using music::Moment;

struct Stretch {
    Moment from;
    Moment to;
};

bool plucksInside(arrange::Voicing const& voicing, Moment start, Stretch stretch)
{
    return std::any_of(voicing.notes.begin(), voicing.notes.end(), [&](auto const& note) {
        Moment const at = start + note.at;
        return stretch.from < at && at < stretch.to;
    });
}

// The least regret of a candidate that plucks nothing inside.
Points lossAt(Proposal const& proposal, arrange::PositionIndex position, Moment start,
              Stretch stretch)
{
    auto const& candidates = proposal.lattice.candidates[position];
    Points least = std::numeric_limits<Points>::max();
    for (arrange::CandidateIndex const c : candidates.indices())
        if (!plucksInside(candidates[c].voicing, start, stretch))
            least = std::min(least, std::max<Points>(0, proposal.solution.regrets[position][c]));
    return least; // there always is a candidate that rests
}

Points loss(Proposal const& proposal, Stretch stretch)
{
    Points sum = 0;
    for (arrange::PositionIndex const i : proposal.lattice.positions.indices()) {
        arrange::Position const& position = proposal.lattice.positions[i];
        for (arrange::Occurrence const& when : position.played)
            if (when.at < stretch.to && stretch.from < when.at + position.span)
                sum += lossAt(proposal, i, when.at, stretch);
    }
    return sum;
}

} // namespace

Points effortOf(harp::LeverTimeline const& levers)
{
    Points sum = 0;
    for (harp::Flip const& flip : levers.flips) sum += pointsOfPlan * flip.effort;
    return sum;
}

levers::Plan suitedToLeft(levers::Plan plan, Proposal const& unhindered)
{
    arrange::Arrangement const& a = unhindered.arrangement;
    levers::Clock const clock(a.tune, a.playing, a.tempo, a.level);
    // A moment that leaves the left hand nothing to play is never worth more than that.
    constexpr Points most = 1'000'000;
    return levers::retimed(std::move(plan), clock, a.playing.bars, [&](Moment from, Moment to) {
        Points const lost = std::min(most, loss(unhindered, {from, to}));
        return static_cast<int>((lost + pointsOfPlan - 1) / pointsOfPlan);
    });
}

harp::LeverTimeline withIdleFlips(harp::LeverTimeline levers)
{
    for (harp::Flip& flip : levers.flips) flip.freeFrom = flip.freeTo = flip.at;
    return levers;
}

} // namespace proposal
