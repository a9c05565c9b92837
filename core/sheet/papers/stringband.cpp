#include "core/sheet/papers/stringband.h"

#include "core/sheet/shapes.h"
#include "core/sheet/words.h"

#include <algorithm>

namespace sheet {

namespace {

constexpr double setupHeight = 1.6;
constexpr double leverRoom = 1.3;
constexpr double stringsHigh = 7.2;
constexpr double soundHeight = 1.15;
constexpr double ring = 0.95;
constexpr double fingerHeight = 1.45;
constexpr double footOfLowest = 1.5; // from the lowest ring to the strings' end
constexpr double mostGap = 3.2;      // between strings

} // namespace

StringBand stringBand(arrange::Arrangement const& arrangement, arrange::Voicing const& voicing)
{
    harp::Harp const& harp = arrangement.harp;
    StringBand band;
    band.strings = leverPicture(harp, arrangement.levers.setup).strings;
    for (harp::StringIndex const i : harp.indices())
        band.sounds.push_back(music::shown(nameOf(
            harp::sounding(harp.string(i), band.strings[static_cast<std::size_t>(i)].lever))));
    ShapePicture const shape = shapeOn(harp, arrangement.levers, voicing, {});
    harp::StringIndex lowest = voicing.notes.front().string;
    for (arrange::VoicedNote const& note : voicing.notes)
        lowest = std::min(lowest, note.string);
    int const before = lowest - shape.dots.front().string; // strings left of the picture
    for (ShapeDot dot : shape.dots) {
        dot.string += before;
        band.dots.push_back(std::move(dot));
    }
    band.setup = harp::setupLine(harp, arrangement.levers.setup);
    return band;
}

double drawStringBand(Pen& pen, StringBand const& band, double width)
{
    double const count = static_cast<double>(band.strings.size());
    double const gap = std::min(mostGap, (width - 2.4) / (count - 1));
    double const left = (width - gap * (count - 1)) / 2;
    double y = 0.74 * setupHeight;
    pen.words(band.setup, {0, y}, setupHeight, Face::SansBold, Anchor::Left, Ink::Lever);
    double const levers = y + 0.9;
    double const top = levers + leverRoom;
    double const foot = top + stringsHigh;
    double const rise = band.dots.size() > 1
                            ? std::min(1.9, (stringsHigh - footOfLowest - ring - 0.4) /
                                                (static_cast<double>(band.dots.size()) - 1))
                            : 0.0;
    std::size_t dot = 0;
    for (std::size_t i = 0; i < band.strings.size(); ++i) {
        double const x = left + static_cast<double>(i) * gap;
        PicturedString const& string = band.strings[i];
        Ink const ink = inkOf(string);
        double const thickness = ink == Ink::Quiet ? 0.09 : 0.22;
        drawLever(pen, string, {x, levers}, 1.35);
        bool const placed =
            dot < band.dots.size() && band.dots[dot].string == static_cast<int>(i);
        if (placed) {
            double const at = foot - footOfLowest - static_cast<double>(dot) * rise;
            pen.line({x, top}, {x, at - ring}, thickness, ink);
            pen.line({x, at + ring}, {x, foot}, thickness, ink);
            pen.ring({x, at}, ring, 0.2, Ink::PatternLabel);
            pen.words(std::to_string(band.dots[dot].finger), {x, at + 0.36 * fingerHeight},
                      fingerHeight, Face::SansBold, Anchor::Centre, Ink::Finger);
            ++dot;
        } else {
            pen.line({x, top}, {x, foot}, thickness, ink);
        }
        pen.words(band.sounds[i], {x, foot + 0.4 + 0.74 * soundHeight}, soundHeight,
                  placed || ink != Ink::Quiet ? Face::SansBold : Face::Sans, Anchor::Centre,
                  ink == Ink::Quiet ? Ink::Words : ink);
    }
    return foot + 0.4 + soundHeight;
}

} // namespace sheet
