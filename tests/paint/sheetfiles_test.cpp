#include "core/sheet/glyphs.h"
#include "core/sheet/sheet.h"
#include "tests/paint/application.h"
#include "tests/sheet/examples.h"
#include "ui/paint/sheetfiles.h"
#include "ui/paint/sheetfonts.h"
#include "ui/paint/sheetpainter.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryFile>
#include <QTest>
#include <QXmlStreamReader>

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
    std::vector<tune::Bar> const once = tune.bars;
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

TEST_CASE("The SVG is well-formed XML of the paper's size and needs no font", "[paint]")
{
    QByteArray const svg = ui::svgFile(jigSheet());
    QXmlStreamReader reader(svg);
    int paths = 0;
    int texts = 0;
    QString width;
    while (!reader.atEnd()) {
        reader.readNext();
        if (!reader.isStartElement()) continue;
        if (reader.name() == QLatin1String("svg"))
            width = reader.attributes().value("width").toString();
        if (reader.name() == QLatin1String("path")) ++paths;
        if (reader.name() == QLatin1String("text")) ++texts;
    }
    CHECK_FALSE(reader.hasError());
    CHECK(paths > 300);
    CHECK(texts == 0);
    CHECK(width == "210mm");
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
