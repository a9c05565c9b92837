#include "core/perform/schedule.h"
#include "tests/perform/pieces.h"

#include <catch2/catch.hpp>

#include <cmath>

#include <algorithm>
#include <iterator>
#include <tuple>

using namespace perform;
using namespace pieces;
using harp::Side;
using music::Letter;

namespace {

std::vector<Event> plucks(Schedule const& schedule, Side hand)
{
    std::vector<Event> found;
    std::ranges::copy_if(schedule.events, std::back_inserter(found), [hand](Event const& e) {
        return e.kind == Event::Kind::Pluck && e.hand == hand;
    });
    return found;
}

std::vector<Event> damps(Schedule const& schedule, harp::StringIndex string)
{
    std::vector<Event> found;
    std::ranges::copy_if(schedule.events, std::back_inserter(found), [string](Event const& e) {
        return e.kind == Event::Kind::Damp && e.string == string;
    });
    return found;
}

template<typename Timed>
std::vector<Seconds> times(std::vector<Timed> const& all)
{
    std::vector<Seconds> at;
    for (Timed const& one : all) at.push_back(one.at);
    return at;
}

} // namespace

TEST_CASE("A crotchet at sixty lasts a second and onsets are exact", "[tempo]")
{
    auto const schedule = scheduled(twoBars(), {});
    CHECK(times(plucks(schedule, Side::Right)) == std::vector<Seconds>{0, 1, 2, 3, 4, 5, 6, 7});
    CHECK(schedule.begins == 0);
    CHECK(schedule.counted == 8);
    CHECK(times(schedule.bars) == std::vector<Seconds>{0, 4});
}

TEST_CASE("A reel at minim 112 has 7.47 quavers a second and a jig at dotted crotchet 120 has "
          "six",
          "[tempo]")
{
    // Trade checks 69 and 70 (arithmetic).
    CHECK(1 / secondsOf(wholes(1, 8), {wholes(1, 2), 112}) == Approx(7.47).margin(0.005));
    CHECK(1 / secondsOf(wholes(1, 8), {wholes(3, 8), 120}) == Approx(6));
    CHECK(secondsOf(wholes(1, 4), {wholes(1, 4), 60}, 0.5) == 2);
}

TEST_CASE("Tempo runs from a quarter to one and a half of the written one", "[tempo]")
{
    auto const [wanted, lasts] = GENERATE(table<double, double>(
        {{1.0, 8}, {0.25, 32}, {1.5, 16.0 / 3}, {0.1, 32}, {9, 16.0 / 3}}));
    Hearing hearing;
    hearing.tempoScale = wanted;
    CHECK(scheduled(twoBars(), hearing).counted == Approx(lasts));
}

TEST_CASE("Onsets do not drift over two hundred bars of triplets at an odd tempo", "[tempo]")
{
    tune::Tune tune;
    for (int i = 0; i < 200; ++i)
        tune.bars.push_back(barOf({2, 4}, wholes(1, 12), {c5, d5, e5, c5, d5, e5}));
    auto const schedule = scheduled(arranged(tune, {wholes(1, 4), 97}, {}), {});
    CHECK(schedule.bars.back().at == Approx(398 * 60 / 97.0).epsilon(1e-14)); // 398 beats
    auto const right = plucks(schedule, Side::Right);
    REQUIRE(right.size() == 1200);
    CHECK(right[1194].at == schedule.bars.back().at);
}

TEST_CASE("A muted hand is not heard and the other one is unchanged", "[hands]")
{
    Hearing right;
    right.left = false;
    Hearing left;
    left.right = false;
    auto const both = scheduled(twoBars(), {});
    CHECK(plucks(scheduled(twoBars(), right), Side::Left).empty());
    CHECK(plucks(scheduled(twoBars(), right), Side::Right) == plucks(both, Side::Right));
    CHECK(plucks(scheduled(twoBars(), left), Side::Right).empty());
    CHECK(plucks(scheduled(twoBars(), left), Side::Left) == plucks(both, Side::Left));
}

TEST_CASE("A roll goes from the low string up, beginning on the beat", "[roll]")
{
    auto const left = plucks(scheduled(twoBars(), {}), Side::Left);
    REQUIRE(left.size() == 5);
    CHECK(left[0].string == stringOf(Letter::C, 3));
    CHECK(left[0].at == 0);
    CHECK(left[1].at == Approx(0.045));
    CHECK(left[2].at == Approx(0.090));
    CHECK(left[2].midi == 60);
    CHECK(left[2].position == 0);
    CHECK(left[3].position == 1);
}

TEST_CASE("A whole roll stays within 0.35 s and a third of a beat", "[roll]")
{
    // Working values of science 9. A beat at 40 lasts 1.5 s, at 120 half a second.
    Hearing wide;
    wide.rollGap = 1;
    auto const lastOfRoll = [&](double beatsPerMinute) {
        auto const piece = twoBars({wholes(1, 4), beatsPerMinute});
        return plucks(scheduled(piece, wide), Side::Left)[2].at;
    };
    CHECK(lastOfRoll(40) == Approx(0.35));
    CHECK(lastOfRoll(120) == Approx(0.5 / 3));
}

TEST_CASE("In an air the last note of a roll is on the beat, and the first before it", "[roll]")
{
    auto air = twoBars();
    air.tune.rhythm = "air";
    auto const schedule = scheduled(air, {});
    auto const left = plucks(schedule, Side::Left);
    CHECK(schedule.begins == Approx(0.09)); // the roll has its room before the first beat
    CHECK(left[0].at == Approx(0));
    CHECK(left[1].at == Approx(0.045));
    CHECK(left[2].at == Approx(schedule.begins));
    CHECK(plucks(schedule, Side::Right)[0].at == Approx(schedule.begins));
    CHECK(schedule.counted - schedule.begins == Approx(8));
    Hearing counted;
    counted.countIn = true; // the roll falls into it
    auto const after = scheduled(air, counted);
    CHECK(after.begins == Approx(4));
    CHECK(plucks(after, Side::Left)[0].at == Approx(4 - 0.09));
    Hearing first;
    first.rollOn = RollOn::First;
    CHECK(plucks(scheduled(air, first), Side::Left)[0].at == 0);
}

TEST_CASE("The balance makes one hand softer and leaves the other", "[hands]")
{
    auto const even = scheduled(twoBars(), {});
    Hearing hearing;
    hearing.balance = 0.5;
    auto const tuneAbove = scheduled(twoBars(), hearing);
    CHECK(plucks(tuneAbove, Side::Right) == plucks(even, Side::Right));
    CHECK(plucks(tuneAbove, Side::Left)[0].velocity ==
          std::lround(plucks(even, Side::Left)[0].velocity / 2.0));
    hearing.balance = -1;
    CHECK(plucks(scheduled(twoBars(), hearing), Side::Right)[0].velocity == 1);
    CHECK(plucks(scheduled(twoBars(), hearing), Side::Left) == plucks(even, Side::Left));
}

TEST_CASE("What every string would sound is said, and again where a lever flips", "[levers]")
{
    auto arrangement = twoBars();
    auto const plain = scheduled(arrangement, {});
    CHECK(plain.tuned.size() == static_cast<std::size_t>(arrangement.harp.count()));
    CHECK(plain.crotchet == 1);
    harp::Flip flip;
    flip.at = {Rational(7, 8)};
    flip.string = stringOf(Letter::C, 5);
    flip.to = harp::Lever::Up;
    arrangement.levers.flips = {flip};
    auto const flipped = scheduled(arrangement, {});
    REQUIRE(flipped.tuned.size() == plain.tuned.size() + 1);
    CHECK(flipped.tuned.back().at == Approx(3.5));
    CHECK(flipped.tuned.back().string == flip.string);
    CHECK(flipped.tuned.back().midi == 73);
}

TEST_CASE("A string rings until it is plucked again, and stops just then", "[ring]")
{
    auto const schedule = scheduled(twoBars(), {});
    CHECK(times(damps(schedule, stringOf(Letter::C, 5))) == std::vector<Seconds>{3});
    CHECK(times(damps(schedule, stringOf(Letter::D, 5))) == std::vector<Seconds>{4, 7});
    CHECK(times(damps(schedule, stringOf(Letter::C, 3))) == std::vector<Seconds>{4});
    CHECK(damps(schedule, stringOf(Letter::C, 4)).empty());
}

TEST_CASE("A lever that turns stops its ringing string", "[ring]")
{
    auto arrangement = twoBars();
    harp::Flip flip;
    flip.at = {Rational(7, 8)};
    flip.string = stringOf(Letter::C, 5);
    flip.to = harp::Lever::Up;
    arrangement.levers.flips = {flip};
    auto const schedule = scheduled(arrangement, {});
    CHECK(times(damps(schedule, flip.string)) == std::vector<Seconds>{3, 3.5});
}

TEST_CASE("At one time damps come before plucks and low strings first", "[ring]")
{
    auto const schedule = scheduled(twoBars(), {});
    CHECK(std::ranges::is_sorted(schedule.events, {}, [](Event const& e) {
        return std::tuple(e.at, e.kind == Event::Kind::Pluck, e.string);
    }));
}

TEST_CASE("The end rings until the last string has faded, six seconds at most", "[ring]")
{
    // Working ring of a plain string, T60 = 2.2 / (6e-4 f + 0.223) [trade-2.2], of the last D5;
    // the open string is tuned in E flat and sounds D5 too.
    Hearing tuneAlone;
    tuneAlone.left = false;
    auto const schedule = scheduled(twoBars(), tuneAlone);
    CHECK(schedule.ringing == Approx(7 + 2.2 / (6e-4 * 587.33 + 0.223)).margin(0.01));
    auto const both = scheduled(twoBars(), {});
    CHECK(both.ringing > schedule.ringing);
    CHECK(both.ringing <= both.counted + 6);
}

TEST_CASE("A region has its own beginning, and only its own notes", "[region]")
{
    Hearing second;
    second.firstPlayedBar = 1;
    auto const schedule = scheduled(twoBars(), second);
    CHECK(times(plucks(schedule, Side::Right)) == std::vector<Seconds>{0, 1, 2, 3});
    CHECK(times(plucks(schedule, Side::Left)) == std::vector<Seconds>{0, 2});
    CHECK(schedule.counted == 4);
    REQUIRE(schedule.bars.size() == 1);
    CHECK(schedule.bars[0].playedBar == 1);
    Hearing first;
    first.lastPlayedBar = tune::PlayedBarIndex(0);
    CHECK(plucks(scheduled(twoBars(), first), Side::Right).size() == 4);
}

TEST_CASE("A region beyond the tune is brought back into it", "[region]")
{
    Hearing beyond;
    beyond.firstPlayedBar = 7;
    beyond.lastPlayedBar = tune::PlayedBarIndex(9);
    auto const schedule = scheduled(twoBars(), beyond);
    REQUIRE(schedule.bars.size() == 1);
    CHECK(schedule.bars[0].playedBar == 1);
    CHECK(scheduled(arranged({}, {}, {}), {}).events.empty());
}

TEST_CASE("Repeats are heard", "[region]")
{
    auto tune = twoBars().tune;
    tune.bars[1].repeatCloses = true;
    auto const schedule = scheduled(arranged(tune, {wholes(1, 4), 60}, {{}, {}}), {});
    CHECK(schedule.counted == 16);
    CHECK(plucks(schedule, Side::Right).size() == 16);
}

TEST_CASE("The tune is plucked above the left hand and first beats above the others",
          "[loudness]")
{
    auto const schedule = scheduled(twoBars(), {});
    auto const right = plucks(schedule, Side::Right);
    auto const left = plucks(schedule, Side::Left);
    CHECK(right[0].velocity > left[0].velocity);
    CHECK(right[0].velocity > right[2].velocity);
    CHECK(right[2].velocity > right[1].velocity); // the half bar
}

TEST_CASE("Before a bar of four seconds one bar is counted in, its first beat accented",
          "[count-in]")
{
    Hearing counted;
    counted.countIn = true;
    auto const schedule = scheduled(twoBars(), counted);
    CHECK(times(schedule.clicks) == std::vector<Seconds>{0, 1, 2, 3});
    CHECK(schedule.clicks[0].accented);
    CHECK_FALSE(schedule.clicks[1].accented);
    CHECK(schedule.begins == 4);
    CHECK(schedule.counted == 12);
    CHECK(plucks(schedule, Side::Right)[0].at == 4);
}

TEST_CASE("In compound time the dotted beat is counted, two bars where bars are short, and a "
          "pick-up takes the place of its beats",
          "[count-in]")
{
    // Science 9. A jig at dotted crotchet 120: a bar lasts one second.
    auto pickUp = barOf({6, 8}, wholes(1, 8), {d5});
    pickUp.upbeat = wholes(5, 8);
    tune::Tune tune;
    tune.bars = {pickUp, barOf({6, 8}, wholes(1, 8), {c5, d5, e5, c5, d5, e5})};
    Hearing counted;
    counted.countIn = true;
    auto const schedule = scheduled(arranged(tune, {wholes(3, 8), 120}, {{}, {}}), counted);
    CHECK(times(schedule.clicks) == std::vector<Seconds>{0, 0.5, 1, 1.5});
    CHECK(schedule.clicks[2].accented);
    CHECK(schedule.begins == Approx(2 - 1.0 / 6));
    CHECK(schedule.bars[1].at == 2); // the first full bar
}

TEST_CASE("Grace notes are plucked just before their note, which stays in time", "[grace]")
{
    auto arrangement = twoBars();
    arrangement.tune.bars[0].notes[1].graces = {e5, c5};
    auto const right = plucks(scheduled(arrangement, {}), Side::Right);
    REQUIRE(right.size() == 10);
    CHECK(right[1].at == Approx(1 - 0.16));
    CHECK(right[1].midi == 76);
    CHECK(right[2].at == Approx(1 - 0.08));
    CHECK(right[3].at == 1);
    CHECK(right[1].velocity < right[3].velocity);
}

TEST_CASE("Grace notes before the first beat move it back, or fall into the count-in",
          "[grace]")
{
    auto arrangement = twoBars();
    arrangement.tune.bars[0].notes[0].graces = {d5};
    auto const plain = scheduled(arrangement, {});
    CHECK(plain.begins == Approx(0.08));
    CHECK(plucks(plain, Side::Right)[0].at == 0);
    CHECK(plucks(plain, Side::Left)[0].at == Approx(0.08));
    Hearing counted;
    counted.countIn = true;
    auto const after = scheduled(arrangement, counted);
    CHECK(after.begins == 4);
    CHECK(plucks(after, Side::Right)[0].at == Approx(3.92));
}

TEST_CASE("A grace note that no string sounds as the levers stand is left out", "[grace]")
{
    auto arrangement = twoBars();
    arrangement.tune.bars[0].notes[1].graces = {{Letter::F, 1, 5}};
    CHECK(plucks(scheduled(arrangement, {}), Side::Right).size() == 8);
}

TEST_CASE("Quick notes give at most half their time to grace notes", "[grace]")
{
    tune::Tune tune;
    tune.bars = {barOf({4, 4}, wholes(1, 16), {c5, d5, e5, g5})};
    tune.bars[0].notes[1].graces = {e5, g5};
    auto const schedule = scheduled(arranged(tune, {wholes(1, 4), 120}, {{}}), {});
    auto const right = plucks(schedule, Side::Right);
    REQUIRE(right.size() == 6);
    CHECK(right[1].at == Approx(0.125 / 2)); // a semiquaver lasts 0.125 s
}
