#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

constexpr Points firstBeatMissing = 1000;
constexpr Points strongBeatEmpty = 350; // neither hand begins a note there
constexpr Points beatEmpty = 120;
constexpr Points extraNote = 40;  // beyond one a beat under a busy tune
constexpr Points stillness = 130; // each beat without a note of its own under a held tune
constexpr double busyNotesABeat = 1.75;
constexpr double heldNotesABeat = 0.6;

int onsetsOf(Laid const& laid)
{
    int count = 0;
    double last = -1;
    for (Pluck const& p : laid.plucks) {
        if (p.at != last) ++count;
        last = p.at;
    }
    return count;
}

bool begins(Laid const& laid, PassView const& pass, double at)
{
    return std::ranges::any_of(laid.plucks, [&](Pluck const& p) { return p.at == at; }) ||
           std::ranges::any_of(pass.tune, [&](TuneNote const& n) { return n.from == at; });
}

Points emptyBeats(View const& view, Laid const& laid, PassView const& pass)
{
    Points sum = 0;
    music::Length const beat = music::beatLength(view.meter);
    for (music::Length at{0}; at < view.spanLength; at = at + beat) {
        if (begins(laid, pass, at.wholes.toDouble())) continue;
        int const strength = strengthAt(view, at);
        sum += strength >= 2 ? strongBeatEmpty : strength == 1 ? beatEmpty : 0;
    }
    return sum;
}

Points againstActivity(View const& view, Laid const& laid, PassView const& pass)
{
    double const beats = std::max(1.0, view.span / view.beat);
    double const tuneNotesABeat = tuneOnsets(view, pass) / beats;
    int const onsets = onsetsOf(laid);
    if (tuneNotesABeat > busyNotesABeat)
        return extraNote * std::max(0L, std::lround(onsets - beats));
    if (tuneNotesABeat < heldNotesABeat && view.close == Close::None)
        return stillness * std::max(0L, std::lround(beats) - onsets);
    return 0;
}

} // namespace

Points meterFit(View const& view, Laid const& laid)
{
    bool const onFirst = !laid.rests() && laid.plucks.front().at == 0;
    Points worst = 0;
    for (PassView const& pass : view.passes)
        worst =
            std::max(worst, emptyBeats(view, laid, pass) + againstActivity(view, laid, pass));
    return worst + (onFirst ? 0 : firstBeatMissing);
}

} // namespace arrange
