#include "core/arrange/terms.h"
#include "core/arrange/terms/worstpass.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

// Whether some position of its lever gives the string a tone of the chord.
bool leverGivesTone(View const& view, harp::StringIndex string)
{
    harp::HarpString const& s = view.harp->string(string);
    for (harp::Lever lever : {harp::Lever::Down, harp::Lever::Up}) {
        if (lever == harp::Lever::Up && !s.hasLever) continue;
        int const midi = music::midi(harp::sounding(s, lever));
        if (view.chord.tone[static_cast<std::size_t>(midi % 12)]) return true;
    }
    return false;
}

// Strings that would have to be turned to sound what the chord asks of them.
Points flipsNeeded(View const& view, Laid const& laid)
{
    Taste::Levers const& taste = view.taste->levers;
    std::uint64_t counted = 0;
    Points sum = 0;
    for (Pluck const& p : laid.plucks) {
        std::uint64_t const bit = std::uint64_t{1} << (p.string % 64);
        if ((counted & bit) != 0 || !wrongTone(view, p)) continue;
        counted |= bit;
        sum += leverGivesTone(view, p.string) ? taste.needsFlip : taste.cannotBeHad;
    }
    return sum;
}

// How close the left hand's nearest note comes to the time in which it turns a lever.
Points hurry(View const& view, Laid const& laid, NearFlip const& flip)
{
    Taste::Levers const& taste = view.taste->levers;
    double nearest = taste.unhurriedSeconds;
    for (Pluck const& p : laid.plucks) {
        double const apart = p.at <= flip.freeFrom ? flip.freeFrom - p.at : p.at - flip.freeTo;
        nearest = std::min(nearest, std::max(0.0, view.seconds(apart)));
    }
    return std::lround(static_cast<double>(taste.hurried) *
                       (1 - nearest / taste.unhurriedSeconds));
}

} // namespace

Points levers(View const& view, Laid const& laid)
{
    Points const hurried = worstPass(view, [&](PassView const& pass) {
        Points sum = 0;
        for (NearFlip const& flip : pass.flips)
            if (flip.hand == harp::Side::Left) sum += hurry(view, laid, flip);
        return sum;
    });
    return hurried + flipsNeeded(view, laid);
}

} // namespace arrange
