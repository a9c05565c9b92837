// Practising: rounds, steps of tempo, a bar before, clicks, swing and lilt.
#include "core/perform/practice.h"
#include "tests/perform/pieces.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace perform;
using namespace pieces;

namespace {

std::vector<Seconds> plucksOfTune(Schedule const& schedule)
{
    std::vector<Seconds> at;
    for (Event const& event : schedule.events)
        if (event.kind == Event::Kind::Pluck && event.hand == harp::Side::Right)
            at.push_back(event.at);
    return at;
}

// One bar at sixty crotchets a minute, the notes as long as the fractions say.
arrange::Arrangement oneBar(music::Meter meter, std::vector<Length> const& lengths,
                            tune::Tempo tempo = {wholes(1, 4), 60})
{
    tune::Tune tune;
    tune::Bar bar;
    bar.meter = meter;
    for (Length const length : lengths) {
        tune::Note note;
        note.at = bar.length;
        note.length = length;
        note.pitches = {bar.notes.size() % 2 == 0 ? c5 : d5};
        bar.notes.push_back(note);
        bar.length = bar.length + length;
    }
    tune.bars = {bar};
    return arranged(tune, tempo, {});
}

std::vector<Seconds> lilted(arrange::Arrangement const& arrangement, LiltWay way, double amount)
{
    Hearing hearing;
    hearing.lilt = {way, amount};
    return plucksOfTune(scheduled(arrangement, hearing));
}

constexpr LiltWay swing{LiltWay::Of::Pairs, 2.0 / 3, 60};
constexpr LiltWay jigs{LiltWay::Of::Threes, 0.5, 0};

void checkAt(std::vector<Seconds> const& at, std::vector<Seconds> const& expected)
{
    REQUIRE(at.size() == expected.size());
    for (std::size_t i = 0; i < at.size(); ++i)
        CHECK(at[i] == Approx(expected[i]).margin(1e-12));
}

} // namespace

TEST_CASE("The bar before is heard first, and a loop goes on from the passage", "[practice]")
{
    Hearing hearing;
    hearing.firstPlayedBar = 1;
    hearing.lastPlayedBar = hearing.firstPlayedBar;
    hearing.barBefore = true;
    auto const schedule = scheduled(twoBars(), hearing);
    CHECK(plucksOfTune(schedule).size() == 8);
    CHECK(schedule.begins == 4); // four crotchets at sixty
    CHECK(schedule.counted == 8);
    hearing.firstPlayedBar = 0; // nothing is before the first bar
    CHECK(scheduled(twoBars(), hearing).begins == 0);
}

TEST_CASE("Count-in and bar before are heard in the first round alone", "[practice]")
{
    Hearing hearing;
    hearing.firstPlayedBar = 1;
    hearing.lastPlayedBar = hearing.firstPlayedBar;
    hearing.barBefore = hearing.countIn = true;
    auto const twice = course(twoBars(), hearing, {{1, 1}, false, false});
    REQUIRE(twice.rounds.size() == 2);
    CHECK(twice.round(0).begins == 8);
    CHECK(twice.round(0).clicks.size() == 4);
    CHECK(twice.round(1).begins == 0);
    CHECK(twice.round(1).clicks.empty());
    CHECK(lengthOf(twice) == Approx(twice.round(0).counted + twice.round(1).ringing));
}

TEST_CASE("Steps go from the first tempo to the last, each so many times", "[practice]")
{
    auto const tempos = temposOf({0.6, 0.8, 0.1, 2});
    REQUIRE(tempos.size() == 5);
    std::vector<double> const expected{0.6, 0.6, 0.7, 0.7, 0.8};
    for (std::size_t i = 0; i < 5; ++i) CHECK(tempos[i] == Approx(expected[i]));
    // The last is reached though the step would go beyond it.
    CHECK(temposOf({0.6, 1.0, 0.3, 1}) == std::vector<double>{0.6, 0.6 + 0.3, 1.0});
    CHECK(temposOf({1.0, 0.8, 0.1, 1}) == std::vector<double>{1.0}); // nothing to step up to
}

TEST_CASE("A tempo changed by hand is where the steps go on", "[practice]")
{
    auto const tempos = temposOf({0.6, 1.0, 0.1, 1}, 2, 0.8); // in the third round
    std::vector<double> const expected{0.8, 0.8, 0.8, 0.9, 1.0};
    REQUIRE(tempos.size() == expected.size());
    for (std::size_t i = 0; i < tempos.size(); ++i) CHECK(tempos[i] == Approx(expected[i]));
}

TEST_CASE("Where a round gets faster its beat follows the last beat of the one before",
          "[practice]")
{
    auto const rounds = course(twoBars(), {}, {{0.5, 1}, false, false});
    // Eight crotchets at thirty, then the first of the next round.
    CHECK(placeAfter(rounds, {}, 15.9) == Place{0, 15.9});
    Place const next = placeAfter(rounds, {}, 16.25);
    CHECK(next.round == 1);
    CHECK(next.at == Approx(0.25));
}

TEST_CASE("A change of tempo keeps the place of the music to a millionth of a beat",
          "[practice]")
{
    auto const [from, to] = GENERATE(table<double, double>({{1, 0.6}, {0.6, 1}, {0.25, 1.5}}));
    Hearing hearing;
    hearing.countIn = true;
    hearing.tempoScale = from;
    auto const before = scheduled(twoBars(), hearing);
    hearing.tempoScale = to;
    auto const after = scheduled(twoBars(), hearing);
    auto const beat = [](Schedule const& schedule, Seconds at) { // from the first counted beat
        return 8 * (at - schedule.begins) / (schedule.counted - schedule.begins);
    };
    for (double part = 0.05; part < 1; part += 0.05) {
        Seconds const at = before.begins + part * (before.counted - before.begins);
        CHECK(beat(after, samePlace(before, at, after)) ==
              Approx(beat(before, at)).margin(1e-6));
    }
}

TEST_CASE("Clicks stress the bar, and the half bar where a meter has one", "[practice]")
{
    auto const [meter, stresses] = GENERATE(table<music::Meter, std::string>(
        {{{4, 4}, "Bbhb"}, {{3, 4}, "Bbb"}, {{6, 8}, "Bh"}, {{9, 8}, "Bbb"}, {{2, 2}, "Bh"}}));
    auto const length = music::barLength(meter);
    auto const piece = oneBar(meter, {length});
    std::string told;
    for (Click const& click : withClicks(scheduled(piece, {}), piece, {}).clicks)
        told += click.accented ? 'B' : click.halfBar ? 'h' : 'b';
    CHECK(told == stresses);
}

TEST_CASE("Swing makes the first of two quavers the longer, up to two against one", "[lilt]")
{
    auto const piece = oneBar({4, 4}, std::vector<Length>(8, wholes(1, 8)));
    checkAt(lilted(piece, swing, 0), {0, .5, 1, 1.5, 2, 2.5, 3, 3.5});
    checkAt(lilted(piece, swing, 0.6), {0, .6, 1, 1.6, 2, 2.6, 3, 3.6});
    double const two = 2.0 / 3;
    checkAt(lilted(piece, swing, 1), {0, two, 1, 1 + two, 2, 2 + two, 3, 3 + two});
}

TEST_CASE("Swing leaves triplets and whole beats alone and softens dotted pairs", "[lilt]")
{
    Length const third = wholes(1, 12);
    auto const piece = oneBar({4, 4}, {third, third, third, wholes(1, 4), wholes(3, 16),
                                       wholes(1, 16), wholes(1, 8), wholes(1, 8)});
    double const t = 1.0 / 3;
    checkAt(lilted(piece, swing, 1), {0, t, 2 * t, 1, 2, 2 + 2 * t, 3, 3 + 2 * t});
    checkAt(lilted(piece, swing, 0), {0, t, 2 * t, 1, 2, 2.75, 3, 3.5});
}

TEST_CASE("The lilt of a jig is the second of three brought later, the third kept", "[lilt]")
{
    // At a dotted crotchet a second; crotchet and quaver are played as written.
    Length const quaver = wholes(1, 8);
    auto const piece =
        oneBar({6, 8}, {quaver, quaver, quaver, wholes(1, 4), quaver}, {wholes(3, 8), 60});
    double const t = 1.0 / 3;
    checkAt(lilted(piece, jigs, 0.5), {0, t + 0.5 * (0.5 - t), 2 * t, 1, 1 + 2 * t});
    checkAt(lilted(piece, jigs, 1), {0, 0.5, 2 * t, 1, 1 + 2 * t});
}

TEST_CASE("Uneven beats move neither bars nor the end, so that a loop keeps its length",
          "[lilt]")
{
    auto const piece = oneBar({4, 4}, std::vector<Length>(8, wholes(1, 8)));
    Hearing hearing;
    hearing.lilt = {swing, 0.6};
    auto const schedule = scheduled(piece, hearing);
    CHECK(schedule.begins == 0);
    CHECK(schedule.counted == 4);
}

TEST_CASE("Beats of a final slowing last as those of a runner who comes to a stop", "[slowing]")
{
    // Friberg and Sundberg 1999 (from memory): the tempo is (1 + (w^3 - 1) x)^(1/3). Lengths of
    // the beats, that in time as 1, worked out by hand from its integral.
    auto const [to, beats, lengths] =
        GENERATE(table<double, int, std::vector<double>>({{0.75, 2, {1.06, 1.21}},
                                                          {0.6, 4, {1.04, 1.12, 1.26, 1.48}},
                                                          {0.5, 4, {1.04, 1.14, 1.31, 1.65}}}));
    auto const piece = oneBar({6, 4}, std::vector<Length>(6, wholes(1, 4)), {wholes(1, 4), 60});
    Hearing hearing;
    hearing.slowing = {to, beats};
    auto const at = plucksOfTune(scheduled(piece, hearing));
    REQUIRE(at.size() == 6);
    for (int i = 0; i < beats; ++i) {
        auto const note = static_cast<std::size_t>(5 - beats + i);
        CHECK(at[note + 1] - at[note] ==
              Approx(lengths[static_cast<std::size_t>(i)]).margin(0.006));
    }
    for (int i = 0; i < 5 - beats; ++i)
        CHECK(at[static_cast<std::size_t>(i) + 1] - at[static_cast<std::size_t>(i)] ==
              Approx(1));
}

TEST_CASE("The last note of a slowed end lasts at the tempo that is left", "[slowing]")
{
    auto const piece = oneBar({4, 4}, {wholes(1, 4), wholes(1, 4), wholes(1, 2)});
    Hearing hearing;
    hearing.slowing = {0.5, 2};
    auto const schedule = scheduled(piece, hearing);
    CHECK(schedule.counted - plucksOfTune(schedule).back() == Approx(4));
    hearing.slowing = partOf({0.5, 2}, 0);
    CHECK(scheduled(piece, hearing).counted == Approx(4));
    CHECK(partOf({0.5, 2}, 0.5).to == Approx(0.75));
}

TEST_CASE("Clicks, bar lines and levers slow with the notes", "[slowing]")
{
    Hearing hearing;
    hearing.slowing = {0.6, 4};
    hearing.lastPlayedBar.reset();
    auto const piece = oneBar({4, 4}, std::vector<Length>(4, wholes(1, 4)));
    auto const slowed = withClicks(scheduled(piece, hearing), piece, hearing);
    auto const at = plucksOfTune(slowed);
    REQUIRE(slowed.clicks.size() == 4);
    for (std::size_t i = 0; i < at.size(); ++i) CHECK(slowed.clicks[i].at == Approx(at[i]));
}

TEST_CASE("Only the end of the tune slows: no passage before it, and of rounds the last",
          "[slowing]")
{
    auto const piece = twoBars();
    Hearing hearing;
    hearing.slowing = {0.5, 2};
    double const counted = scheduled(piece, {}).counted;
    CHECK(scheduled(piece, hearing).counted > counted + 0.5);
    hearing.lastPlayedBar = tune::PlayedBarIndex(0);
    Hearing plain;
    plain.lastPlayedBar = tune::PlayedBarIndex(0);
    CHECK(scheduled(piece, hearing).counted == Approx(scheduled(piece, plain).counted));
    hearing.lastPlayedBar.reset();

    Course const twice = course(piece, hearing, {{1, 1}, false, false});
    CHECK(twice.round(0).counted == Approx(counted));
    CHECK(twice.round(1).counted > counted + 0.5);
    Course const endless = course(piece, hearing, {{1}, true, false});
    CHECK(endless.round(0).counted == Approx(counted));
}
