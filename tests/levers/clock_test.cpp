#include "core/levers/clock.h"

#include "tests/levers/lines.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>

using levers::Clock;
using levers::Gap;
using levers::Window;
using lines::level;
using lines::moment;

namespace {

Clock clockOf(tune::Tune const& tune, harp::Level const& level, double quarters = 60)
{
    return Clock(tune, tune::played(tune), {{music::Rational(1, 4)}, quarters}, level);
}

tune::Tune fourBars()
{
    return lines::tune("G4:1/4 A4:1/4 B4:1/4 A4:1/4 | G4:1/1 | A4:1/4 B4:1/4 A4:1/4 B4:1/4 | "
                       "G4:1/1 |",
                       lines::major("G"));
}

// How long a hand is free for a flip somewhere in the first bar and a half.
music::Length freeTime(Clock const& clock)
{
    auto const window =
        clock.bestWindow({20, moment(0), moment(1, 8), moment(3, 2), 0, true, false});
    REQUIRE(window);
    return window->freeTo - window->freeFrom;
}

} // namespace

TEST_CASE("A flip takes the level's beats, in the beats of the meter", "[levers]")
{
    auto const tune = fourBars();
    CHECK(freeTime(clockOf(tune, level(2))) == music::Length{music::Rational(1, 2)});
    CHECK(freeTime(clockOf(tune, level(0.5))) == music::Length{music::Rational(1, 8)});
    auto const jig = lines::tune("G4:3/8 A4:3/8 |", lines::major("G"), {6, 8});
    CHECK(freeTime(clockOf(jig, level(1))) == music::Length{music::Rational(3, 8)});
}

TEST_CASE("A flip never takes less than its seconds, however fast the tune", "[levers]")
{
    // Half a beat at 240 crotchets is 0.125 s; 0.4 s are 1.6 beats [trade-3.6].
    auto const free = freeTime(clockOf(fourBars(), level(0.5, 0.4), 240));
    CHECK(free >= music::Length{music::Rational(4, 10)});
    CHECK(free < music::Length{music::Rational(41, 100)});
}

TEST_CASE("The string is silent for a quarter of the free time, or half the least time",
          "[levers]")
{
    auto const tune = fourBars();
    CHECK(clockOf(tune, level(2)).turningTime(0) == music::Length{music::Rational(1, 8)});
    // 0.2 s at 60 crotchets are a twentieth of a whole note.
    auto const least = clockOf(tune, level(0.5, 0.4)).turningTime(0);
    CHECK(least >= music::Length{music::Rational(1, 20)});
    CHECK(least < music::Length{music::Rational(1, 18)});
}

TEST_CASE("The best window is the cheapest of all windows", "[levers]")
{
    auto const tune = fourBars();
    auto const clock = clockOf(tune, level(1, 0));
    std::mt19937 random(5); // fixed, so that a failure can be seen again
    std::uniform_int_distribution<int> eighth(0, 31);
    music::Rational const half(1, 2);
    music::Length const turning{music::Rational(1, 16)};
    int found = 0;
    for (int round = 0; round < 300; ++round) {
        int const from = eighth(random);
        int const to = std::min(31, from + eighth(random));
        Gap const gap{20,
                      moment(from, 8),
                      moment(std::min(from + 2, to), 8),
                      moment(to, 8),
                      tune::PlayedBarIndex(to / 8),
                      round % 2 == 0,
                      round % 3 == 0};
        auto const windows = clock.windows(gap);
        auto const best = clock.bestWindow(gap);
        REQUIRE(bool(best) == !windows.empty());
        // A lever turns wherever its string is silent for a quarter of the free beat when half
        // the old note is given up.
        music::Moment const halfway = gap.plucked + (gap.ends - gap.plucked) * half;
        CHECK(bool(best) == (halfway + turning <= gap.wanted));
        if (!best) continue;
        ++found;
        for (Window const& w : windows) {
            CHECK(w.cost >= best->cost);
            CHECK(w.freeTo <= gap.wanted);
            CHECK(w.freeFrom < w.at);
            CHECK(w.at < w.freeTo);
            CHECK(w.at >= halfway);
            CHECK(w.freeTo - w.freeFrom == music::Length{music::Rational(1, 4)});
        }
        CHECK(std::find(windows.begin(), windows.end(), *best) != windows.end());
    }
    CHECK(found > 100);
}

TEST_CASE("A lever leaves its set-up late and comes back soon", "[levers]")
{
    // So that the left hand has the key's own strings for as long as it can.
    auto const clock = clockOf(fourBars(), level(1));
    Gap gap{20, moment(0), moment(1, 4), moment(3), 3, true, false};
    CHECK(clock.bestWindow(gap)->freeTo > moment(5, 2));
    gap.returning = true;
    CHECK(clock.bestWindow(gap)->freeTo < moment(3, 2));
}

TEST_CASE("The old note is counted out before the lever is turned, where there is time",
          "[levers]")
{
    auto const clock = clockOf(fourBars(), level(1));
    // A minim, then a crotchet between: the flip waits for the minim's end.
    Gap const roomy{20, moment(2), moment(5, 2), moment(11, 4), 2, true, false};
    CHECK(clock.bestWindow(roomy)->at >= moment(5, 2));
    // Held to the new note: its second half is given up.
    Gap const held{20, moment(2), moment(5, 2), moment(5, 2), 2, true, false};
    auto const window = clock.bestWindow(held);
    REQUIRE(window);
    CHECK(window->at >= moment(9, 4));
}

TEST_CASE("The right hand is offered only while the tune plucks nothing", "[levers]")
{
    auto const clock = clockOf(fourBars(), level(2));
    auto const rightIn = [&clock](Gap const& gap) {
        auto const windows = clock.windows(gap);
        return std::any_of(windows.begin(), windows.end(),
                           [](Window const& w) { return w.hand == harp::Side::Right; });
    };
    CHECK(rightIn({20, moment(1), moment(2), moment(2), 2, true, false})); // a held semibreve
    CHECK_FALSE(rightIn({20, moment(0), moment(1, 4), moment(1), 1, true, false})); // crotchets
}

TEST_CASE("A level without flips is offered no window", "[levers]")
{
    harp::Level beginner = level(1);
    beginner.flips = false;
    CHECK(clockOf(fourBars(), beginner)
              .windows({20, moment(0), moment(1, 4), moment(3), 3, true, false})
              .empty());
}
