#include "core/arrange/neighbours.h"

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

// Groups of two bars counted from bar 1; a pick-up belongs to none.
int groupOf(tune::Bar const& bar) { return bar.number == 0 ? -1 : (bar.number - 1) / 2; }

} // namespace

Neighbours neighboursOf(Scene const& scene, Position const& before, View const& viewBefore,
                        Position const& after, View const& viewAfter)
{
    tune::Bar const& bar = scene.tune.bars[static_cast<std::size_t>(before.bar)];
    tune::Bar const& nextBar = scene.tune.bars[static_cast<std::size_t>(after.bar)];
    std::optional<Length> const gap = gapBetween(before, after);
    Neighbours n;
    n.before = &viewBefore;
    n.after = &viewAfter;
    n.adjacent = gap && *gap < music::barLength(bar.meter);
    n.gap = gap ? gap->wholes.toDouble() : 0;
    n.sameChord = before.chord == after.chord;
    n.sameBar = before.bar == after.bar;
    n.sameGroup = n.adjacent && groupOf(bar) == groupOf(nextBar);
    return n;
}

} // namespace arrange
