#include "core/sheet/stringpath.h"

#include "core/harp/harp.h"
#include "core/sheet/geometry.h"
#include "core/sheet/words.h"

#include <algorithm>

namespace sheet {

namespace {

constexpr double bead = 2.3; // across, in spaces
constexpr double leastShare = 0.62;
constexpr double between = 0.15;
constexpr double aboveBeads = 0.7;
constexpr double beadHeight = 1.3; // em of its words
constexpr double rim = 0.12; // of a bead
constexpr double pathThickness = 0.1;

std::string nameOfString(music::Pitch pitch)
{
    return std::to_string(harp::harpOctave(pitch)) +
           music::plain(music::PitchName{pitch.letter, 0});
}

// Beads are smaller on a line where two would touch.
double shareFor(std::vector<PathStop> const& stops)
{
    double share = 1;
    for (std::size_t i = 1; i < stops.size(); ++i)
        share = std::min(share, (stops[i].x - stops[i - 1].x - between) / bead);
    return std::max(share, leastShare);
}

void drawBead(Pen& pen, music::Pitch pitch, Point middle, double share, Helps const& helps)
{
    Ink const ink = inkOf(pitch.letter, helps);
    double const radius = share * bead / 2;
    pen.circle(middle, radius, Ink::Paper);
    pen.ring(middle, radius - rim / 2, rim, ink);
    double const height = share * beadHeight;
    pen.words(nameOfString(pitch), {middle.x, middle.y + 0.36 * height}, height, Face::SansBold,
              Anchor::Centre, ink);
}

} // namespace

void drawStringPath(Pen& pen, std::vector<PathStop> const& stops, double width,
                    Helps const& helps)
{
    if (stops.empty()) return;
    double const share = shareFor(stops);
    double const across = share * bead;
    std::size_t most = 1;
    for (PathStop const& stop : stops) most = std::max(most, stop.strings.size());
    double const top = pen.reach().bottom(0, width, 4) + aboveBeads;
    double const line = top + static_cast<double>(most) * across - across / 2;
    pen.belongTo({});
    pen.line({0, line}, {width, line}, pathThickness, Ink::Quiet);
    for (PathStop const& stop : stops) {
        pen.belongTo(stop.bar, stop.position);
        double y = line;
        for (music::Pitch const& string : stop.strings) {
            drawBead(pen, string, {stop.x, y}, share, helps);
            y -= across;
        }
    }
    pen.belongTo({});
}

} // namespace sheet
