#include "ui/paint/sheetpainter.h"

#include "ui/paint/lettering.h"
#include "ui/paint/sheetfonts.h"

#include <QPainter>
#include <QPainterPath>

namespace ui {

QColor colourOf(sheet::Ink ink, SheetColours const& colours)
{
    switch (ink) {
    case sheet::Ink::Staff:
        return colours.staff;
    case sheet::Ink::Words:
        return colours.words;
    case sheet::Ink::Chord:
        return colours.chord;
    case sheet::Ink::PatternLabel:
        return colours.patternLabel;
    case sheet::Ink::Finger:
        return colours.finger;
    case sheet::Ink::Lever:
        return colours.lever;
    case sheet::Ink::Caution:
        return colours.caution;
    case sheet::Ink::RedString:
        return colours.redString;
    case sheet::Ink::BlueString:
        return colours.blueString;
    case sheet::Ink::Paper:
        return colours.paper;
    case sheet::Ink::Quiet:
        return colours.quiet;
    case sheet::Ink::Music:
        break;
    }
    return colours.music;
}

// A cubic reaches three quarters of the way to its control points.
double halfOf(sheet::Bow const& bow)
{
    double const half = bow.thicknessMm / 2 * 4 / 3;
    return bow.control1.y < bow.from.y ? -half : half;
}

namespace {

QPointF point(sheet::Point p) { return {p.x, p.y}; }

class Painting {
public:
    Painting(QPainter& painter, SheetColours const& colours, Lettering lettering)
        : m_painter(painter), m_colours(colours), m_lettering(lettering)
    {}

    void operator()(sheet::Glyph const& glyph)
    {
        QTransform place = QTransform::fromTranslate(glyph.at.x, glyph.at.y);
        if (glyph.upright) place.rotate(-90);
        drawSign(glyph.code, place, glyph.staffSpaceMm, glyph.ink);
    }

    void operator()(sheet::Words const& words)
    {
        for (LetterRun const& run : runsOf(words)) {
            if (run.sign != 0) {
                sheet::Point const at = signPlace(run, words);
                drawSign(run.sign, QTransform::fromTranslate(at.x, at.y), signSpaceMm(words),
                         words.ink);
            } else {
                drawLetters(run, words);
            }
        }
    }

    void operator()(sheet::Line const& line)
    {
        QPen pen(colourOf(line.ink, m_colours), line.thicknessMm, Qt::SolidLine, Qt::FlatCap);
        if (line.dashed) pen.setDashPattern({4, 3});
        m_painter.setPen(pen);
        m_painter.drawLine(point(line.from), point(line.to));
    }

    void operator()(sheet::Shape const& shape)
    {
        QPolygonF polygon;
        for (sheet::Point corner : shape.corners) polygon << point(corner);
        fill(shape.ink);
        m_painter.drawPolygon(polygon);
    }

    void operator()(sheet::Bow const& bow)
    {
        double const side = halfOf(bow);
        auto const outer = [side](sheet::Point p) { return QPointF(p.x, p.y + side); };
        auto const inner = [side](sheet::Point p) { return QPointF(p.x, p.y - side); };
        QPainterPath path(point(bow.from));
        path.cubicTo(outer(bow.control1), outer(bow.control2), point(bow.to));
        path.cubicTo(inner(bow.control2), inner(bow.control1), point(bow.from));
        fill(bow.ink);
        m_painter.drawPath(path);
    }

    void operator()(sheet::Circle const& circle)
    {
        QColor const colour = colourOf(circle.ink, m_colours);
        m_painter.setPen(circle.thicknessMm > 0 ? QPen(colour, circle.thicknessMm)
                                                : QPen(Qt::NoPen));
        m_painter.setBrush(circle.thicknessMm > 0 ? QBrush(Qt::NoBrush) : QBrush(colour));
        m_painter.drawEllipse(point(circle.centre), circle.radiusMm, circle.radiusMm);
    }

private:
    void fill(sheet::Ink ink)
    {
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(colourOf(ink, m_colours));
    }

    // Draws in units of the fonts' em at a place of the page.
    template<typename Draw>
    void inEm(QTransform const& place, double em, sheet::Ink ink, Draw draw)
    {
        QTransform const before = m_painter.transform();
        m_painter.setTransform(QTransform::fromScale(em / fontEm, em / fontEm) * place, true);
        if (m_lettering == Lettering::Fonts)
            m_painter.setPen(colourOf(ink, m_colours));
        else
            fill(ink);
        draw();
        m_painter.setTransform(before);
    }

    // A SMuFL font's em is four staff spaces.
    void drawSign(char32_t code, QTransform const& place, double staffSpace, sheet::Ink ink)
    {
        inEm(place, 4 * staffSpace, ink, [&] {
            if (m_lettering == Lettering::Outlines) {
                m_painter.drawPath(outlineOf(code));
                return;
            }
            m_painter.setFont(m_musicFont);
            m_painter.drawText(QPointF(0, 0), QString::fromUcs4(&code, 1));
        });
    }

    void drawLetters(LetterRun const& run, sheet::Words const& words)
    {
        QFont const font = textFont(words.face);
        inEm(QTransform::fromTranslate(run.x, words.at.y), words.heightMm, words.ink, [&] {
            if (m_lettering == Lettering::Outlines) {
                QPainterPath path;
                path.addText(0, 0, font, letters(run.text));
                m_painter.drawPath(path);
                return;
            }
            m_painter.setFont(font);
            m_painter.drawText(QPointF(0, 0), letters(run.text));
        });
    }

    QPainter& m_painter;
    SheetColours const& m_colours;
    Lettering m_lettering;
    QFont m_musicFont = musicGlyphFont();
};

} // namespace

void paintPage(QPainter& painter, sheet::Page const& page, SheetColours const& colours,
               Lettering lettering)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    Painting painting(painter, colours, lettering);
    for (sheet::Mark const& mark : page.marks) std::visit(painting, mark.what);
    painter.restore();
}

} // namespace ui
