#include "core/arrange/terms.h"
#include "core/arrange/terms/worstpass.h"

#include <algorithm>

namespace arrange {

namespace {

bool begins(Laid const& laid, PassView const& pass, double at)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.at == at; }) ||
           std::ranges::any_of(pass.tune, [&](TuneNote const& n) { return n.from == at; });
}

// Beats on which neither hand begins a note. The last chord of an air or a waltz rings on.
Points emptyBeats(View const& view, Laid const& laid, PassView const& pass)
{
    if (view.close == Close::Tune && isSlow(view)) return 0;
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

// The dance's pulse where the left hand does not carry it on. Closes may ring, and the last beat
// of a phrase.
Points pulseMissed(View const& view, Laid const& laid)
{
    if (!view.pulse || laid.rests() || view.close != Close::None) return 0;
    auto const level = static_cast<std::size_t>(view.level->number - 1);
    Points const each = view.taste->meterFit.pulseEmpty[level];
    Points sum = 0;
    double const until = view.endsPhrase ? view.span - *view.pulse : view.span;
    for (int beat = 1; beat * *view.pulse < until; ++beat) {
        double const at = beat * *view.pulse;
        bool const struck =
            std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.at == at; });
        if (!struck) sum += each;
    }
    return sum;
}

Points meterFit(View const& view, Laid const& laid)
{
    if (view.upbeat) return laid.rests() ? 0 : view.taste->meterFit.upbeatStruck;
    bool const onFirst = !laid.rests() && laid.plucks.front().at == 0;
    Points const empty =
        worstPass(view, [&](PassView const& pass) { return emptyBeats(view, laid, pass); });
    return empty + pulseMissed(view, laid) +
           (onFirst ? 0 : view.taste->meterFit.firstBeatMissing);
}

} // namespace arrange
