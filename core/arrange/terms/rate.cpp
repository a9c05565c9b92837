#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

// The shortest time between two onsets, the next position's first onset among them.
double shortestGap(View const& view, Laid const& laid)
{
    double shortest = view.span - laid.plucks.back().at;
    for (std::size_t i = 0; i + 1 < laid.plucks.size(); ++i) {
        double const gap = laid.plucks[i + 1].at - laid.plucks[i].at;
        if (gap > 0) shortest = std::min(shortest, gap);
    }
    return shortest;
}

// What it costs that fingers cross under the thumb, the hand going up, the dearer the quicker.
double crossings(View const& view, Laid const& laid)
{
    Taste::Rate const& taste = view.taste->rate;
    double sum = 0;
    for (std::size_t i = 0; i + 1 < laid.plucks.size(); ++i) {
        Pluck const& from = laid.plucks[i];
        Pluck const& to = laid.plucks[i + 1];
        if (from.finger != 1 || to.string <= from.string || to.at <= from.at) continue;
        double const leisure =
            view.seconds(to.at - from.at) /
            taste.crossesAtLeisure[static_cast<std::size_t>(view.level->number - 1)];
        sum += taste.crossesAtOnce * std::max(0.0, 1 - leisure);
    }
    return sum;
}

} // namespace

Points rate(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double const notesPerSecond = 1.0 / view.seconds(shortestGap(view, laid));
    double const share = notesPerSecond / view.level->leftNotesPerSecond;
    double const easy = view.taste->rate.easyShare;
    double const strain = std::clamp((share - easy) / (1 - easy), 0.0, 1.0);
    return std::lround(view.taste->rate.atTheLimit * strain * strain + crossings(view, laid));
}

} // namespace arrange
