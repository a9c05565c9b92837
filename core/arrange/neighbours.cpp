#include "core/arrange/neighbours.h"

#include "core/arrange/phrases.h"

#include <algorithm>
#include <optional>

namespace arrange {

namespace {

using music::Length;

// The least time from an end of the first to a beginning of the second.
std::optional<Length> gapBetween(Position const& before, Position const& after)
{
    std::optional<Length> least;
    for (Occurrence const& b : before.played) {
        music::Moment const end = b.at + before.span;
        for (Occurrence const& a : after.played) {
            if (a.at < end) continue;
            if (!least || a.at - end < *least) least = a.at - end;
        }
    }
    return least;
}

Seam seamBetween(tune::Tune const& tune, tune::BarIndex before, tune::BarIndex after)
{
    if (before == after) return Seam::InPair;
    int const from = barOfPart(tune, before);
    int const to = barOfPart(tune, after);
    if (to != from + 1) return Seam::Parts;
    if (to % barsInPhrase == 0) return Seam::Phrases;
    return to % barsInPair == 0 ? Seam::Pairs : Seam::InPair;
}

// How long after the first the second may still be too soon for the hand, in seconds.
double reachOfHaste(View const& before)
{
    return std::max(1 / before.level->sameStringPerSecond,
                    before.level->octaveLeapSeconds / before.taste->travel.allowedShare);
}

} // namespace

Neighbours neighboursOf(Scene const& scene, Position const& before, View const& viewBefore,
                        Position const& after, View const& viewAfter)
{
    tune::Bar const& bar = scene.tune.bars[before.bar];
    std::optional<Length> const gap = gapBetween(before, after);
    Neighbours n;
    n.before = &viewBefore;
    n.after = &viewAfter;
    n.gap = gap ? gap->wholes.toDouble() : 0;
    // A bar of a quick tune is shorter than what a beginner's hand needs.
    n.adjacent = gap && (*gap < music::barLength(bar.meter) ||
                         viewBefore.seconds(n.gap) < reachOfHaste(viewBefore));
    n.sameChord = before.chord == after.chord;
    n.sameBar = before.bar == after.bar;
    n.seam = n.adjacent ? seamBetween(scene.tune, before.bar, after.bar) : Seam::Parts;
    return n;
}

} // namespace arrange
