#include "core/arrange/handmove.h"
#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

double placeMm(View const& view, int string) { return view.harp->placeMm(string); }

// The hand covers a shape's strings, so the middle between the outer ones tells where it is.
double centreOf(View const& view, Laid const& laid)
{
    auto const [low, high] = std::ranges::minmax_element(laid.plucks, {}, &Pluck::string);
    return (placeMm(view, low->string) + placeMm(view, high->string)) / 2;
}

} // namespace

HandPlace handAtStart(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return {false, laid.plucks.front().at, centreOf(view, laid)};
}

HandPlace handAtEnd(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return {false, laid.plucks.back().at, centreOf(view, laid)};
}

Points travel(Neighbours const& n, HandPlace const& end, HandPlace const& start)
{
    if (end.rests || start.rests || !n.adjacent) return 0;
    double const wholes = (n.before->span - end.at) + n.gap + start.at;
    double const seconds = n.before->seconds(wholes);
    double const mm = std::abs(start.centreMm - end.centreMm);
    double const share = secondsForMove(*n.before->level, mm) / seconds;
    Taste::Travel const& taste = n.before->taste->travel;
    if (share > taste.allowedShare) return unplayablePair;
    double const haste = std::max(0.0, share - taste.easyShare) / (1 - taste.easyShare);
    return std::lround(taste.pointsABit * bitsOfMove(mm) + 1000 * haste * haste);
}

bool stringTooSoon(Neighbours const& n, Laid const& before, Laid const& after)
{
    if ((before.strings & after.strings) == 0 || !n.adjacent) return false;
    constexpr double shortOfLimit = 1e-9; // seconds; a limit met exactly is kept
    double const gap = 1.0 / n.before->level->sameStringPerSecond - shortOfLimit;
    for (Pluck const& a : before.plucks) {
        for (Pluck const& b : after.plucks) {
            double const wholes = n.before->span - a.at + n.gap + b.at;
            if (a.string == b.string && n.before->seconds(wholes) < gap) return true;
        }
    }
    return false;
}

} // namespace arrange
