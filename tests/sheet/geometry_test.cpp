#include "core/files/abc.h"
#include "core/proposal/proposal.h"
#include "core/sheet/places.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <set>

using sheet::Box;
using sheet::Document;
using sheet::Glyph;
using sheet::Ink;
using sheet::Line;
using sheet::Page;

namespace {

constexpr double marginMm = 14;
constexpr double spaceMm = 7.5 / 4;
constexpr double braceMm = 6; // hangs in the margin

std::vector<tune::Tune> tunesIn(std::string const& path, std::size_t every)
{
    std::vector<tune::Tune> out;
    std::string const text = *files::readTextFile(path);
    auto const entries = *files::abcTunes(text, path);
    for (std::size_t i = 0; i < entries.size(); i += every)
        if (auto tune = files::readAbc(text, entries[i], path)) out.push_back(*tune);
    return out;
}

// None where the level refuses the tune, as the first refuses to turn levers.
std::optional<arrange::Arrangement> proposed(tune::Tune const& tune, int level)
{
    static files::Tables const tables = *files::readTables(SALLOW_SHARED_DIR);
    proposal::Brief brief;
    brief.tune = tune;
    brief.harp = *files::harpFrom(tables, "floor34", "Eb");
    brief.hand = *files::handFrom(tables, "medium");
    brief.level = *files::levelFrom(tables, level);
    brief.book = tables.book;
    brief.weights = tables.styles.front();
    auto const proposal = proposal::propose(brief);
    if (!proposal) return std::nullopt;
    return proposal->arrangement;
}

// The demo tunes arranged at three levels, their pattern sheets and lead sheets; the examples.
std::vector<Document> const& sheets(sheet::MusicFont const& font)
{
    static std::vector<Document> const made = [&font] {
        std::vector<Document> out;
        for (tune::Tune const& tune : tunesIn(SALLOW_SHARED_DIR "/demo/demo.abc", 1))
            for (int level : {1, 3, 5}) {
                auto const arrangement = proposed(tune, level);
                out.push_back(sheet::leadSheet(tune, font, {}));
                if (!arrangement) continue;
                out.push_back(sheet::arrangementSheet(*arrangement, font, {}));
                out.push_back(sheet::patternSheet(*arrangement, font, {}));
            }
        sheet::SheetStyle letter;
        letter.paper = sheet::Paper::Letter;
        auto const jig = example::arrangementOf(example::jig());
        out.push_back(sheet::arrangementSheet(jig, font, {}));
        out.push_back(sheet::arrangementSheet(jig, font, letter));
        REQUIRE(out.size() > 20); // all but a few
        return out;
    }();
    return made;
}

template<typename Check>
void onEveryPage(std::vector<Document> const& documents, Check check)
{
    for (Document const& document : documents)
        for (std::size_t p = 0; p < document.pages.size(); ++p) {
            CAPTURE(document.title, p);
            check(document.pages[p], p + 1 == document.pages.size());
        }
}

void nothingOutside(Page const& page, sheet::MusicFont const& font)
{
    int outside = 0;
    for (sheet::Mark const& mark : page.marks) {
        auto const* glyph = std::get_if<Glyph>(&mark.what);
        double const left =
            glyph && glyph->code == sheet::glyph::brace ? marginMm - braceMm : marginMm - 0.3;
        Box const box = measure::box(mark, font);
        bool const inside = box.left >= left && box.right <= page.widthMm - marginMm + 0.6 &&
                            box.top >= marginMm - 0.3 &&
                            box.bottom <= page.heightMm - marginMm + 0.6;
        if (!inside) ++outside;
    }
    CHECK(outside == 0);
}

bool overlap(Box a, Box b, double by)
{
    return a.left + by < b.right && b.left + by < a.right && a.top + by < b.bottom &&
           b.top + by < a.bottom;
}

// Words and fingers against each other and against noteheads, rests and accidentals.
void nothingCollides(Page const& page, sheet::MusicFont const& font)
{
    std::vector<Box> legends;
    std::vector<Box> music;
    for (sheet::Mark const& mark : page.marks) {
        auto const* glyph = std::get_if<Glyph>(&mark.what);
        bool const words = std::holds_alternative<sheet::Words>(mark.what);
        bool const finger = glyph && glyph->ink == Ink::Finger;
        bool const sign = glyph && (measure::isNotehead(glyph->code) ||
                                    (glyph->code >= sheet::glyph::accidentalFlat &&
                                     glyph->code <= sheet::glyph::accidentalDoubleFlat));
        if (words || finger) legends.push_back(measure::box(mark, font));
        if (sign) music.push_back(measure::box(mark, font));
    }
    int collisions = 0;
    for (std::size_t i = 0; i < legends.size(); ++i) {
        for (std::size_t j = i + 1; j < legends.size(); ++j)
            if (overlap(legends[i], legends[j], 0.12)) ++collisions;
        for (Box const& box : music)
            if (overlap(legends[i], box, 0.12)) ++collisions;
    }
    CHECK(collisions == 0);
}

} // namespace

TEST_CASE("Nothing is printed beyond the margins", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    onEveryPage(sheets(*font), [&](Page const& page, bool) { nothingOutside(page, *font); });
}

TEST_CASE("Words and fingers keep clear of each other and of the notes", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    onEveryPage(sheets(*font), [&](Page const& page, bool) { nothingCollides(page, *font); });
}

TEST_CASE("A bar that no line can hold stays on the paper", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    std::string notes;
    for (int i = 0; i < 300; ++i) notes += i % 2 == 0 ? "G4:1/16 " : "C#5:1/16 ";
    tune::Tune const tune = example::tuneOf(
        {example::withChord(example::bar(notes, example::fourFour, example::gMajor), "G")});
    onEveryPage({sheet::leadSheet(tune, *font, {}),
                 sheet::arrangementSheet(example::arrangementOf(tune), *font, {})},
                [&](Page const& page, bool) { nothingOutside(page, *font); });
}

TEST_CASE("Every line but the last reaches the right margin", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    onEveryPage(sheets(*font), [&](Page const& page, bool lastPage) {
        auto const lines = measure::staffLines(page);
        REQUIRE(lines.size() % 5 == 0);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            CHECK(lines[i].from.x == Approx(marginMm));
            bool const mayBeShort = lastPage && i + 10 >= lines.size();
            if (!mayBeShort) CHECK(lines[i].to.x == Approx(page.widthMm - marginMm));
        }
    });
}

TEST_CASE("A staff is as high as the style says and its lines evenly spaced", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    onEveryPage(sheets(*font), [&](Page const& page, bool) {
        auto const lines = measure::staffLines(page);
        for (std::size_t i = 0; i + 4 < lines.size(); i += 5)
            for (std::size_t line = 1; line < 5; ++line)
                CHECK(lines[i + line].from.y - lines[i].from.y ==
                      Approx(spaceMm * static_cast<double>(line)));
    });
}

TEST_CASE("Every stem starts at the anchor of a notehead", "[geometry]")
{
    // SMuFL 1.4, glyphsWithAnchors: stemUpSE and stemDownNW.
    auto const font = measure::musicFont();
    if (!font) return;
    double const thickness = font->engraving.at("stemThickness");
    int stems = 0;
    onEveryPage(sheets(*font), [&](Page const& page, bool) {
        std::vector<sheet::Point> anchors; // middle of the stem at the head
        for (Glyph const& head : measure::allOf<Glyph>(page)) {
            if (!measure::isNotehead(head.code) || !font->anchors.count(head.code)) continue;
            double const s = head.staffSpaceMm;
            auto const& of = font->anchors.at(head.code);
            if (!of.count("stemUpSE")) continue;
            anchors.push_back({head.at.x + s * (of.at("stemUpSE").x - thickness / 2),
                               head.at.y - s * of.at("stemUpSE").y});
            anchors.push_back({head.at.x + s * (of.at("stemDownNW").x + thickness / 2),
                               head.at.y - s * of.at("stemDownNW").y});
        }
        for (Line const& line : measure::allOf<Line>(page)) {
            bool const stem = line.from.x == line.to.x &&
                              std::abs(line.thicknessMm - thickness * spaceMm) < 1e-6;
            if (!stem) continue;
            ++stems;
            bool const anchored =
                std::any_of(anchors.begin(), anchors.end(), [&](sheet::Point p) {
                    return std::abs(p.x - line.from.x) < 1e-6 &&
                           std::abs(p.y - line.from.y) < 1e-6;
                });
            REQUIRE(anchored);
        }
    });
    CHECK(stems > 1000);
}

TEST_CASE("Bar lines run from the top of the first staff to the foot of the last", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    double const thin = font->engraving.at("thinBarlineThickness") * spaceMm;
    double const overhang = font->engraving.at("staffLineThickness") * spaceMm / 2;
    onEveryPage(sheets(*font), [&](Page const& page, bool) {
        std::set<long> tops;
        std::set<long> feet;
        auto const key = [](double y) { return std::lround(1000 * y); };
        auto const lines = measure::staffLines(page);
        for (std::size_t i = 0; i + 4 < lines.size(); i += 5) {
            tops.insert(key(lines[i].from.y - overhang));
            feet.insert(key(lines[i + 4].from.y + overhang));
        }
        int barLines = 0;
        for (Line const& line : measure::allOf<Line>(page)) {
            bool const upright = line.from.x == line.to.x && line.ink == Ink::Music &&
                                 std::abs(line.thicknessMm - thin) < 1e-6 &&
                                 line.to.y - line.from.y > 3.9 * spaceMm;
            if (!upright) continue;
            ++barLines;
            REQUIRE(tops.count(key(line.from.y)) == 1);
            REQUIRE(feet.count(key(line.to.y)) == 1);
        }
        CHECK(barLines > 0);
    });
}

TEST_CASE("Notes struck together stand under one another on both staves", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    // Four crotchets over four crotchets.
    tune::Tune const tune = example::tuneOf({example::withChord(
        example::bar("G4:1/4 A4:1/4 B4:1/4 D5:1/4", example::fourFour, example::gMajor), "G")});
    auto arrangement = example::arrangementOf(tune);
    auto& notes = arrangement.positions[0].voicing.notes;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        notes[i].at = example::wholes(static_cast<int>(i), 4);
        notes[i].held = example::wholes(1, 4);
    }
    Document const document = sheet::arrangementSheet(arrangement, *font, {});
    std::vector<double> upper;
    std::vector<double> lower;
    for (Glyph const& glyph : measure::allOf<Glyph>(document.pages[0])) {
        if (glyph.code != sheet::glyph::noteheadBlack) continue;
        (upper.size() < 4 ? upper : lower).push_back(glyph.at.x);
    }
    REQUIRE(lower.size() == 3);
    for (std::size_t i = 0; i < lower.size(); ++i) CHECK(lower[i] == Approx(upper[i]));
}

TEST_CASE("Every bar and every position of the arrangement can be found on the sheet",
          "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = example::arrangementOf(example::jig());
    Document const document = sheet::arrangementSheet(arrangement, *font, {});
    for (int bar = 0; bar < static_cast<int>(arrangement.tune.bars.size()); ++bar)
        CHECK(sheet::areaOfBar(document, bar));
    for (int p = 0; p < static_cast<int>(arrangement.positions.size()); ++p) {
        CAPTURE(p);
        auto const found = sheet::areaOfPosition(document, p);
        REQUIRE(found);
        sheet::Area const& area = found->area;
        sheet::Point const middle{(area.topLeft.x + area.bottomRight.x) / 2,
                                  (area.topLeft.y + area.bottomRight.y) / 2};
        auto const place =
            sheet::placeAt(document.pages[static_cast<std::size_t>(found->page)], middle);
        REQUIRE(place);
        CHECK(place->position == p);
        CHECK(place->bar == arrangement.positions[static_cast<std::size_t>(p)].position.bar);
    }
    CHECK(sheet::positionBeside(document, 0, 1) == 1);
    CHECK_FALSE(sheet::positionBeside(document, 0, -1));
    CHECK_FALSE(sheet::placeAt(document.pages[0], {1, 1}));
}

TEST_CASE("The sheet says what a player must know before the first note", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const arrangement = example::arrangementOf(example::jig());
    Document const document = sheet::arrangementSheet(arrangement, *font, {});
    std::multiset<std::string> words;
    for (sheet::Words const& w : measure::allOf<sheet::Words>(document.pages[0]))
        words.insert(w.text);
    CHECK(words.count("The Lantern on the Weir") == 1);
    CHECK(words.count("Jig") == 1);
    CHECK(words.count(harp::setupLine(arrangement.harp, arrangement.levers.setup)) == 1);
    CHECK(words.count("A") == 1); // part letters
    CHECK(words.count("B") == 1);
    CHECK(words.count("1.") == 1); // endings
    CHECK(words.count("2.") == 1);
    CHECK(words.count("1-5-8") == arrangement.positions.size());
    CHECK(words.count("Em") == 2);
    CHECK(document.title == "The Lantern on the Weir");
}

TEST_CASE("Folk tunes at hand are set inside the margins without collisions", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    namespace fs = std::filesystem;
    fs::path const data = SALLOW_TEST_DATA "/data";
    if (!fs::exists(data)) {
        WARN("the outside test data is absent: only the demo tunes are measured");
        return;
    }
    int tunes = 0;
    for (char const* folder : {"nottingham-dev", "tunebooks-dev"})
        for (auto const& entry : fs::directory_iterator(data / folder)) {
            if (entry.path().extension() != ".abc") continue;
            for (tune::Tune const& tune : tunesIn(entry.path().string(), 7)) {
                CAPTURE(entry.path().filename().string(), tune.title);
                std::vector<Document> documents{sheet::leadSheet(tune, *font, {})};
                if (tune::hasChords(tune) && harp::settingFor(example::floor34(), tune.key))
                    documents.push_back(
                        sheet::arrangementSheet(example::arrangementOf(tune), *font, {}));
                onEveryPage(documents, [&](Page const& page, bool) {
                    nothingOutside(page, *font);
                    nothingCollides(page, *font);
                });
                ++tunes;
            }
        }
    CHECK(tunes > 300);
}
