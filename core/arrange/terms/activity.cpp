#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

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

} // namespace

double tuneNotesABeat(View const& view, PassView const& pass)
{
    return tuneOnsets(view, pass) / std::max(1.0, view.span / view.beat);
}

Points activity(View const& view, Laid const& laid)
{
    Taste::Activity const& taste = view.taste->activity;
    double const beats = std::max(1.0, view.span / view.beat);
    int const onsets = onsetsOf(laid);
    Points worst = 0;
    for (PassView const& pass : view.passes) {
        double const notesABeat = tuneNotesABeat(view, pass);
        if (notesABeat > taste.busyNotesABeat)
            worst =
                std::max(worst, taste.extraNote * std::max(0L, std::lround(onsets - beats)));
        if (notesABeat < taste.heldNotesABeat && view.close == Close::None)
            worst =
                std::max(worst, taste.stillness * std::max(0L, std::lround(beats) - onsets));
    }
    return worst;
}

} // namespace arrange
