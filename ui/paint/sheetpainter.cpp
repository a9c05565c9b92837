#include "ui/paint/sheetpainter.h"

#include "core/sheet/glyphs.h"
#include "core/sheet/words.h"
#include "ui/paint/sheetfonts.h"

#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <QPainterPath>

#include <string_view>

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

namespace {

QPointF point(sheet::Point p) { return {p.x, p.y}; }

QString character(char32_t code) { return QString::fromUcs4(&code, 1); }

// Outlines are made once a thread and kept: a page draws the same few signs over and over.
QPainterPath const& outlineOf(char32_t code)
{
    thread_local QHash<char32_t, QPainterPath> outlines;
    auto found = outlines.find(code);
    if (found == outlines.end()) {
        QPainterPath path;
        path.addText(0, 0, musicGlyphFont(), character(code));
        found = outlines.insert(code, path);
    }
    return *found;
}

char32_t signGlyph(sheet::AccidentalSign sign)
{
    switch (sign) {
    case sheet::AccidentalSign::Flat:
        return sheet::glyph::accidentalFlat;
    case sheet::AccidentalSign::Sharp:
        return sheet::glyph::accidentalSharp;
    case sheet::AccidentalSign::Natural:
        break;
    }
    return sheet::glyph::accidentalNatural;
}

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
        double const width = widthOf(words);
        double x = words.at.x;
        if (words.anchor == sheet::Anchor::Centre) x -= width / 2;
        if (words.anchor == sheet::Anchor::Right) x -= width;
        forEachRun(words.text, [&](std::string_view run) { x += drawRun(run, words, x); });
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

    // Two curves through the same ends, a thickness apart in the middle: a cubic reaches three
    // quarters of the way to its control points.
    void operator()(sheet::Bow const& bow)
    {
        double const half = bow.thicknessMm / 2 * 4 / 3;
        double const side = bow.control1.y < bow.from.y ? -half : half;
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
            m_painter.drawText(QPointF(0, 0), character(code));
        });
    }

    // Hands over stretches without accidentals, and accidentals one by one.
    template<typename Take>
    static void forEachRun(std::string_view text, Take take)
    {
        std::size_t start = 0;
        for (std::size_t i = 0; i < text.size();) {
            if (!sheet::accidentalSignAt(text.substr(i))) {
                ++i;
                continue;
            }
            if (i > start) take(text.substr(start, i - start));
            take(text.substr(i, sheet::accidentalSignBytes));
            i += sheet::accidentalSignBytes;
            start = i;
        }
        if (start < text.size()) take(text.substr(start));
    }

    static QString unicode(std::string_view run)
    {
        return QString::fromUtf8(run.data(), static_cast<qsizetype>(run.size()));
    }

    static double runWidth(std::string_view run, sheet::Words const& words)
    {
        if (sheet::accidentalSignAt(run)) return sheet::accidentalSignWidth * words.heightMm;
        return QFontMetricsF(textFont(words.face)).horizontalAdvance(unicode(run)) / fontEm *
               words.heightMm;
    }

    static double widthOf(sheet::Words const& words)
    {
        double width = 0;
        forEachRun(words.text, [&](std::string_view run) { width += runWidth(run, words); });
        return width;
    }

    double drawRun(std::string_view run, sheet::Words const& words, double x)
    {
        double const em = words.heightMm;
        if (auto const sign = sheet::accidentalSignAt(run)) {
            drawSign(signGlyph(*sign),
                     QTransform::fromTranslate(x + 0.03 * em,
                                               words.at.y - sheet::accidentalSignRise * em),
                     sheet::accidentalSignScale * em, words.ink);
            return runWidth(run, words);
        }
        QFont const font = textFont(words.face);
        inEm(QTransform::fromTranslate(x, words.at.y), em, words.ink, [&] {
            if (m_lettering == Lettering::Outlines) {
                QPainterPath path;
                path.addText(0, 0, font, unicode(run));
                m_painter.drawPath(path);
                return;
            }
            m_painter.setFont(font);
            m_painter.drawText(QPointF(0, 0), unicode(run));
        });
        return runWidth(run, words);
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
