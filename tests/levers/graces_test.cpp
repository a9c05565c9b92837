#include "core/levers/leverplan.h"
#include "core/levers/uses.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"

#include <catch2/catch.hpp>

using lines::level;
using lines::major;
using lines::moment;

namespace {

levers::Planning planOf(tune::Tune const& tune, harp::Level const& level)
{
    return levers::leverPlanFor(example::floor34(), tune, tune::played(tune),
                                {{music::Rational(1, 4)}, 60}, level);
}

music::Pitch pitch(char const* name) { return *music::pitchFrom(name); }

harp::StringIndex stringOf(char const* name)
{
    return *harp::stringFor(example::floor34(), pitch(name));
}

// The plan of a line in G at level 2 with a grace note, C sharp, before one of its notes.
levers::Plan planWithGrace(char const* words, tune::BarIndex bar, tune::NoteIndex note)
{
    tune::Tune tune = lines::tune(words, major("G"));
    tune.bars[bar].notes[note].graces = {pitch("C#5")};
    auto planning = planOf(tune, level(2));
    REQUIRE(planning.plan);
    return *std::move(planning.plan);
}

} // namespace

TEST_CASE("Grace notes stand before their note and are held for no time", "[levers]")
{
    auto tune = lines::tune("G4:1/4 B4+D5:1/4 |", major("G"));
    tune.bars[0].notes[1].graces = {pitch("A4"), pitch("C5")};
    auto const uses = levers::usesOf(tune, tune::played(tune));
    REQUIRE(uses.size() == 5);
    CHECK(uses[1].pitch == pitch("A4"));
    CHECK(uses[2].pitch == pitch("C5"));
    CHECK(uses[2].at == moment(1, 4));
    CHECK(uses[2].held == music::Length{});
    CHECK(uses[3].pitch == pitch("B4"));
    CHECK(levers::placeOf(uses[2], tune::played(tune).bars) ==
          tune::NotePlace{0, 1, 1, true});
    CHECK(levers::placeOf(uses[4], tune::played(tune).bars) ==
          tune::NotePlace{0, 1, 1, false});
}

TEST_CASE("A grace note on a string of its own sets that string's lever", "[levers]")
{
    auto const plan = planWithGrace("D5:1/4 D5:3/4 |", 0, 1);
    CHECK(plan.timeline.flips.empty());
    CHECK(plan.gracesLeft.empty());
    CHECK(plan.timeline.setup[stringOf("C5")] == harp::Lever::Up);
}

TEST_CASE("A lever is turned for a grace note where there is time", "[levers]")
{
    auto const plan = planWithGrace("C5:1/4 D5:3/4 | E5:1/2 D5:1/2 |", 1, 1);
    REQUIRE(plan.timeline.flips.size() == 1);
    CHECK(plan.timeline.flips[0].at < moment(3, 2));
    CHECK(plan.gracesLeft.empty());
}

TEST_CASE("A grace note for which no lever turns in time is left out, not the tune", "[levers]")
{
    // C sharp just before C natural of the same string.
    auto const plan = planWithGrace("C5:1/4 D5:1/4 C5:1/2 |", 0, 2);
    CHECK(plan.timeline.flips.empty());
    REQUIRE(plan.gracesLeft.size() == 1);
    CHECK(plan.gracesLeft[0] == tune::NotePlace{0, 2, 0, true});
}

TEST_CASE("A wound string's lever is turned less readily than a plain one's", "[levers]")
{
    // Levers on wound strings are stiff and scrape [trade-3.6].
    auto const tune = lines::tune("G4:1/1 | G4:1/1 | G4:1/1 |", major("G"));
    levers::Clock const clock(tune, tune::played(tune), {{music::Rational(1, 4)}, 60},
                              level(2));
    levers::Gap gap{3, moment(0), moment(1, 4), moment(2), 1, false, false, false, 0};
    int const plain = clock.bestWindow(gap)->cost;
    gap.stiff = true;
    CHECK(clock.bestWindow(gap)->cost > plain);
    gap.stiff = false;
    gap.ringSeconds = 60; // still rings loud: it is damped by touch first
    CHECK(clock.bestWindow(gap)->cost > plain);
}

TEST_CASE("Flips move to where the left hand gives up least, and stay as many", "[levers]")
{
    auto const tune =
        lines::tune("C5:1/4 D5:3/4 | G4:1/1 | G4:1/1 | D5:1/2 C#5:1/2 |", major("G"));
    auto const playing = tune::played(tune);
    tune::Tempo const tempo{{music::Rational(1, 4)}, 60};
    auto const planning =
        levers::leverPlanFor(example::floor34(), tune, playing, tempo, level(2));
    REQUIRE(planning.plan);
    levers::Clock const clock(tune, playing, tempo, level(2));
    // Bar 2 is free, all else is dear.
    auto const plan = levers::retimed(
        *planning.plan, clock, playing.bars, [](music::Moment from, music::Moment to) {
            return moment(1) <= from && to <= moment(2) ? 0 : 500;
        });
    REQUIRE(plan.timeline.flips.size() == 1);
    CHECK(moment(1) <= plan.timeline.flips[0].freeFrom);
    CHECK(plan.timeline.flips[0].freeTo <= moment(2));
    CHECK(plan.timeline.flips[0].string == planning.plan->timeline.flips[0].string);
    CHECK(plan.timeline.flips[0].playedBar == 1);
}
