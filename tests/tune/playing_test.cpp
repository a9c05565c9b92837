#include "core/tune/playing.h"
#include "tests/tune/bars.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Moment;
using music::Rational;

namespace {

std::vector<int> order(Tune const& tune)
{
    std::vector<int> bars;
    for (PlayedBar const& bar : played(tune).bars) bars.push_back(bar.bar);
    return bars;
}

} // namespace

TEST_CASE("A tune without repeats is the order is ignored", "[playing]")
{
    CHECK(order(bars::plain(3)) == std::vector<int>{0, 1, 2});
}

TEST_CASE("A repeat without an opening sign goes back to the start of the tune", "[playing]")
{
    // ABC 2.1, section 4.8 (from memory).
    Tune tune = bars::plain(3);
    tune.bars[1].repeatCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 1, 2});
}

TEST_CASE("A repeat without an opening sign goes back to the last double bar line", "[playing]")
{
    Tune tune = bars::plain(4);
    tune.bars[1].closes = BarLine::Double;
    tune.bars[3].repeatCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 1, 2, 3, 2, 3});
}

TEST_CASE("A double bar line inside an opened repeat moves nothing", "[playing]")
{
    Tune tune = bars::plain(4);
    tune.bars[0].repeatOpens = true;
    tune.bars[1].closes = BarLine::Double;
    tune.bars[3].repeatCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 1, 2, 3, 0, 1, 2, 3});
}

TEST_CASE("Two strains, each repeated, are played A A B B", "[playing]")
{
    // Common practice, no source: the shape of most dance tunes.
    Tune tune = bars::plain(4);
    tune.bars[1].repeatCloses = true;
    tune.bars[2].repeatOpens = true;
    tune.bars[3].repeatCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 1, 2, 3, 2, 3});
}

TEST_CASE("First and second endings are taken in turn", "[playing]")
{
    Tune tune = bars::plain(4);
    tune.bars[0].repeatOpens = true;
    tune.bars[1].endings = {1};
    tune.bars[1].repeatCloses = true;
    tune.bars[2].endings = {2};
    tune.bars[2].endingCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 2, 3});
}

TEST_CASE("Lists of endings give every pass its own", "[playing]")
{
    // |: 0 |1,3 1 :|2 2 :|4 3 |]
    Tune tune = bars::plain(4);
    tune.bars[1].endings = {1, 3};
    tune.bars[1].repeatCloses = true;
    tune.bars[2].endings = {2};
    tune.bars[2].repeatCloses = true;
    tune.bars[3].endings = {4};
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 2, 0, 1, 0, 3});
}

TEST_CASE("A second ending may follow a first time that has none of its own", "[playing]")
{
    // |: 0 :|2 1 |] 2
    Tune tune = bars::plain(3);
    tune.bars[0].repeatOpens = true;
    tune.bars[0].repeatCloses = true;
    tune.bars[1].endings = {2};
    tune.bars[1].endingCloses = true;
    CHECK(order(tune) == std::vector<int>{0, 0, 1, 2});
}

TEST_CASE("Endings repeat even where the repeat sign was forgotten", "[playing]")
{
    Tune tune = bars::plain(3);
    tune.bars[1].endings = {1};
    tune.bars[2].endings = {2};
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 2});
}

TEST_CASE("The second strain has endings of its own", "[playing]")
{
    Tune tune = bars::plain(6);
    for (BarIndex const strain : {BarIndex(0), BarIndex(3)}) {
        tune.bars[strain + 1].endings = {1};
        tune.bars[strain + 1].repeatCloses = true;
        tune.bars[strain + 2].endings = {2};
        tune.bars[strain + 2].endingCloses = true;
    }
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 2, 3, 4, 3, 5});
}

TEST_CASE("A section signed to be played three times is played three times", "[playing]")
{
    Tune tune = bars::plain(1);
    tune.bars[0].repeatCloses = true;
    tune.bars[0].timesPlayed = 3;
    CHECK(order(tune) == std::vector<int>{0, 0, 0});
}

TEST_CASE("Parts are played in the order the tune names, repeats inside them followed",
          "[playing]")
{
    Tune tune = bars::plain(3);
    tune.bars[0].part = "A";
    tune.bars[1].part = "B";
    tune.bars[1].repeatOpens = true;
    tune.bars[2].repeatCloses = true;
    tune.partOrder = {"A", "A", "B", "A"};
    CHECK(order(tune) == std::vector<int>{0, 0, 1, 2, 1, 2, 0});
}

TEST_CASE("An order that names a repeated part twice in a row spells the repeats out",
          "[playing]")
{
    // An old folk tune collection gives the order AABA to two strains that both carry a repeat
    // sign and mean 32 bars by it.
    Tune tune = bars::plain(4);
    tune.bars[0].part = "A";
    tune.bars[1].endings = {1};
    tune.bars[1].repeatCloses = true;
    tune.bars[2].endings = {2};
    tune.bars[3].part = "B";
    tune.bars[3].repeatCloses = true;
    tune.partOrder = {"A", "A", "B", "A"};
    CHECK(order(tune) == std::vector<int>{0, 1, 0, 2, 3, 0, 2});
}

TEST_CASE("Bars before the first named part are played before the order begins", "[playing]")
{
    Tune tune = bars::plain(3);
    tune.bars[1].part = "A";
    tune.bars[2].part = "B";
    tune.partOrder = {"B", "A"};
    CHECK(order(tune) == std::vector<int>{0, 2, 1});
}

TEST_CASE("A part order that names no part of the tune changes nothing", "[playing]")
{
    Tune tune = bars::plain(2);
    tune.bars[0].part = "A";
    tune.partOrder = {"X", "Y"};
    CHECK(order(tune) == std::vector<int>{0, 1});
}

TEST_CASE("Passes count how often a bar has been played", "[playing]")
{
    Tune tune = bars::plain(1);
    tune.bars[0].repeatCloses = true;
    tune.bars[0].timesPlayed = 4;
    Playing const playing = played(tune);
    REQUIRE(playing.bars.size() == 4);
    for (PlayedBarIndex const i : playing.bars.indices()) {
        CHECK(playing.bars[i].pass == i + 1);
        CHECK(playing.bars[i].at == Moment{Rational(i)});
    }
    CHECK(playing.total == Length{Rational(4)});
}

TEST_CASE("A repeat of a thousand million passes is the order is ignored", "[playing]")
{
    Tune tune = bars::plain(2);
    tune.bars[1].repeatCloses = true;
    tune.bars[1].timesPlayed = 1'000'000'000;
    CHECK(order(tune) == std::vector<int>{0, 1});
}

TEST_CASE("Tied notes sound once, over the bar line too", "[playing]")
{
    Tune tune = bars::of({bars::bar(35), bars::bar(35), bars::bar(36)});
    tune.bars[0].notes[0].tied = true;
    Playing const playing = played(tune);
    REQUIRE(playing.notes.size() == 2);
    CHECK(playing.notes[0].held == Length{Rational(2)});
    CHECK(playing.notes[0].playedBar == 0);
    CHECK(playing.notes[1].at == Moment{Rational(2)});
}

TEST_CASE("A tie into another pitch joins nothing", "[playing]")
{
    Tune tune = bars::of({bars::bar(35), bars::bar(36)});
    tune.bars[0].notes[0].tied = true;
    CHECK(played(tune).notes.size() == 2);
}

TEST_CASE("A chord of the tune gives one played note a pitch, the lowest first", "[playing]")
{
    Tune tune = bars::plain(1);
    tune.bars[0].notes[0].pitches = {music::naturalAt(28), music::naturalAt(30)};
    Playing const playing = played(tune);
    REQUIRE(playing.notes.size() == 2);
    CHECK(playing.notes[0].ofChord == 0);
    CHECK(playing.notes[1].ofChord == 1);
    CHECK(playing.notes[1].pitch == music::naturalAt(30));
}
