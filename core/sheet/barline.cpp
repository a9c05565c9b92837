#include "core/sheet/barline.h"

#include "core/sheet/glyphs.h"

namespace sheet {

namespace {

struct Strokes {
    BarLineShape shape;
    MusicFont const& font;

    double widthOf(Stroke stroke) const
    {
        switch (stroke) {
        case Stroke::Thin:
            return engravingOf(font, "thinBarlineThickness", 0.16);
        case Stroke::Thick:
            return engravingOf(font, "thickBarlineThickness", 0.5);
        default:
            return advanceOf(font, glyph::repeatDots);
        }
    }
    double gapBetween(Stroke a, Stroke b) const
    {
        return a == Stroke::Dots || b == Stroke::Dots
                   ? engravingOf(font, "repeatBarlineDotSeparation", 0.16)
                   : engravingOf(font, "barlineSeparation", 0.4);
    }
    void add(Stroke stroke)
    {
        if (!shape.parts.empty()) shape.width += gapBetween(shape.parts.back().stroke, stroke);
        shape.parts.push_back({stroke, shape.width});
        shape.width += widthOf(stroke);
    }
};

} // namespace

BarLineShape barLineShape(tune::Bar const* before, tune::Bar const* after,
                          MusicFont const& font)
{
    Strokes strokes{{}, font};
    bool const closes = before && before->repeatCloses;
    bool const opens = after && after->repeatOpens;
    if (closes) {
        strokes.add(Stroke::Dots);
        strokes.add(Stroke::Thin);
        strokes.add(Stroke::Thick);
    }
    if (opens) {
        if (!closes) strokes.add(Stroke::Thick);
        strokes.add(Stroke::Thin);
        strokes.add(Stroke::Dots);
    }
    if (closes || opens || !before) return strokes.shape;
    if (before->closes == tune::BarLine::None) return strokes.shape;
    strokes.add(Stroke::Thin);
    if (before->closes == tune::BarLine::Double) strokes.add(Stroke::Thin);
    if (before->closes == tune::BarLine::Final) strokes.add(Stroke::Thick);
    return strokes.shape;
}

void drawBarLine(Pen& pen, BarLineShape const& shape, double x,
                 std::vector<double> const& staves)
{
    for (BarLineShape::Part const& part : shape.parts) {
        if (part.stroke == Stroke::Dots) {
            for (double top : staves) pen.glyph(glyph::repeatDots, {x + part.left, top + 4});
            continue;
        }
        double const thickness = part.stroke == Stroke::Thin
                                     ? engravingOf(pen.font(), "thinBarlineThickness", 0.16)
                                     : engravingOf(pen.font(), "thickBarlineThickness", 0.5);
        double const middle = x + part.left + thickness / 2;
        double const overhang = engravingOf(pen.font(), "staffLineThickness", 0.13) / 2;
        pen.line({middle, staves.front() - overhang}, {middle, staves.back() + 4 + overhang},
                 thickness);
    }
}

} // namespace sheet
