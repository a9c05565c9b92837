#include "core/sheet/glyphs.h"
#include "core/sheet/sheet.h"
#include "core/sheet/words.h"
#include "tests/paint/application.h"
#include "tests/sheet/examples.h"
#include "ui/paint/lettering.h"
#include "ui/paint/sheetfiles.h"
#include "ui/paint/sheetfonts.h"
#include "ui/paint/sheetpainter.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QStandardPaths>
#include <QSvgRenderer>
#include <QTemporaryFile>
#include <QTest>
#include <QXmlStreamReader>

#include <map>
#include <vector>

namespace {

sheet::MusicFont const& font()
{
    application();
    static sheet::MusicFont const loaded = ui::musicFont().value();
    return loaded;
}

sheet::Document jigSheet()
{
    return sheet::arrangementSheet(example::arrangementOf(example::jig()), font(), {});
}

// Three copies of the tune one after the other: more than a page.
sheet::Document longSheet()
{
    tune::Tune tune = example::jig();
    tune::Bars const once = tune.bars;
    for (int copy = 0; copy < 2; ++copy)
        tune.bars.insert(tune.bars.end(), once.begin() + 1, once.end());
    return sheet::arrangementSheet(example::arrangementOf(tune), font(), {});
}

int occurrences(QByteArray const& bytes, char const* words)
{
    return static_cast<int>(bytes.count(words));
}

} // namespace

TEST_CASE("The compiled-in font knows the signs of the sheet by its own metadata", "[paint]")
{
    // Facts of the font's metadata: a black notehead is 1.18 spaces wide and its stem is 0.12.
    CHECK(font().boxes.at(sheet::glyph::noteheadBlack).right == Approx(1.18));
    CHECK(font().engraving.at("stemThickness") == Approx(0.12));
    CHECK(font().anchors.at(sheet::glyph::noteheadBlack).at("stemUpSE").x == Approx(1.18));
}

TEST_CASE("The PDF has one page for each page of the sheet and embeds its fonts", "[paint]")
{
    sheet::Document const document = longSheet();
    REQUIRE(document.pages.size() > 1);
    QByteArray const pdf = ui::pdfFile(document);
    // ISO 32000-1, 7.5.2: a file begins with its version; 7.7.3.3: page objects.
    CHECK(pdf.startsWith("%PDF-1."));
    CHECK(pdf.trimmed().endsWith("%%EOF"));
    CHECK(occurrences(pdf, "/Type /Page >>") == static_cast<int>(document.pages.size()));
    CHECK(occurrences(pdf, "/FontFile2") >= 2);
    CHECK(pdf.contains("/Creator"));
}

TEST_CASE("A PDF made for a named moment has the same bytes whenever it is made", "[paint]")
{
    qputenv("SOURCE_DATE_EPOCH", "1700000000");
    sheet::Document const document = jigSheet();
    QByteArray const first = ui::pdfFile(document);
    QTest::qSleep(1100); // the clock of a PDF counts seconds
    QByteArray const second = ui::pdfFile(document);
    qunsetenv("SOURCE_DATE_EPOCH");
    CHECK(first == second);
    CHECK(first.contains("(D:20231114221320Z)")); // date -u -d @1700000000
}

TEST_CASE("The PDF names its author and its parts, to turn to", "[paint]")
{
    sheet::Document document = longSheet();
    document.title = "Weir";
    document.author = "Somebody";
    document.bookmarks = {{"A", 0, 60}, {"B", 1, 20}};
    QByteArray const pdf = ui::pdfFile(document);
    // ISO 32000-1, 12.3.3: the outline and its items; 14.3.3: the information dictionary.
    CHECK(pdf.contains("/Outlines"));
    CHECK(pdf.contains("/Author (Somebody)"));
    CHECK(pdf.contains("/Title (B)"));
    CHECK(occurrences(pdf, "/XYZ null") == 3);
    // 60 mm from the top of A4 is 237 mm from its foot: 671.8 points.
    CHECK(pdf.contains("/XYZ null 671.8"));
}

TEST_CASE("A PDF says its language, how two pages lie open, and bookmarks below bookmarks",
          "[paint]")
{
    // ISO 32000-1, 7.7.2: Lang and PageLayout of the catalogue; 12.3.3: outline items.
    sheet::Document document = jigSheet();
    CHECK(occurrences(ui::pdfFile(document), "/PageLayout") == 0);
    document.opening = sheet::Opening::InPairs;
    document.bookmarks = {
        {"Osier Ferry", 0, 0, 0}, {"A", 0, 10, 1}, {"B", 0, 20, 1}, {"Willow Weir", 0, 30, 0}};
    QByteArray const pdf = ui::pdfFile(document);
    CHECK(occurrences(pdf, "/Lang (en-GB)") == 1);
    CHECK(occurrences(pdf, "/PageLayout /TwoPageLeft") == 1);
    CHECK(occurrences(pdf, "/Duplex /Simplex") == 1);
    CHECK(occurrences(pdf, "/Title (Osier Ferry)") == 1);
    CHECK(occurrences(pdf, "/Count 2") >= 1); // of the parts of the first
}

TEST_CASE("Text that is taken out of the PDF has the sharp and flat signs of Unicode",
          "[paint]")
{
    QString const program = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
    if (program.isEmpty()) {
        WARN("SKIPPED: pdftotext is not here");
        return;
    }
    QTemporaryFile file;
    REQUIRE(file.open());
    file.write(ui::pdfFile(jigSheet()));
    file.close();
    QProcess reader;
    reader.start(program, {file.fileName(), QStringLiteral("-")});
    REQUIRE(reader.waitForFinished());
    QString const text = QString::fromUtf8(reader.readAllStandardOutput());
    CHECK(text.contains(QChar(0x266F))); // F sharp is set for G major
    CHECK_FALSE(text.contains(QChar(0xE262)));
    CHECK_FALSE(text.contains(QChar(0xE260)));
}

namespace {

struct SvgText {
    QString words;
    double lengthMm = 0; // of what is to be seen
};

// The drawing read back by its elements, as SVG 1.1 names them.
struct SvgParts {
    QString width;
    QString title;
    std::map<QString, int> elements;
    std::vector<SvgText> texts;
    bool sound = false;
};

SvgParts partsOf(QByteArray const& svg)
{
    SvgParts parts;
    QXmlStreamReader reader(svg);
    bool inTitle = false;
    int inText = 0;
    while (!reader.atEnd()) {
        reader.readNext();
        bool const ofText =
            reader.name() == QLatin1String("text") || reader.name() == QLatin1String("tspan");
        if (reader.isStartElement()) {
            ++parts.elements[reader.name().toString()];
            if (reader.name() == QLatin1String("svg"))
                parts.width = reader.attributes().value("width").toString();
            inTitle = reader.name() == QLatin1String("title");
            if (!ofText) continue;
            if (inText++ == 0) {
                parts.texts.emplace_back();
                // CSS 2.1, 15.3: the last name is one of the generic families.
                CHECK(reader.attributes().value("font-family").endsWith(u"serif"));
            }
            parts.texts.back().lengthMm +=
                reader.attributes().value("textLength").toDouble() / 10;
        } else if (reader.isEndElement()) {
            if (ofText) --inText;
            inTitle = false;
        } else if (reader.isCharacters()) {
            if (inTitle) parts.title += reader.text();
            if (inText > 0) parts.texts.back().words += reader.text();
        }
    }
    parts.sound = !reader.hasError();
    return parts;
}

// By a reader of SVG Tiny, which takes a list of fonts for one name and knows no textLength, so
// that it wants the sheet's own faces.
QImage shown(QByteArray svg, QSize size)
{
    svg.replace("TeX Gyre Termes, Nimbus Roman, Times, Times New Roman, serif",
                "TeX Gyre Termes");
    svg.replace("TeX Gyre Heros, Nimbus Sans, Helvetica, Arial, sans-serif", "TeX Gyre Heros");
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    QSvgRenderer(svg).render(&painter);
    return image;
}

// Of a thousand dark points of one, those that have none near them in the other.
double strayInk(QImage const& a, QImage const& b)
{
    constexpr int near = 2;
    auto const dark = [](QImage const& image, int x, int y) {
        return image.rect().contains(x, y) && qGray(image.pixel(x, y)) < 150;
    };
    int stray = 0;
    int all = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            if (!dark(a, x, y)) continue;
            ++all;
            bool found = false;
            for (int dy = -near; dy <= near && !found; ++dy)
                for (int dx = -near; dx <= near && !found; ++dx)
                    found = dark(b, x + dx, y + dy);
            if (!found) ++stray;
        }
    return 1000.0 * stray / all;
}

} // namespace

TEST_CASE(
    "The SVG is well-formed XML of the paper's size, its music outlines and its words text",
    "[paint]")
{
    sheet::Document const document = jigSheet();
    SvgParts const parts = partsOf(ui::svgFile(document));
    CHECK(parts.sound);
    CHECK(parts.width == "210mm");
    CHECK(parts.elements.at("use") > 250);
    CHECK(parts.elements.at("path") > 15);
    std::vector<sheet::Words> words;
    for (sheet::Mark const& mark : document.pages.front().marks)
        if (auto const* w = std::get_if<sheet::Words>(&mark.what)) words.push_back(*w);
    REQUIRE(parts.texts.size() == words.size());
    for (std::size_t i = 0; i < words.size(); ++i) {
        CAPTURE(words[i].text);
        CHECK(parts.texts[i].words == QString::fromStdString(words[i].text));
        // As long as the layout measured it, in whatever font: SVG 1.1, 10.5, textLength.
        double const measured = sheet::widthOf(words[i].text, words[i].face, words[i].heightMm);
        CHECK(parts.texts[i].lengthMm == Approx(measured).epsilon(0.05).margin(0.05));
    }
}

TEST_CASE("The SVG shows what the PNG shows", "[paint]")
{
    sheet::Document document = jigSheet();
    // Lines of several pieces are left out: places within a line are not in SVG Tiny.
    std::erase_if(document.pages.front().marks, [](sheet::Mark const& mark) {
        auto const* words = std::get_if<sheet::Words>(&mark.what);
        return words && ui::runsOf(*words).size() > 1;
    });
    QImage const picture = ui::sheetImage(document, 150);
    QImage const drawing = shown(ui::svgFile(document), picture.size());
    // That reader kerns words a little.
    CHECK(strayInk(picture, drawing) < 5);
    CHECK(strayInk(drawing, picture) < 5);
}

TEST_CASE("Words of an SVG are escaped, and what XML cannot hold is left out", "[paint]")
{
    // XML 1.0, 2.2: no control characters but tab and line ends; 2.4: & and < are escaped.
    sheet::Document document = jigSheet();
    document.title = "Reed & <Rush> \x01\"quoted\"";
    SvgParts const parts = partsOf(ui::svgFile(document));
    CHECK(parts.sound);
    CHECK(parts.title == "Reed & <Rush> \"quoted\"");
}

TEST_CASE("The PNG is as large as its paper and is not blank", "[paint]")
{
    QByteArray const png = ui::pngFile(jigSheet(), 100);
    QImage image;
    REQUIRE(image.loadFromData(png, "PNG"));
    CHECK(image.width() == 827);   // 210 mm at 100 dots an inch
    CHECK(image.height() == 1170); // 297 mm
    int dark = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (qGray(image.pixel(x, y)) < 100) ++dark;
    CHECK(dark > 10000);
    CHECK(dark < image.width() * image.height() / 5);
}

TEST_CASE("A notehead is painted where its primitive says", "[paint]")
{
    font();
    sheet::Page page{20, 20, {}, {}};
    page.marks.push_back({sheet::Glyph{sheet::glyph::noteheadBlack, {10, 10}, 2}, {}, {}});
    QImage image(200, 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(10, 10);
    ui::paintPage(painter, page);
    painter.end();
    // The head is 1.18 spaces wide and 1 high about its baseline: 2.36 by 2 mm.
    CHECK(qGray(image.pixel(100 + 11, 100)) < 40);
    CHECK(qGray(image.pixel(100 - 3, 100)) > 240);
    CHECK(qGray(image.pixel(100 + 27, 100)) > 240);
    CHECK(qGray(image.pixel(100 + 11, 100 - 13)) > 240);
}
