#include "core/arrange/terms.h"

#include <array>
#include <cmath>
#include <span>

namespace arrange {

namespace {

constexpr double pointEveryMm = 25;
// A finger that plays after another may leave its string late; a roll lies between.
constexpr double inBlock = 1.0;
constexpr double inRoll = 0.7;
constexpr double oneByOne = 0.3;

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

double easing(std::span<Pluck const> group)
{
    if (group.front().at != group.back().at) return oneByOne;
    return group.back().rollOrder > 0 ? inRoll : inBlock;
}

} // namespace

Points reach(View const& view, Laid const& laid)
{
    double worst = 0;
    std::span<Pluck const> left(laid.plucks);
    while (!left.empty()) {
        std::span<Pluck const> const group = left.first(placedFrom(left));
        worst = std::max(worst, stretch(view, group) * easing(group));
        left = left.subspan(group.size());
    }
    return std::lround(1000 * worst / pointEveryMm);
}

} // namespace arrange
