#include "core/arrange/terms.h"
#include "core/arrange/terms/worstpass.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace arrange {

namespace {

// By strings between the hands' nearest notes at one moment: the same string never comes here,
// one apart is crowded, two are close.
Points whenPlucked(Taste::Collision const& taste, Pluck const& p, TuneNote const& n)
{
    auto const& crowded = taste.crowded;
    bool const sounds = n.from <= p.at && n.to > p.at;
    auto const apart = static_cast<std::size_t>(n.string - p.string);
    if (!sounds || apart >= crowded.size()) return 0;
    return n.from == p.at ? crowded[apart] : crowded[apart] / 2;
}

// The tune comes down below a note that rings on, or to the next string above it.
Points whenTuneMoves(Taste::Collision const& taste, Pluck const& p, TuneNote const& n)
{
    if (n.from <= p.at) return 0;
    if (n.from <= p.at + p.held && n.string < p.string) return taste.tuneTakesString;
    if (n.from < p.at + p.held && n.string == p.string + 1) return taste.tuneComesClose;
    return 0;
}

// What it costs that the hands pluck one string so far apart.
Points whenNear(View const& view, double apart) // whole notes
{
    constexpr int firstQuick = 4; // level
    Taste::Collision const& taste = view.taste->collision;
    constexpr double little = 1e-6; // whole notes: a beat apart is still too near
    if (apart > view.beat + little) return 0;
    Points const whole = taste.stringShared[static_cast<std::size_t>(view.level->number - 1)];
    bool const inTime = view.level->number >= firstQuick &&
                        apart * view.secondsPerWhole >= taste.sharedSeconds;
    return inTime ? std::lround(taste.sharedLater * static_cast<double>(whole)) : whole;
}

// Both hands pluck one string, the one soon after the other: neither can be placed ahead there.
Points whenShared(View const& view, Pluck const& p, TuneNote const& n)
{
    if (n.string != p.string || n.from == p.at) return 0;
    bool const takesOver = n.from > p.at && n.from == p.at + p.held;
    return std::max(takesOver ? view.taste->collision.tuneTakesString : 0,
                    whenNear(view, std::abs(n.from - p.at)));
}

} // namespace

Points collision(View const& view, Laid const& laid)
{
    Taste::Collision const& taste = view.taste->collision;
    return worstPass(view, [&](PassView const& pass) {
        Points sum = 0;
        for (Pluck const& p : laid.plucks)
            for (TuneNote const& n : pass.tune)
                sum += whenPlucked(taste, p, n) + whenTuneMoves(taste, p, n) +
                       whenShared(view, p, n);
        return sum;
    });
}

} // namespace arrange
