#include "core/arrange/handmove.h"
#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace arrange {

namespace {

double placeMm(View const& view, harp::StringIndex string)
{
    return view.harp->placeMm(string);
}

// The hand covers a shape's strings, so the middle between the outer ones tells where it is.
HandPlace handAt(View const& view, Laid const& laid, Pluck const& edge)
{
    auto const [low, high] = std::ranges::minmax_element(laid.plucks, {}, &Pluck::string);
    return {false,
            edge.at,
            (placeMm(view, low->string) + placeMm(view, high->string)) / 2,
            {edge.string, edge.finger},
            low->string,
            high->string};
}

// Whether the whole hand moves an octave or more: both its edges do, and the same way.
bool leapsAnOctave(HandPlace const& end, HandPlace const& start)
{
    constexpr int octave = 7;
    int const low = start.low - end.low;
    int const high = start.high - end.high;
    return (low < 0) == (high < 0) && std::min(std::abs(low), std::abs(high)) >= octave;
}

// What is left of the hand's way where the first finger of the next shape is placed, or reaches
// out for its string, while the last one of this is still on its own.
double ledOverMm(View const& view, HandPlace const& end, HandPlace const& start, double wayMm)
{
    harp::PlacedFinger const last = end.edge;
    harp::PlacedFinger const first = start.edge;
    if (!view.level->crosses || last.finger == first.finger || last.string == first.string)
        return wayMm;
    auto const [low, high] =
        last.string < first.string ? std::pair{last, first} : std::pair{first, last};
    double const led = view.taste->travel.ledShare * wayMm;
    if (harp::easeOf(*view.harp, *view.hand, low, high) != harp::Ease::Beyond) return led;
    if (low.finger < high.finger) return wayMm; // fingers out of their order
    double const beyond = harp::distanceMm(*view.harp, low.string, high.string) -
                          widestMm(*view.hand, low.finger, high.finger);
    return std::min(wayMm, std::max(led, beyond));
}

} // namespace

HandPlace handAtStart(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return handAt(view, laid, laid.plucks.front());
}

HandPlace handAtEnd(View const& view, Laid const& laid)
{
    if (laid.rests()) return {};
    return handAt(view, laid, laid.plucks.back());
}

Points travel(Neighbours const& n, HandPlace const& end, HandPlace const& start)
{
    if (end.rests || start.rests || !n.adjacent) return 0;
    double const wholes = (n.before->span - end.at) + n.gap + start.at;
    double const seconds = n.before->seconds(wholes);
    constexpr double shortOfLimit = 1e-9; // seconds; a limit met exactly is kept
    if (seconds < 1.0 / n.before->level->leftNotesPerSecond - shortOfLimit)
        return unplayablePair;
    double const mm = std::abs(start.centreMm - end.centreMm);
    Taste::Travel const& taste = n.before->taste->travel;
    // No finger that stays or reaches ahead shortens a leap of the whole hand.
    if (leapsAnOctave(end, start) &&
        n.before->level->octaveLeapSeconds > taste.allowedShare * seconds)
        return unplayablePair;
    double const share =
        secondsForMove(*n.before->level, ledOverMm(*n.before, end, start, mm)) / seconds;
    if (share > taste.allowedShare) return unplayablePair;
    double const haste = std::max(0.0, share - taste.easyShare) / (1 - taste.easyShare);
    return std::lround(taste.pointsABit * bitsOfMove(mm) + taste.haste * haste * haste);
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
