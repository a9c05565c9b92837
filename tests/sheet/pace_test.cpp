#include "core/notation/notation.h"
#include "core/notation/pace.h"
#include "core/perform/danceways.h"
#include "core/sheet/papers/levelpack.h"
#include "core/sheet/papers/setpaper.h"
#include "core/sheet/sheet.h"
#include "tests/perform/pieces.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

using music::Length;
using music::Rational;

namespace {

arrange::Arrangement arranged(std::string const& abc)
{
    return scenario::proposed(scenario::briefFor(abc)).arrangement;
}

// Invented. The last note is plucked on beat 1 of the last bar.
std::string airOf(std::string const& body)
{
    return "X:1\nT:Reed Bank\nR:air\nM:4/4\nL:1/4\nQ:1/4=60\nK:G\n" + body;
}
std::string const once = airOf("\"G\"GABc|\"C\"cBAG|\"D\"AGFA|\"G\"G4|]\n");
std::string const twice = airOf("|:\"G\"GABc|\"C\"cBAG|\"D\"AGFA|\"G\"G4:|\n");

perform::Slowing const bar{0.5, 4};

// Where words stand on the sheet, with their bars.
std::vector<std::pair<int, std::string>> italics(sheet::Document const& document,
                                                 std::string const& begins)
{
    std::vector<std::pair<int, std::string>> out;
    for (sheet::Page const& page : document.pages)
        for (sheet::Mark const& mark : page.marks)
            if (auto const* words = std::get_if<sheet::Words>(&mark.what);
                words && words->face == sheet::Face::Italic && words->text.starts_with(begins))
                out.emplace_back(mark.bar.value_or(-1), words->text);
    return out;
}

} // namespace

TEST_CASE("A slowing is told of where the tempo begins to fall", "[slowing]")
{
    auto const piece = pieces::twoBars(); // the last note on beat 4 of the second bar
    auto const place = [&piece](int beats) {
        auto const mark = notation::slowingMark(piece, {0.5, beats});
        REQUIRE(mark);
        CHECK_FALSE(mark->lastTime);
        return std::pair{mark->from.bar, mark->from.at.wholes};
    };
    CHECK(place(2) == std::pair{tune::BarIndex(1), Rational(1, 4)});
    CHECK(place(3) == std::pair{tune::BarIndex(1), Rational(0)});
    CHECK(place(4) == std::pair{tune::BarIndex(0), Rational(3, 4)});
    CHECK(place(16) == std::pair{tune::BarIndex(0), Rational(0)}); // no longer than the tune
    CHECK_FALSE(notation::slowingMark(piece, {}));
    CHECK_FALSE(notation::slowingMark(piece, {1, 4}));
    CHECK_FALSE(notation::slowingMark(piece, {0.5, 0}));
}

TEST_CASE("In a bar that is played before as well, the slowing is of the last time",
          "[slowing]")
{
    auto const mark = [](std::string const& abc) {
        return *notation::slowingMark(arranged(abc), bar);
    };
    CHECK(notation::slowingWords(mark(once)) == "rit.");
    CHECK(mark(once).from.bar == 2);
    CHECK(notation::slowingWords(mark(twice)) == "rit. last time");
    CHECK(mark(twice).from.bar == 2);
    // In a second ending of its own it is not.
    auto const ending =
        mark(airOf("|:\"G\"GABc|\"C\"cBAG|1\"D\"AGFA|\"G\"G4:|2\"D\"AGFA|\"G\"G4|]\n"));
    CHECK(notation::slowingWords(ending) == "rit.");
    CHECK(ending.from.bar == 4);
    // D.C. al Fine: the end is where the tune says so, in a bar that is played twice.
    auto const fine =
        mark(airOf("\"G\"GABc|\"D\"AGFA|\"G\"!fine!G4|\"C\"cBAG|\"D\"A4!D.C.alfine!|]\n"));
    CHECK(fine.from.bar == 1);
    CHECK(fine.lastTime);
}

TEST_CASE("A tune that says itself that it slows is not told so a second time", "[slowing]")
{
    auto const marked = [](std::string const& words) {
        return notation::slowingMark(
                   arranged(airOf("\"G\"GABc|\"C\"cBAG|\"D\"" + words + "AGFA|\"G\"G4|]\n")),
                   bar)
            .has_value();
    };
    CHECK(marked(""));
    for (char const* words :
         {"rit.", "poco rit.", "Rall.", "slower", "molto rallentando", "etwas langsamer"})
        CHECK_FALSE(marked(std::string("\"^") + words + '"'));
    CHECK(marked("\"^spirit\"")); // not a word that begins so
    // Far before the end it is of another slowing.
    CHECK(notation::slowingMark(
        arranged(
            airOf("\"G\"\"^rit.\"GABc|\"C\"cBAG|\"C\"cBAG|\"C\"cBAG|\"D\"AGFA|\"G\"G4|]\n")),
        bar));
}

TEST_CASE(
    "Airs and waltzes are told of their usual slowing, and dances that slow a little are not",
    "[slowing]")
{
    perform::DanceWays const& ways = scenario::tables().ways;
    auto const told = [&ways](std::string const& kind, std::optional<int> percent) {
        tune::Tune tune = scenario::tuneOf(once);
        tune.rhythm = kind;
        return perform::told(ways, perform::slowingFor(ways.slowings, tune, percent)).beats > 0;
    };
    CHECK(told("air", std::nullopt));
    CHECK(told("march", std::nullopt));
    CHECK_FALSE(told("reel", std::nullopt));
    CHECK_FALSE(told("air", 0));
    CHECK(told("reel", 100));      // to 80 %
    CHECK_FALSE(told("reel", 40)); // to 92 %
    CHECK_FALSE(told("air", 15));  // to 92.5 %
    CHECK(told("air", 20));        // to 90 %
}

TEST_CASE("The sheet says rit. in italics over the bar where the slowing begins",
          "[slowing][words]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::SheetStyle style;
    auto const arrangement = arranged(twice);
    CHECK(italics(sheet::arrangementSheet(arrangement, *font, style), "rit").empty());
    style.slowing = bar;
    using Found = std::vector<std::pair<int, std::string>>;
    Found const wanted{{2, "rit. last time"}};
    CHECK(italics(sheet::arrangementSheet(arrangement, *font, style), "rit") == wanted);
    CHECK(italics(sheet::patternSheet(arrangement, *font, style), "rit") == wanted);
    // The lead sheet is the tune's, not the arrangement's.
    CHECK(italics(sheet::leadSheet(arrangement.tune, *font, style), "rit").empty());
    CHECK(italics(sheet::levelPack({arrangement, arrangement}, *font, style), "rit").size() ==
          2);
}

TEST_CASE("Of a set the last tune alone is told to slow", "[slowing][words]")
{
    auto const font = measure::musicFont();
    if (!font) return;
    sheet::SheetStyle style;
    style.slowing = bar;
    auto const set = perform::setOf("", {arranged(once), arranged(twice)});
    auto const found =
        italics(sheet::setPaper(set, notation::Kind::Arrangement, *font, style), "rit");
    REQUIRE(found.size() == 1);
    CHECK(found[0].second == "rit. last time");
}
