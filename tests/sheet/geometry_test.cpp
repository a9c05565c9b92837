#include "core/files/abc/read.h"
#include "core/sheet/pageareas.h"
#include "tests/places.h"
#include "tests/sheet/arranged.h"
#include "tests/sheet/examples.h"
#include "tests/sheet/measure.h"
#include "tests/sheet/violations.h"

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

constexpr double spaceMm = 7.5 / 4;

std::vector<tune::Tune> tunesIn(std::string const& path, std::size_t every)
{
    std::vector<tune::Tune> out;
    std::string const text = *files::readTextFile(path);
    auto const entries = *files::abcTunes(text, path);
    for (std::size_t i = 0; i < entries.size(); i += every)
        if (auto tune = files::readAbc(text, entries[i], path)) out.push_back(*tune);
    return out;
}

// The demo tunes arranged at three levels, their pattern sheets and lead sheets; the examples.
std::vector<Document> const& sheets(sheet::MusicFont const& font)
{
    static std::vector<Document> const made = [&font] {
        std::vector<Document> out;
        for (tune::Tune const& tune : tunesIn(places::shared() + "/demo/demo.abc", 1))
            for (int level : {1, 3, 5}) {
                auto const arrangement = measure::arranged(tune, level);
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

// No violation of any kind; those that are found are named.
void faultless(Document const& document, sheet::MusicFont const& font,
               std::string const& forgiven = {})
{
    int staves = 1;
    for (Glyph const& glyph : measure::allOf<Glyph>(document.pages.front()))
        if (glyph.code == sheet::glyph::brace) staves = 2;
    CAPTURE(document.title, staves);
    for (auto const& [kind, count] : measure::violations(document, font, staves)) {
        CAPTURE(kind);
        if (kind != forgiven) CHECK(count == 0);
    }
}

} // namespace

TEST_CASE(
    "Signs lie on no others, stems on their anchors, lines fill the width, all inside the "
    "margins",
    "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    for (Document const& document : sheets(*font)) faultless(document, *font);
}

TEST_CASE("The measure finds the faults it looks for", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    Document document =
        sheet::arrangementSheet(example::arrangementOf(example::jig()), *font, {});
    REQUIRE(measure::violations(document, *font, 2).empty());
    Page& page = document.pages.front();
    double const stem = font->engraving.at("stemThickness") * spaceMm;
    sheet::Point head;
    for (sheet::Mark& mark : page.marks) {
        if (auto* glyph = std::get_if<Glyph>(&mark.what))
            if (measure::isNotehead(glyph->code)) head = glyph->at;
        auto* line = std::get_if<Line>(&mark.what);
        if (line && line->ink == Ink::Music && std::abs(line->thicknessMm - stem) < 1e-6)
            line->from.y += 0.5;
        if (line && line->ink == Ink::Staff && line->to.x > 150) line->to.x -= 2;
    }
    page.marks.push_back({Glyph{sheet::glyph::fingering1, head, spaceMm, Ink::Finger}, {}, {}});
    page.marks.push_back({sheet::Words{"far off", {205, 100}}, {}, {}});
    measure::Counts const found = measure::violations(document, *font, 2);
    CHECK(found.count("stem off its anchor") == 1);
    CHECK(found.count("notehead on finger") == 1);
    CHECK(found.count("outside the margins") == 1);
    CHECK(found.count("staff line short of the margin") == 1);
}

TEST_CASE("Notes are set a little smaller where that saves a page, and never in large print "
          "beyond its measure",
          "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    auto const jig = example::arrangementOf(example::jig());
    sheet::SheetStyle rigid;
    rigid.mayShrinkTo = 1;
    Document const large =
        sheet::arrangementSheet(jig, *font, {sheet::Paper::A4, 14, sheet::largeStaffMm});
    double const space = measure::spaceMmOf(large.pages.front());
    CHECK(space >= Approx(0.88 * sheet::largeStaffMm / 4));
    CHECK(space <= Approx(sheet::largeStaffMm / 4));

    // Of tunes that grow bar by bar, one or more just overflows a page.
    int saved = 0;
    tune::Bars bars;
    for (int count = 1; count <= 80; ++count) {
        bars.push_back(example::bar("G4:1/8 A4:1/8 B4:1/8 C5:1/8 D5:1/8 B4:1/8 A4:1/8 G4:1/8",
                                    example::fourFour, example::gMajor));
        tune::Tune const tune = example::tuneOf(bars);
        Document const eased = sheet::leadSheet(tune, *font, {});
        std::size_t const stiff = sheet::leadSheet(tune, *font, rigid).pages.size();
        CAPTURE(count);
        REQUIRE(eased.pages.size() <= stiff);
        if (eased.pages.size() == stiff) continue;
        ++saved;
        double const smaller = measure::spaceMmOf(eased.pages.front());
        CHECK(smaller < measure::spaceMmOf(sheet::leadSheet(tune, *font, rigid).pages.front()));
    }
    CHECK(saved > 0);
}

TEST_CASE("No finger stands behind a pattern's label as if it went on with it", "[geometry]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    onEveryPage(sheets(*font), [&](Page const& page, bool) {
        double const space = measure::spaceMmOf(page);
        std::vector<Box> fingers;
        for (sheet::Mark const& mark : page.marks)
            if (measure::signOf(mark) == measure::Sign::Finger)
                fingers.push_back(measure::box(mark, *font));
        for (sheet::Mark const& mark : page.marks) {
            if (measure::signOf(mark) != measure::Sign::Label) continue;
            Box const label = measure::box(mark, *font);
            for (Box const& finger : fingers) {
                bool const beside = finger.bottom > label.top && finger.top < label.bottom;
                double const white = finger.left - label.right;
                if (beside && white > 0) CHECK(white > 1.7 * space);
            }
        }
    });
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
                [&](Page const& page, bool) { CHECK(measure::outside(page, *font, {}) == 0); });
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
                      Approx(measure::spaceMmOf(page) * static_cast<double>(line)));
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
    for (tune::BarIndex const bar : arrangement.tune.bars.indices())
        CHECK(sheet::areaOfBar(document, bar));
    for (arrange::PositionIndex const p : arrangement.positions.indices()) {
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
        CHECK(place->bar == arrangement.positions[p].position.bar);
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
    CHECK(words.count("1-5-8") == arrangement.positions.values().size() + 1); // and in the box
    CHECK(words.count("Em") == 2);
    CHECK(document.title == "The Lantern on the Weir");
}

// One tune of the collections ties two notes over the flag of a grace note between them.
constexpr char const* graceFlag = "tie or slur through flag";

TEST_CASE("Folk tunes at hand are set without a fault", "[geometry][slow]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    namespace fs = std::filesystem;
    fs::path const data = places::outside() + "/data";
    if (!fs::exists(data)) {
        WARN("SKIPPED: the outside test data is absent");
        return;
    }
    int tunes = 0;
    for (char const* folder : {"nottingham-dev", "tunebooks-dev"})
        for (auto const& entry : fs::directory_iterator(data / folder)) {
            if (entry.path().extension() != ".abc") continue;
            for (tune::Tune const& tune : tunesIn(entry.path().string(), 7)) {
                CAPTURE(entry.path().filename().string(), tune.number);
                faultless(sheet::leadSheet(tune, *font, {}), *font, graceFlag);
                if (tune::hasChords(tune) && harp::settingFor(example::floor34(), tune.key))
                    faultless(sheet::arrangementSheet(example::arrangementOf(tune), *font, {}),
                              *font);
                ++tunes;
            }
        }
    CHECK(tunes > 300);
}
