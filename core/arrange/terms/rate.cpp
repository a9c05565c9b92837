#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

namespace {

constexpr double easyShare = 0.7; // of the level's limit
constexpr double atTheLimit = 200; // beyond it nothing is proposed

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

} // namespace

Points rate(View const& view, Laid const& laid)
{
    if (laid.rests()) return 0;
    double const notesPerSecond = 1.0 / view.seconds(shortestGap(view, laid));
    double const share = notesPerSecond / view.level->leftNotesPerSecond;
    double const strain = std::max(0.0, (share - easyShare) / (1 - easyShare));
    return std::lround(atTheLimit * strain * strain);
}

} // namespace arrange
