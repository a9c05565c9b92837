// Pages as Scalable Vector Graphics 1.1 (W3C Recommendation, 16 August 2011).
#include "ui/paint/lettering.h"
#include "ui/paint/sheetfiles.h"
#include "ui/paint/sheetfonts.h"
#include "ui/paint/sheetpainter.h"

#include <QXmlStreamWriter>

#include <algorithm>
#include <cmath>
#include <set>

namespace ui {

namespace {

constexpr double unitsPerMm = 10;
constexpr auto namespaceOfSvg = "http://www.w3.org/2000/svg";
constexpr auto namespaceOfLinks = "http://www.w3.org/1999/xlink";

// Decimals in units of the drawing: a hundredth is a thousandth of a millimetre.
QString plain(double units)
{
    double const rounded = std::round(units * 100) / 100;
    return QString::number(rounded == 0 ? 0 : rounded, 'g', 9);
}
QString scaled(double mm) { return plain(mm * unitsPerMm); }
QString scaled(sheet::Point p) { return scaled(p.x) + ' ' + scaled(p.y); }

// What XML 1.0, section 2.2, does not let stand in a document is left out.
QString allowed(QString text)
{
    text.removeIf([](QChar c) {
        return (c < u' ' && c != u'\t' && c != u'\n') || c == QChar(0xFFFE) ||
               c == QChar(0xFFFF);
    });
    return text;
}

char const* commandOf(QPainterPath::ElementType type)
{
    switch (type) {
    case QPainterPath::MoveToElement:
        return "ZM";
    case QPainterPath::LineToElement:
        return "L";
    case QPainterPath::CurveToElement:
        return "C";
    case QPainterPath::CurveToDataElement:
        break;
    }
    return " ";
}

QString pathData(QPainterPath const& path)
{
    QString data;
    for (int i = 0; i < path.elementCount(); ++i) {
        QPainterPath::Element const e = path.elementAt(i);
        data += commandOf(e.type) + plain(e.x) + ' ' + plain(e.y);
    }
    return data.isEmpty() ? data : data.mid(1) + 'Z';
}

QString nameOf(char32_t sign) { return 'u' + QString::number(sign, 16).toUpper(); }

// The faces of the sheet, then those with the same widths, then whatever is there.
QString familiesOf(sheet::Face face)
{
    bool const sans = face == sheet::Face::Sans || face == sheet::Face::SansBold;
    return sans ? "TeX Gyre Heros, Nimbus Sans, Helvetica, Arial, sans-serif"
                : "TeX Gyre Termes, Nimbus Roman, Times, Times New Roman, serif";
}

void noteSign(std::set<char32_t>& signs, sheet::Mark const& mark)
{
    if (auto const* glyph = std::get_if<sheet::Glyph>(&mark.what)) signs.insert(glyph->code);
    if (auto const* words = std::get_if<sheet::Words>(&mark.what))
        for (LetterRun const& run : runsOf(*words))
            if (run.sign != 0) signs.insert(run.sign);
}

class Drawing {
public:
    explicit Drawing(QByteArray& bytes) : m_xml(&bytes) { m_xml.setAutoFormatting(true); }

    void begin(sheet::Document const& document, QSizeF sizeMm)
    {
        m_xml.setAutoFormattingIndent(1);
        m_xml.writeStartDocument();
        m_xml.writeDefaultNamespace(namespaceOfSvg);
        m_xml.writeNamespace(namespaceOfLinks, "xlink");
        m_xml.writeStartElement(namespaceOfSvg, "svg");
        attribute("version", "1.1");
        attribute("width", plain(sizeMm.width()) + "mm");
        attribute("height", plain(sizeMm.height()) + "mm");
        attribute("viewBox", "0 0 " + scaled(sizeMm.width()) + ' ' + scaled(sizeMm.height()));
        attribute("xml:space", "preserve");
        m_xml.writeTextElement("title", allowed(QString::fromStdString(document.title)));
        m_xml.writeTextElement("desc", "Sallow");
        defineSigns(document);
    }

    void draw(sheet::Page const& page, double downMm)
    {
        start("g");
        attribute("transform", "translate(0 " + scaled(downMm) + ')');
        m_xml.writeEmptyElement("rect");
        attribute("width", scaled(page.widthMm));
        attribute("height", scaled(page.heightMm));
        attribute("fill", SheetColours{}.paper.name());
        for (sheet::Mark const& mark : page.marks) std::visit(*this, mark.what);
        m_xml.writeEndElement();
    }

    void end() { m_xml.writeEndDocument(); }

    void operator()(sheet::Glyph const& glyph)
    {
        sign(glyph.code, glyph.at, glyph.staffSpaceMm, glyph.ink, glyph.upright);
    }

    // Each piece is as long as the sheet's own faces make it, whatever face it is shown in.
    void operator()(sheet::Words const& words)
    {
        std::vector<LetterRun> const runs = runsOf(words);
        if (runs.empty()) return;
        bool const whole = runs.size() == 1 && runs.front().sign == 0;
        m_xml.setAutoFormatting(false); // blanks between pieces would be shown
        m_xml.writeCharacters("\n ");
        start("text");
        attribute("y", scaled(words.at.y));
        attribute("font-family", familiesOf(words.face));
        attribute("font-size", scaled(words.heightMm));
        if (words.face == sheet::Face::Bold || words.face == sheet::Face::SansBold)
            attribute("font-weight", "bold");
        if (words.face == sheet::Face::Italic) attribute("font-style", "italic");
        attribute("fill", colourOf(words.ink, {}).name());
        if (whole) {
            anchor(words);
            length(runs.front());
            m_xml.writeCharacters(allowed(letters(words.text)));
        } else {
            attribute(
                "x", scaled(runs.front().x)); // for programs that pass over those of the pieces
            for (LetterRun const& run : runs) piece(run);
        }
        m_xml.writeEndElement();
        m_xml.setAutoFormatting(true);
        for (LetterRun const& run : runs)
            if (run.sign != 0)
                sign(run.sign, signPlace(run, words), signSpaceMm(words), words.ink, false);
    }

    void operator()(sheet::Line const& line)
    {
        m_xml.writeEmptyElement("line");
        attribute("x1", scaled(line.from.x));
        attribute("y1", scaled(line.from.y));
        attribute("x2", scaled(line.to.x));
        attribute("y2", scaled(line.to.y));
        attribute("stroke", colourOf(line.ink, {}).name());
        attribute("stroke-width", scaled(line.thicknessMm));
        if (line.dashed)
            attribute("stroke-dasharray",
                      scaled(4 * line.thicknessMm) + ' ' + scaled(3 * line.thicknessMm));
    }

    void operator()(sheet::Shape const& shape)
    {
        QStringList corners;
        for (sheet::Point corner : shape.corners)
            corners << scaled(corner.x) + ',' + scaled(corner.y);
        m_xml.writeEmptyElement("polygon");
        attribute("points", corners.join(' '));
        attribute("fill", colourOf(shape.ink, {}).name());
    }

    void operator()(sheet::Bow const& bow)
    {
        double const half = halfOf(bow);
        auto const by = [](sheet::Point p, double down) { return scaled({p.x, p.y + down}); };
        m_xml.writeEmptyElement("path");
        attribute("d", 'M' + scaled(bow.from) + 'C' + by(bow.control1, half) + ' ' +
                           by(bow.control2, half) + ' ' + scaled(bow.to) + 'C' +
                           by(bow.control2, -half) + ' ' + by(bow.control1, -half) + ' ' +
                           scaled(bow.from) + 'Z');
        attribute("fill", colourOf(bow.ink, {}).name());
    }

    void operator()(sheet::Circle const& circle)
    {
        m_xml.writeEmptyElement("circle");
        attribute("cx", scaled(circle.centre.x));
        attribute("cy", scaled(circle.centre.y));
        attribute("r", scaled(circle.radiusMm));
        QString const colour = colourOf(circle.ink, {}).name();
        attribute("fill", circle.thicknessMm > 0 ? QStringLiteral("none") : colour);
        if (circle.thicknessMm > 0) {
            attribute("stroke", colour);
            attribute("stroke-width", scaled(circle.thicknessMm));
        }
    }

private:
    void start(char const* name) { m_xml.writeStartElement(QLatin1String(name)); }
    void attribute(char const* name, QString const& value)
    {
        m_xml.writeAttribute(QLatin1String(name), value);
    }

    // Every sign of the music font once, in units of its em; the pages point to them.
    void defineSigns(sheet::Document const& document)
    {
        std::set<char32_t> signs;
        for (sheet::Page const& page : document.pages)
            for (sheet::Mark const& mark : page.marks) noteSign(signs, mark);
        start("defs");
        for (char32_t const code : signs) {
            m_xml.writeEmptyElement("path");
            attribute("id", nameOf(code));
            attribute("d", pathData(outlineOf(code)));
        }
        m_xml.writeEndElement();
    }

    // A SMuFL font's em is four staff spaces.
    void sign(char32_t code, sheet::Point at, double staffSpaceMm, sheet::Ink ink, bool upright)
    {
        QString const scale = QString::number(4 * staffSpaceMm * unitsPerMm / fontEm, 'g', 6);
        m_xml.writeEmptyElement("use");
        m_xml.writeAttribute(namespaceOfLinks, "href", '#' + nameOf(code));
        attribute("transform", "translate(" + scaled(at) + ')' +
                                   (upright ? "rotate(-90)" : "") + "scale(" + scale + ')');
        attribute("fill", colourOf(ink, {}).name());
    }

    void anchor(sheet::Words const& words)
    {
        attribute("x", scaled(words.at.x));
        if (words.anchor == sheet::Anchor::Centre) attribute("text-anchor", "middle");
        if (words.anchor == sheet::Anchor::Right) attribute("text-anchor", "end");
    }

    void length(LetterRun const& run)
    {
        attribute("textLength", scaled(run.widthMm));
        attribute("lengthAdjust", "spacingAndGlyphs");
    }

    // An accidental is drawn as a sign; its character is there unseen, to be found and taken
    // out.
    void piece(LetterRun const& run)
    {
        start("tspan");
        attribute("x", scaled(run.x));
        if (run.sign != 0) attribute("fill", "none");
        length(run);
        m_xml.writeCharacters(allowed(letters(run.text)));
        m_xml.writeEndElement();
    }

    QXmlStreamWriter m_xml;
};

} // namespace

QByteArray svgFile(sheet::Document const& document)
{
    QByteArray bytes;
    Drawing drawing(bytes);
    drawing.begin(document, stackedMm(document));
    double down = 0;
    for (sheet::Page const& page : document.pages) {
        drawing.draw(page, down);
        down += page.heightMm + betweenPagesMm;
    }
    drawing.end();
    return bytes;
}

} // namespace ui
