#include "core/notation/melody.h"
#include "core/sheet/breaks.h"
#include "core/sheet/pages.h"
#include "core/sheet/turns.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <vector>

using sheet::BarWidth;
using sheet::LineRoom;

namespace {

sheet::BarWidths bars(int count, double natural)
{
    return sheet::BarWidths(count, BarWidth{natural, natural * 0.6, 1, false});
}

LineRoom const room{100, 10, 8, 4, 1};

} // namespace

TEST_CASE("Sixteen bars of a dance stand four to a line", "[breaks]")
{
    CHECK(sheet::lineStarts(bars(16, 22), room) == std::vector<tune::BarIndex>{0, 4, 8, 12});
}

TEST_CASE("A pick-up bar goes with the four bars after it", "[breaks]")
{
    auto dance = bars(17, 21);
    dance[0] = {6, 4, 1.0 / 6, false};
    CHECK(sheet::lineStarts(dance, room) == std::vector<tune::BarIndex>{0, 5, 9, 13});
}

TEST_CASE("A part begins a line of its own where the lines allow it", "[breaks]")
{
    auto dance = bars(14, 20);
    dance[6].beginsPart = true; // six bars, then eight
    auto const starts = sheet::lineStarts(dance, room);
    CHECK(std::find(starts.begin(), starts.end(), 6) != starts.end());
}

TEST_CASE("Wide bars are set fewer to a line and none beyond its room", "[breaks]")
{
    auto const starts = sheet::lineStarts(bars(9, 45), room);
    for (std::size_t i = 0; i < starts.size(); ++i) {
        tune::BarIndex const end = i + 1 < starts.size() ? starts[i + 1] : tune::BarIndex(9);
        CHECK((end - starts[i]) * 45 * 0.6 <= 92);
    }
}

TEST_CASE("A bar wider than the line stands alone", "[breaks]")
{
    auto wide = bars(3, 20);
    wide[1] = {300, 200, 1, false};
    CHECK(sheet::lineStarts(wide, room) == std::vector<tune::BarIndex>{0, 1, 2});
}

TEST_CASE("The choice of line ends is the cheapest of all", "[breaks]")
{
    // Squeezing three bars of 34 into 92 is less strain than stretching two and two.
    CHECK(sheet::lineStarts(bars(6, 33), {100, 8, 8, 3, 1}) ==
          std::vector<tune::BarIndex>{0, 3});
}

TEST_CASE("A page is turned where a part begins rather than inside one", "[breaks]")
{
    std::vector<sheet::SystemHeight> systems(6, {20, false});
    systems[4].beginsPart = true;
    // Five would fit on the first page.
    CHECK(sheet::pageStarts(systems, {110, 120, 5, 2}) == std::vector<int>{0, 4});
}

TEST_CASE("As few pages are used as can be", "[breaks]")
{
    std::vector<sheet::SystemHeight> systems(5, {20, true});
    CHECK(sheet::pageStarts(systems, {120, 130, 5, 2}) == std::vector<int>{0});
    CHECK(sheet::pageStarts(systems, {60, 70, 5, 2}).size() == 2);
}

TEST_CASE("The foot of the last page finds its room", "[breaks]")
{
    std::vector<sheet::SystemHeight> systems(3, {30, false});
    // Three fit without the foot, with it they do not.
    CHECK(sheet::pageStarts(systems, {95, 95, 10, 1}).size() == 2);
    CHECK(sheet::pageStarts(systems, {95, 95, 2, 1}).size() == 1);
}

TEST_CASE("Lines begin with a phrase where four bars and three are as wide", "[breaks]")
{
    // Sixteen bars of which three and a half fill a line: by width alone lines of three and four
    // would alternate.
    sheet::BarWidths tune(16, BarWidth{27, 18, 1, false, 0});
    for (tune::BarIndex const i : tune.indices()) tune[i].inPart = i.value();
    LineRoom const room{97, 12, 10, 4, 1};
    auto const starts = sheet::lineStarts(tune, room);
    CHECK(starts == std::vector<tune::BarIndex>{0, 4, 8, 12});
    CHECK(sheet::linesOffPhrase(tune, starts) == 0);
    CHECK(sheet::linesOffPhrase(tune, {0, 3, 6, 10}) == 1);
    // A bar behind a pick-up is no place for a line to begin.
    tune[1].inPart = 0.25;
    CHECK(sheet::linesOffPhrase(tune, {0, 1}) == 1);
}

TEST_CASE("No last page holds one system alone where another division has as few pages",
          "[breaks]")
{
    std::vector<sheet::SystemHeight> systems(5, {20, false, true});
    CHECK(sheet::pageStarts(systems, {90, 90, 5, 2}) == std::vector<int>{0, 3});
}

TEST_CASE("Pages lie open two by two, and the second is turned where a hand is free",
          "[breaks]")
{
    // Four systems fill a page.
    std::vector<sheet::SystemHeight> systems(10, {20, false});
    systems[5].easyTurn = true; // after the sixth
    systems[2].easyTurn = true; // after the third: no turn there, if pages end there
    auto const starts = sheet::pageStarts(systems, {90, 90, 2, 2});
    REQUIRE(starts.size() == 3);
    CHECK(starts[2] == 6);
    CHECK(sheet::hardTurns(systems, starts) == 0);
    CHECK(sheet::hardTurns(systems, {0, 4, 8}) == 1);
    CHECK(sheet::hardTurns(systems, {0, 4}) == 0);
    // In two pages nothing is turned: they are shared out by what fills them.
    std::vector<sheet::SystemHeight> open(7, {20, false});
    open[2].easyTurn = true;
    CHECK(sheet::pageStarts(open, {90, 90, 2, 2}) == std::vector<int>{0, 4});
}

TEST_CASE("A second ending has no line of its own where the bars before it can share one",
          "[breaks]")
{
    // Four bars fill a line; the fifth of the second part stands for the fourth.
    sheet::BarWidths tune(9, BarWidth{23, 19, 1, false, 0});
    for (tune::BarIndex i = 0; i < 8; ++i) tune[i].inPart = i.value() % 4;
    tune[4].beginsPart = true;
    tune[8].bars = 0.15;
    tune[8].inPart = 4;
    LineRoom const room{97, 12, 10, 4, 1};
    CHECK(sheet::lineStarts(tune, room) == std::vector<tune::BarIndex>{0, 4, 6});
}

TEST_CASE("A hand is free to turn from its last pluck to its next, and ties are no plucks",
          "[breaks][turns]")
{
    auto const scoreOf = [](std::string const& first, std::string const& second) {
        sheet::Score score;
        score.grand = false;
        score.tune =
            example::tuneOf({example::bar(first, example::fourFour, example::gMajor),
                             example::bar(second, example::fourFour, example::gMajor)});
        score.tune.tempo = tune::Tempo{example::wholes(1, 4), 60};
        for (tune::BarIndex const bar : score.tune.bars.indices()) {
            score.bars.emplace_back();
            score.bars.back().upper = notation::melodyBar(score.tune, bar, {});
        }
        return score;
    };
    CHECK(sheet::freeBefore(scoreOf("G4:1/2 z:1/2", "z:1/4 G4:3/4"), 1) == Approx(5));
    CHECK(sheet::freeBefore(scoreOf("G4:1/1~", "G4:1/2 G4:1/2"), 1) == Approx(6));
    sheet::Score both = scoreOf("G4:3/4 A4:1/4", "G4:1/1");
    CHECK(sheet::freeBefore(both, 1) == Approx(1));
    // The left hand holds a chord meanwhile.
    both.grand = true;
    notation::StaffNote held;
    held.length = example::wholes(1, 1);
    held.pitches = {*music::pitchFrom("G2")};
    for (notation::PrintedBar& bar : both.bars) bar.lower.notes = {held};
    CHECK(sheet::freeBefore(both, 1) == Approx(4));
    both.tune.tempo->beatsPerMinute = 240;
    CHECK(sheet::freeBefore(both, 1) < sheet::enoughToTurn);
}
