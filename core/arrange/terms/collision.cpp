#include "core/arrange/terms.h"

#include <algorithm>
#include <array>

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

// The tune ends the count of a note by coming down to its string or below.
bool takesOver(Pluck const& p, TuneNote const& n)
{
    return n.from == p.at + p.held && n.from > p.at && n.string <= p.string;
}

} // namespace

Points collision(View const& view, Laid const& laid)
{
    Taste::Collision const& taste = view.taste->collision;
    Points worst = 0;
    for (PassView const& pass : view.passes) {
        Points sum = 0;
        for (Pluck const& p : laid.plucks) {
            for (TuneNote const& n : pass.tune) {
                sum += whenPlucked(taste, p, n);
                if (takesOver(p, n)) sum += taste.tuneTakesString;
            }
        }
        worst = std::max(worst, sum);
    }
    return worst;
}

} // namespace arrange
