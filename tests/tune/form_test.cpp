// Introduction, ending and times through, made of the tune itself.
#include "core/files/abc/read.h"
#include "core/tune/form.h"
#include "core/tune/playing.h"

#include <catch2/catch.hpp>

using namespace tune;

namespace {

Tune tuneOf(std::string const& bars, std::string const& head = "M:4/4\nL:1/8\nK:G\n")
{
    std::string const abc = "X:1\nT:Mill\n" + head + bars + "\n";
    auto const entries = files::abcTunes(abc);
    REQUIRE(entries);
    auto const tune = files::readAbc(abc, entries->front(), "mill.abc");
    REQUIRE(tune);
    return *tune;
}

std::vector<int> numbers(Tune const& tune)
{
    std::vector<int> out;
    for (Bar const& bar : tune.bars) out.push_back(bar.number);
    return out;
}

std::vector<int> origins(Formed const& formed)
{
    std::vector<int> out;
    for (BarOrigin const& from : formed.from) out.push_back(from.bar);
    return out;
}

// How long each bar of the performance lasts, in quavers.
std::vector<int> quavers(Tune const& tune)
{
    std::vector<int> out;
    for (PlayedBar const& bar : played(tune).bars)
        out.push_back(static_cast<int>(
            (tune.bars[bar.bar].length.wholes * music::Rational(8)).toDouble()));
    return out;
}

std::string const fourBars = "\"G\"G2A2B2d2|\"C\"e2d2c2A2|\"D\"F2A2d2c2|\"G\"B2A2G4|]";

} // namespace

TEST_CASE("Without a wish a tune stays what it is", "[form]")
{
    Tune const tune = tuneOf(fourBars);
    Formed const same = formed(tune, {});
    CHECK(same.tune == tune);
    CHECK(origins(same) == std::vector<int>{0, 1, 2, 3});
}

TEST_CASE("The last bars stand before and after, and the tune keeps its numbers", "[form]")
{
    Tune const tune = tuneOf(fourBars);
    Formed const made = formed(tune, {2, 2, {}});
    CHECK(origins(made) == std::vector<int>{2, 3, 0, 1, 2, 3, 2, 3});
    CHECK(numbers(made.tune) == std::vector<int>{-2, -1, 1, 2, 3, 4, 5, 6});
    CHECK(made.tune.bars[0].annotations.at(0).text == "Introduction");
    CHECK(made.tune.bars[6].annotations.at(0).text == "Ending");
    CHECK(made.tune.bars[1].closes == BarLine::Double);
    CHECK(made.tune.bars[5].closes == BarLine::Double);
    CHECK(made.tune.bars[7].closes == BarLine::Final);
    CHECK(barName(made.tune, 1) == "bar 2 of the introduction");
    CHECK(barName(made.tune, 2) == "bar 1");
    CHECK(made.tune.bars[0].notes.size() == tune.bars[2].notes.size());
}

TEST_CASE("Repeats stay repeats behind an introduction", "[form]")
{
    Tune const tune = tuneOf("\"G\"G2A2B2d2|\"D\"d2c2A2F2:|\"C\"e2d2c2A2|\"G\"B2A2G4:|");
    REQUIRE(quavers(tune).size() == 8);
    Formed const made = formed(tune, {2, 0, {}});
    CHECK(made.tune.bars[2].repeatOpens);
    CHECK(quavers(made.tune).size() == 10);
    std::vector<int> bars;
    for (PlayedBar const& bar : played(made.tune).bars) bars.push_back(made.from[bar.bar].bar);
    CHECK(bars == std::vector<int>{2, 3, 0, 1, 0, 1, 2, 3, 2, 3});
}

TEST_CASE("A pick-up leads into the introduction, out of it and into the ending", "[form]")
{
    // Common practice, no source: upbeats are counted with the bar that is short by them.
    Tune const tune = tuneOf("D2|\"G\"G2A2B2d2|\"C\"e2d2c2A2|\"D\"F2A2d2c2|\"G\"B2A2G2|]");
    Formed const made = formed(tune, {2, 2, {}});
    // The second bar ends with a crotchet that leads into the last two.
    CHECK(origins(made) == std::vector<int>{2, 3, 4, 0, 1, 2, 3, 4, 2, 3, 4});
    CHECK(made.from[0].firstNote == 3);
    CHECK(quavers(made.tune) == std::vector<int>{2, 8, 6, 2, 8, 8, 8, 6, 2, 8, 8});
    CHECK(made.tune.bars[0].upbeat == music::Length{music::Rational(6, 8)});
    CHECK(barName(made.tune, 0) == "the pick-up of the introduction");
    CHECK(barName(made.tune, 3) == "the pick-up bar");
    CHECK(numbers(made.tune)[4] == 1);
}

TEST_CASE("Where the last bar is full it makes room for the pick-up", "[form]")
{
    Tune const tune = tuneOf("D2|\"G\"G2A2B4|\"D\"d4 c4|\"G\"G8|]");
    Formed const made = formed(tune, {2, 0, {}});
    CHECK(quavers(made.tune) == std::vector<int>{8, 6, 2, 8, 8, 8});
    CHECK(made.tune.bars[1].notes.back().length == music::Length{music::Rational(6, 8)});
}

TEST_CASE("The introduction takes the last ending, free of its bracket", "[form]")
{
    Tune const tune = tuneOf("|:\"G\"G2A2B2d2|\"C\"e2d2c2A2|1\"D\"F2A2d2c2:|2\"G\"B2A2G4|]");
    Formed const made = formed(tune, {2, 2, {}});
    CHECK(origins(made) == std::vector<int>{1, 3, 0, 1, 2, 3, 1, 3});
    CHECK(made.tune.bars[1].endings.empty());
    CHECK(made.tune.bars[4].endings == std::vector<int>{1});
    std::vector<int> bars;
    for (PlayedBar const& bar : played(made.tune).bars) bars.push_back(made.from[bar.bar].bar);
    CHECK(bars == std::vector<int>{1, 3, 0, 1, 2, 0, 1, 3, 1, 3});
}

TEST_CASE("A way back is written out", "[form]")
{
    Tune const tune =
        tuneOf("\"G\"G2A2B2d2|\"D\"d2c2A2!fine!F2||\"C\"e2d2c2A2|\"D\"F2A2d2!D.C.alfine!c2|]");
    auto const before = played(tune);
    REQUIRE(before.jumps);
    Formed const made = formed(tune, {2, 0, {}});
    auto const after = played(made.tune);
    CHECK_FALSE(after.jumps);
    CHECK(after.bars.size() == before.bars.size() + 2);
    // It ends with what closes the tune, not with what is written last.
    CHECK(origins(made) == std::vector<int>{0, 1, 0, 1, 2, 3, 0, 1});
}

TEST_CASE("Times through follow each other, each numbered from 1", "[form]")
{
    Tune const tune = tuneOf(fourBars);
    Formed const made = formed(tune, {2, 2, {"First time: bare", "Second time: fuller"}});
    CHECK(numbers(made.tune) == std::vector<int>{-2, -1, 1, 2, 3, 4, 1, 2, 3, 4, 5, 6});
    CHECK(made.tune.bars[2].annotations.at(0).text == "First time: bare");
    CHECK(made.tune.bars[6].annotations.at(0).text == "Second time: fuller");
    CHECK(made.tune.bars[6].time == 2);
    CHECK(made.tune.bars[11].time == 2);
    CHECK(barName(made.tune, 6) == "bar 1, time 2");
}

TEST_CASE("A phrase that begins in the middle of a chord is given it", "[form]")
{
    Tune const tune = tuneOf("\"G\"G2A2B2d2|\"C\"e2d2c2A2|F2A2d2c2|\"G\"B2A2G4|]");
    Formed const made = formed(tune, {2, 0, {}});
    REQUIRE(made.tune.bars[0].chords.size() == 1);
    CHECK(music::plain(made.tune.bars[0].chords[0].chord) == "C");
    auto const spans = chordSpans(made.tune);
    CHECK(music::plain(spans.front().chord) == "C");
}

TEST_CASE("Bars of an introduction add up in every meter", "[form]")
{
    struct Case {
        char const* head;
        char const* bars;
        int full; // quavers
    };
    Case const cases[] = {
        {"M:3/4\nL:1/8\nK:Ador\n", "E2|\"Am\"A2B2c2|\"G\"B2A2G2|\"Em\"E2G2B2|\"Am\"A4|]", 6},
        {"M:6/8\nL:1/8\nK:D\n", "A|\"D\"d2f a2f|\"G\"g2f e2d|\"A\"c2d efg|\"D\"d3 d2|]", 6},
        {"M:9/8\nL:1/8\nK:Gmix\n",
         "D|\"G\"G2B d2B G2B|\"F\"A2c f2c A2c|\"C\"e2c G2c e2c|\"G\"d2B G3 G2|]", 9},
    };
    for (Case const& c : cases) {
        CAPTURE(c.head);
        Tune const tune = tuneOf(c.bars, c.head);
        for (int bars : {2, 4}) {
            Formed const made = formed(tune, {bars, bars, {}});
            auto const lengths = quavers(made.tune);
            int carried = 0; // of a bar that a pick-up completes
            for (std::size_t i = 0; i < lengths.size(); ++i) {
                carried += lengths[i];
                if (carried == c.full) carried = 0;
                bool const opens = i == 0 && made.tune.bars[0].upbeat != music::Length{};
                if (opens) carried = 0;
                CHECK(carried < c.full);
            }
            CHECK(carried == 0);
            CHECK(lengths.back() == c.full);
        }
    }
}
