#include "core/arrange/terms.h"

#include <algorithm>

namespace arrange {

namespace {

bool begins(Laid const& laid, PassView const& pass, double at)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.at == at; }) ||
           std::ranges::any_of(pass.tune, [&](TuneNote const& n) { return n.from == at; });
}

// Beats on which neither hand begins a note.
Points emptyBeats(View const& view, Laid const& laid, PassView const& pass)
{
    Taste::MeterFit const& taste = view.taste->meterFit;
    Points sum = 0;
    music::Length const beat = music::beatLength(view.meter);
    for (music::Length at{0}; at < view.spanLength; at = at + beat) {
        if (begins(laid, pass, at.wholes.toDouble())) continue;
        int const strength = strengthAt(view, at);
        sum += strength >= 2 ? taste.strongBeatEmpty : strength == 1 ? taste.beatEmpty : 0;
    }
    return sum;
}

} // namespace

Points meterFit(View const& view, Laid const& laid)
{
    bool const onFirst = !laid.rests() && laid.plucks.front().at == 0;
    Points worst = 0;
    for (PassView const& pass : view.passes)
        worst = std::max(worst, emptyBeats(view, laid, pass));
    return worst + (onFirst ? 0 : view.taste->meterFit.firstBeatMissing);
}

} // namespace arrange
