#include "core/arrange/terms.h"

#include <array>
#include <cmath>
#include <span>

namespace arrange {

namespace {

// Fingers placed before the first of them plays: notes up to the first finger or string that
// comes again.
std::size_t placedFrom(std::span<Pluck const> plucks)
{
    unsigned usedFingers = 0;
    for (std::size_t i = 0; i < plucks.size(); ++i) {
        unsigned const finger = 1U << static_cast<unsigned>(plucks[i].finger);
        if ((usedFingers & finger) != 0) return i;
        usedFingers |= finger;
    }
    return plucks.size();
}

double stretch(View const& view, std::span<Pluck const> group)
{
    std::array<harp::PlacedFinger, harp::fingers> placed;
    for (std::size_t i = 0; i < group.size(); ++i)
        placed[i] = {group[i].string, group[i].finger};
    return harp::stretchMm(*view.harp, *view.hand,
                           std::span<harp::PlacedFinger const>(placed).first(group.size()));
}

// Plucked one after the other, or rolled, a finger leaves when the next has come: what counts
// is from each to its neighbour.
double fromFingerToFinger(View const& view, std::span<Pluck const> group)
{
    double worst = 0;
    for (std::size_t i = 0; i + 1 < group.size(); ++i)
        worst = std::max(worst, stretch(view, group.subspan(i, 2)));
    return worst;
}

double strain(View const& view, std::span<Pluck const> group)
{
    Taste::Reach const& taste = view.taste->reach;
    if (group.front().at != group.back().at)
        return fromFingerToFinger(view, group) * taste.oneByOne;
    if (group.back().rollOrder > 0) return fromFingerToFinger(view, group) * taste.inRoll;
    return stretch(view, group) * taste.inBlock;
}

} // namespace

Points reach(View const& view, Laid const& laid)
{
    Taste::Reach const& taste = view.taste->reach;
    double worst = 0;
    std::span<Pluck const> left(laid.plucks);
    while (!left.empty()) {
        std::span<Pluck const> const group = left.first(placedFrom(left));
        worst = std::max(worst, strain(view, group));
        left = left.subspan(group.size());
    }
    return std::lround(1000 * worst / taste.pointEveryMm);
}

} // namespace arrange
