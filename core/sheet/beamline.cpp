#include "core/sheet/beamline.h"

#include "core/sheet/geometry.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheet {

namespace {

// Rise of the beam in spaces for an interval in staff steps [ross70]: a second a quarter
// space, a third half a space, and so on to a space and a quarter.
double riseFor(double steps)
{
    return std::min(std::abs(steps) * 0.25, geometry::steepestBeam);
}

// A note between the outer two that lies nearer the beam than both: the group turns back.
bool turnsBack(std::vector<BeamStem> const& stems, bool up)
{
    double const first = stems.front().headY;
    double const last = stems.back().headY;
    double const outer = up ? std::min(first, last) : std::max(first, last);
    return std::any_of(stems.begin() + 1, stems.end() - 1, [&](BeamStem const& stem) {
        return up ? stem.headY <= outer : stem.headY >= outer;
    });
}

double slantOf(std::vector<BeamStem> const& stems, bool up)
{
    double const fall = stems.back().headY - stems.front().headY; // positive: downwards
    if (stems.size() > 2 && turnsBack(stems, up)) return 0;
    double rise = riseFor(2 * fall);
    if (stems.back().x - stems.front().x < geometry::narrowGroup)
        rise = std::min(rise, geometry::steepestNarrow);
    return fall < 0 ? -rise : rise;
}

// Beams sit on, straddle or hang from a staff line, so that no thin wedge of white stays
// [ross70]. Moves the outer edge of a level beam away from the notes to such a place.
double settled(double y, bool up, double thickness)
{
    if (y < -0.5 || y > 4.5) return y;
    std::array const places{0.0, thickness / 2,
                            thickness}; // edge below a line: hang, straddle, sit
    double best = y - (up ? 1.0 : -1.0);
    for (int line = -1; line <= 5; ++line)
        for (double place : places) {
            double const edge = up ? line - place : line + place;
            bool const outward = up ? edge <= y + 1e-9 : edge >= y - 1e-9;
            if (outward && std::abs(edge - y) < std::abs(best - y)) best = edge;
        }
    return best;
}

} // namespace

BeamLine beamLine(std::vector<BeamStem> const& stems, bool up, double thickness, double spacing)
{
    double const away = up ? -1.0 : 1.0; // from the notes to the beam
    double const width = std::max(stems.back().x - stems.front().x, 0.01);
    double const slant = slantOf(stems, up);
    auto const lean = [&](BeamStem const& stem) {
        return slant * (stem.x - stems.front().x) / width;
    };
    // The height of the first end that gives every stem its due.
    double start = stems.front().headY + away * geometry::shortestStem;
    for (BeamStem const& stem : stems) {
        double const extra =
            std::max(0, stem.beams - 1) * (thickness + spacing) * (stem.beams > 2 ? 1.0 : 0.5);
        bool const outer = &stem == &stems.front() || &stem == &stems.back();
        double const least = (outer && stems.size() <= 3 ? geometry::stemLength - 0.25
                                                         : geometry::shortestStem) +
                             extra;
        double const needed = stem.headY + away * least - lean(stem);
        start = up ? std::min(start, needed) : std::max(start, needed);
        double const middle = 2.0 - lean(stem);
        start = up ? std::min(start, middle) : std::max(start, middle);
    }
    double const moved = settled(start, up, thickness);
    return {moved, moved + slant};
}

} // namespace sheet
