#include "core/sheet/breaks.h"

#include "core/sheet/division.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace sheet {

namespace {

using tune::BarIndex;

constexpr double strainWeight = 6;
constexpr double squeezeWeight = 30;  // crowded lines read worse than loose ones
constexpr double countWeight = 1.2;   // per bar squared from the preferred number
constexpr double partInsideLine = 9;  // a part begins in mid-line
constexpr double halfCount = 2;        // half the preferred number: two lines to a phrase
constexpr double halfPhrase = 1.5;     // a line begins in the middle of a phrase
constexpr double insidePhrase = 6;     // or anywhere else in it
constexpr double tooNarrow = 1e6;     // one bar that is wider than the line
constexpr double looseLastLine = 0.2; // share of the strain that counts on a loose last line
constexpr double stub = 3.5;          // a last line that is hardly a line
constexpr double stubShare = 0.4;     // of the room, at most

struct Line {
    double natural = 0;
    double least = 0;
    double bars = 0;
    int partsInside = 0;
};

double strainOf(double room, double natural)
{
    double const strain = std::log(room / natural);
    return (strain < 0 ? squeezeWeight : strainWeight) * strain * strain;
}

// Whole bars since the phrase began; a bar after a pick-up belongs to the pick-up's line.
int barOfPhrase(BarWidth const& bar)
{
    constexpr double hair = 0.01;
    if (bar.inPart > hair && bar.inPart < 1 - hair) return 1;
    return static_cast<int>(std::floor(bar.inPart + hair)) % 4;
}

double startCost(BarWidth const& bar)
{
    int const place = barOfPhrase(bar);
    if (place == 0) return 0;
    return place == 2 ? halfPhrase : insidePhrase;
}

double costOf(Line const& line, double room, LineRoom const& wish, bool last)
{
    double cost = partInsideLine * line.partsInside;
    double strain = strainOf(room, line.natural);
    double const away = line.bars - wish.preferredBars;
    if (last && line.natural < room) strain *= looseLastLine;
    double const fromHalf = line.bars - wish.preferredBars / 2;
    if (!last || away > 0)
        cost += wish.preference * std::min(countWeight * away * away,
                                           halfCount + countWeight * fromHalf * fromHalf);
    if (last && away < 0) cost += 0.1 * countWeight * away * away;
    if (last && line.natural < stubShare * room) cost += stub;
    return cost + strain;
}

} // namespace

std::vector<BarIndex> lineStarts(BarWidths const& bars, LineRoom const& room)
{
    Division<BarIndex> division(bars.beyond());
    for (BarIndex const first : bars.indices()) {
        double const width = room.width - (first == 0 ? room.firstHead : room.head);
        double const start = first == 0 ? 0 : room.preference * startCost(bars[first]);
        Line line;
        for (BarIndex end = first + 1; end <= bars.beyond(); ++end) {
            BarWidth const& bar = bars[end - 1];
            line.natural += bar.natural;
            line.least += bar.least;
            line.bars += bar.bars;
            line.partsInside += end - 1 > first && bar.beginsPart ? 1 : 0;
            bool const alone = end == first + 1;
            if (line.least > width && !alone) break;
            double const cost = division.cost(first) + start +
                                costOf(line, width, room, end == bars.beyond()) +
                                (line.least > width ? tooNarrow : 0);
            division.offer(first, end, cost);
        }
    }
    return division.starts();
}

int linesOffPhrase(BarWidths const& bars, std::vector<BarIndex> const& starts)
{
    return static_cast<int>(
        std::count_if(starts.begin(), starts.end(), [&bars](BarIndex start) {
            return start > 0 && startCost(bars[start]) >= insidePhrase;
        }));
}

} // namespace sheet
