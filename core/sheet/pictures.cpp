#include "core/sheet/pictures.h"

#include "core/sheet/words.h"

#include <algorithm>
#include <sstream>

namespace sheet {

namespace {

using harp::Lever;
using music::Letter;

// The picture of the levers, in spaces.
constexpr double leverGap = 0.86;
constexpr double leverTop = 0.95;    // where the strings begin, under the levers
constexpr double leverFoot = 3.1;    // where they end
constexpr double leverLetters = 1.3; // em of the letters under them

// A shape on its strings, in spaces.
constexpr double shapeGap = 1.3;
constexpr double wideGap = 1.8; // where 10, 11 and 12 stand side by side
constexpr double ring = 0.72;
constexpr double rise = 1.05; // from one finger to the next
constexpr double aboveRings = 0.95;
constexpr double pictureTitleHeight = 1.6;
constexpr double belowTitle = 0.55;
constexpr double fingerHeight = 1.4; // of the digits: read from the stand
constexpr double nameHeight = 1.25;
constexpr double captionHeight = 1.3;

struct StringLook {
    Ink ink = Ink::Quiet;
    double thickness = 0.07;
};
StringLook lookOf(PicturedString const& string)
{
    if (string.letter == Letter::C) return {Ink::RedString, 0.17};
    if (string.letter == Letter::F) return {Ink::BlueString, 0.17};
    return {};
}

bool carriesLetter(PicturedString const& string)
{
    return string.letter == Letter::C || string.letter == Letter::F;
}
std::string letterOf(PicturedString const& string)
{
    return music::shown(music::PitchName{string.letter, 0});
}

// From one string of a shape to the next.
double gapOf(ShapePicture const& picture)
{
    for (std::size_t i = 1; i < picture.dots.size(); ++i) {
        ShapeDot const& low = picture.dots[i - 1];
        ShapeDot const& high = picture.dots[i];
        if (high.string == low.string + 1 && low.under.size() > 1 && high.under.size() > 1)
            return wideGap;
    }
    return shapeGap;
}

double shapeWidth(ShapePicture const& picture, double s)
{
    double const strings =
        (static_cast<double>(picture.strings.size()) - 1) * gapOf(picture) * s;
    Face const face = picture.ofChord ? Face::Bold : Face::SansBold;
    return std::max({strings + 2 * ring * s,
                     widthOf(picture.title, face, pictureTitleHeight * s),
                     widthOf(picture.caption, Face::Sans, captionHeight * s)});
}

double ringsHeight(int rows, double s)
{
    return (2 * aboveRings + (std::max(rows, 1) - 1) * rise) * s;
}

// The strings of a shape, one by one.
struct ShapeDrawing {
    Pen& pen;
    ShapePicture const& picture;
    double s;
    double top;
    double foot;

    double names() const { return foot + (0.3 + 0.74 * nameHeight) * s; }
    StringLook look(PicturedString const& string) const
    {
        return picture.coloured ? lookOf(string) : StringLook{};
    }

    void bare(double x, PicturedString const& string) const
    {
        StringLook const l = look(string);
        pen.line({x, top}, {x, foot}, l.thickness * s, l.ink);
        if (picture.coloured && carriesLetter(string))
            pen.words(letterOf(string), {x, names()}, nameHeight * s, Face::Sans,
                      Anchor::Centre, l.ink);
    }

    void fingered(double x, PicturedString const& string, std::size_t dot) const
    {
        StringLook const l = look(string);
        bool const lettered = picture.coloured && carriesLetter(string);
        Ink const ink = lettered ? l.ink : Ink::Words;
        double const y = foot - (aboveRings + static_cast<double>(dot) * rise) * s;
        ShapeDot const& on = picture.dots[dot];
        pen.line({x, top}, {x, y - ring * s}, l.thickness * s, l.ink);
        pen.line({x, y + ring * s}, {x, foot}, l.thickness * s, l.ink);
        pen.ring({x, y}, ring * s, 0.12 * s, ink);
        pen.words(std::to_string(on.finger), {x, y + 0.36 * fingerHeight * s}, fingerHeight * s,
                  Face::SansBold, Anchor::Centre, Ink::Finger);
        pen.words(on.under, {x, names()}, nameHeight * s,
                  picture.coloured ? Face::SansBold : Face::Sans, Anchor::Centre, ink);
    }
};

} // namespace

Ink inkOf(PicturedString const& string) { return lookOf(string).ink; }

void drawLever(Pen& pen, PicturedString const& string, Point at, double s)
{
    if (!string.hasLever) return;
    if (string.lever == Lever::Down) {
        pen.line({at.x - 0.2 * s, at.y + 0.72 * s}, {at.x + 0.2 * s, at.y + 0.72 * s}, 0.09 * s,
                 Ink::Quiet);
        return;
    }
    pen.shape({{at.x - 0.3 * s, at.y + 0.15 * s},
               {at.x + 0.3 * s, at.y},
               {at.x + 0.3 * s, at.y + 0.75 * s},
               {at.x - 0.3 * s, at.y + 0.9 * s}},
              Ink::Lever);
}

LeverPicture leverPicture(harp::Harp const& harp, harp::LeverSetting const& setup)
{
    LeverPicture picture;
    for (harp::StringIndex const i : harp.indices())
        picture.strings.push_back(
            {harp.string(i).open.letter, harp.string(i).hasLever, setup[i]});
    return picture;
}

Box leverPictureBox(LeverPicture const& picture, double scale)
{
    double const gaps = static_cast<double>(picture.strings.size()) - 1;
    return {0, 0, (gaps * leverGap + 1.0) * scale,
            (leverFoot + 0.25 + wordsRise * leverLetters) * scale};
}

void drawLeverPicture(Pen& pen, LeverPicture const& picture, Point at, double scale)
{
    double x = at.x + 0.5 * scale;
    for (PicturedString const& string : picture.strings) {
        StringLook const look = lookOf(string);
        drawLever(pen, string, {x, at.y}, scale);
        pen.line({x, at.y + leverTop * scale}, {x, at.y + leverFoot * scale},
                 look.thickness * scale, look.ink);
        if (carriesLetter(string))
            pen.words(letterOf(string),
                      {x, at.y + (leverFoot + 0.25 + 0.72 * leverLetters) * scale},
                      leverLetters * scale, Face::SansBold, Anchor::Centre, look.ink);
        x += leverGap * scale;
    }
}

Box shapePictureBox(ShapePicture const& picture, int rows, double scale)
{
    double height = ringsHeight(rows, scale) + (0.3 + nameHeight) * scale;
    if (!picture.title.empty()) height += (pictureTitleHeight * wordsRise + belowTitle) * scale;
    if (!picture.caption.empty()) height += (0.35 + captionHeight) * scale;
    return {0, 0, shapeWidth(picture, scale), height};
}

void drawShapePicture(Pen& pen, ShapePicture const& picture, Point at, int rows, double scale)
{
    double const middle = at.x + shapeWidth(picture, scale) / 2;
    double top = at.y;
    if (!picture.title.empty()) {
        double const baseline = top + pictureTitleHeight * wordsRise * scale;
        pen.words(picture.title, {middle, baseline}, pictureTitleHeight * scale,
                  picture.ofChord ? Face::Bold : Face::SansBold, Anchor::Centre,
                  picture.ofChord ? Ink::Chord : Ink::PatternLabel);
        top = baseline + belowTitle * scale;
    }
    double const gaps = static_cast<double>(picture.strings.size()) - 1;
    ShapeDrawing drawing{pen, picture, scale, top, top + ringsHeight(rows, scale)};
    std::size_t dot = 0;
    for (std::size_t i = 0; i < picture.strings.size(); ++i) {
        double const x = middle + (static_cast<double>(i) - gaps / 2) * gapOf(picture) * scale;
        bool const placed =
            dot < picture.dots.size() && picture.dots[dot].string == static_cast<int>(i);
        if (placed)
            drawing.fingered(x, picture.strings[i], dot++);
        else
            drawing.bare(x, picture.strings[i]);
    }
    if (!picture.caption.empty())
        pen.words(picture.caption, {middle, drawing.names() + (0.6 + captionHeight) * scale},
                  captionHeight * scale, Face::Sans, Anchor::Centre, Ink::Quiet);
}

double drawShapeBox(Pen& pen, std::vector<ShapePicture> const& shapes,
                    std::string const& heading, double width, double scale)
{
    double const padding = 1.1 * scale;
    constexpr double headingHeight = 1.55;
    double const between = 2.2 * scale;
    int rows = 2;
    for (ShapePicture const& shape : shapes)
        rows = std::max(rows, static_cast<int>(shape.dots.size()));

    double y = padding + 0.72 * headingHeight;
    pen.words(heading, {padding, y}, headingHeight, Face::Bold);
    y += scale;
    double x = padding;
    double rowHeight = 0;
    double used = widthOf(heading, Face::Bold, headingHeight) + padding;
    for (ShapePicture const& shape : shapes) {
        Box const box = shapePictureBox(shape, rows, scale);
        if (x > padding && x + box.right > width - padding) {
            x = padding;
            y += rowHeight + 1.1;
            rowHeight = 0;
        }
        drawShapePicture(pen, shape, {x, y}, rows, scale);
        x += box.right + between;
        used = std::max(used, x - between);
        rowHeight = std::max(rowHeight, box.bottom);
    }
    double const height = y + rowHeight + padding;
    pen.frame({0, 0, std::min(width, used + padding), height}, 0.13, Ink::Quiet);
    return height;
}

std::vector<std::string> wrapped(std::string const& text, Face face, double height,
                                 double width)
{
    std::vector<std::string> lines;
    std::istringstream words(text);
    for (std::string word; words >> word;) {
        std::string const longer = lines.empty() ? word : lines.back() + ' ' + word;
        if (!lines.empty() && widthOf(longer, face, height) <= width)
            lines.back() = longer;
        else
            lines.push_back(word);
    }
    return lines;
}

} // namespace sheet
