#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

constexpr double gapMm = 15;
constexpr double bitsOfAnOctave = 3; // log2(7 gaps + 1)
constexpr double pointsABit = 60;
constexpr double easyShare = 0.5; // of the time there is
constexpr double allowed = 1.25;  // the level's leap is a working limit, not a wall

double placeMm(View const& view, int string) { return view.harp->placeMm(string); }

// Centre of the strings of one onset and of those placed with it: the hand covers an octave, so
// the shape's middle string tells where it is.
double centreOf(View const& view, Laid const& laid)
{
    auto const [low, high] = std::ranges::minmax_element(laid.plucks, {}, &Pluck::string);
    return (placeMm(view, low->string) + placeMm(view, high->string)) / 2;
}

} // namespace

HandPlace handAtStart(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return {false, laid.plucks.front().at, centreOf(view, laid), laid.plucks.front().string};
}

HandPlace handAtEnd(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return {false, laid.plucks.back().at, centreOf(view, laid), laid.plucks.back().string};
}

Points travel(Neighbours const& n, HandPlace const& end, HandPlace const& start)
{
    if (end.rests || start.rests || !n.adjacent) return 0;
    double const wholes = (n.before->span - end.at) + n.gap + start.at;
    double const seconds = n.before->seconds(wholes);
    double const bits = std::log2(std::abs(start.centreMm - end.centreMm) / gapMm + 1);
    double const needed = n.before->level->octaveLeapSeconds * bits / bitsOfAnOctave;
    double const share = needed / seconds;
    if (share > allowed) return unplayablePair;
    double const haste = std::max(0.0, share - easyShare) / (1 - easyShare);
    double sum = pointsABit * bits + 1000 * haste * haste;
    bool const sameString = end.outerString == start.outerString;
    double const placing = 1.0 / n.before->level->sameStringPerSecond;
    if (sameString && seconds < placing) sum += 1000 * (placing / seconds - 1) + 200;
    return std::lround(sum);
}

} // namespace arrange
