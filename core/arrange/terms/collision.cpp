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

// How far apart, in whole notes, the hands may not pluck one string.
double sharedWithin(View const& view)
{
    constexpr int firstQuick = 4; // level
    return view.level->number < firstQuick
               ? view.beat
               : std::min(view.beat,
                          view.taste->collision.sharedSeconds / view.secondsPerWhole);
}

// Both hands pluck one string, the one soon after the other: neither can be placed ahead there.
Points whenShared(View const& view, Pluck const& p, TuneNote const& n)
{
    if (n.string != p.string || n.from == p.at) return 0;
    Taste::Collision const& taste = view.taste->collision;
    bool const takesOver = n.from > p.at && n.from == p.at + p.held;
    bool const shared = std::abs(n.from - p.at) < sharedWithin(view);
    return std::max(
        takesOver ? taste.tuneTakesString : 0,
        shared ? taste.stringShared[static_cast<std::size_t>(view.level->number - 1)] : 0);
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
