#include "core/tune/tune.h"
#include "tests/tune/bars.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Rational;

TEST_CASE("A jig is learnt at 60 dotted crotchets a minute and a waltz at 72 crotchets",
          "[tempo]")
{
    // Common practice, no source: learning speeds of the harp, well below those of dancers.
    Tune jig;
    jig.rhythm = "Jig";
    jig.meter = {6, 8};
    CHECK(usualTempo(jig) == Tempo{{Rational(3, 8)}, 60});
    CHECK(quartersPerMinute(usualTempo(jig)) == Approx(90));
    Tune waltz;
    waltz.meter = {3, 4};
    CHECK(usualTempo(waltz) == Tempo{{Rational(1, 4)}, 72});
    // A harp setting goes faster the further the player is, and never as fast as dancers, who
    // take 112 to 127 beats of a jig (Breathnach 1963; dance bands' lists).
    for (int level = 1; level < 5; ++level) {
        CAPTURE(level);
        CHECK(usualTempo(jig, level).beatsPerMinute <= usualTempo(jig, level + 1).beatsPerMinute);
    }
    CHECK(usualTempo(jig, 5).beatsPerMinute == 84);
}

TEST_CASE("A slow air is slower than any dance of its meter", "[tempo]")
{
    Tune air;
    air.rhythm = "slow air";
    air.meter = {3, 4};
    Tune waltz = air;
    waltz.rhythm = "waltz";
    CHECK(quartersPerMinute(usualTempo(air)) < quartersPerMinute(usualTempo(waltz)));
}

TEST_CASE("A dance word whose beat fills the bar is counted by the beats of the meter", "[tempo]")
{
    Tune reel;
    reel.rhythm = "reel";
    reel.meter = {2, 4}; // one minim a bar is no beat to count
    CHECK(usualTempo(reel) == Tempo{{Rational(1, 4)}, 55});
}

TEST_CASE("The tempo of the file comes before any usual one", "[tempo]")
{
    Tune tune;
    tune.tempo = Tempo{{Rational(1, 4)}, 96};
    CHECK(tempoOf(tune) == Tempo{{Rational(1, 4)}, 96});
}

TEST_CASE("A pick-up is bar 0 and completes no bar", "[tune]")
{
    // Common practice, no source: an upbeat is not counted.
    Tune tune = bars::of({bars::bar(35, Rational(1, 4)), bars::bar(36), bars::bar(37)});
    markPickUps(tune.bars);
    numberBars(tune.bars);
    CHECK(tune.bars[0].upbeat == Length{Rational(3, 4)});
    CHECK(tune.bars[1].upbeat == Length{});
    CHECK(barName(tune, 0) == "the pick-up bar");
    CHECK(barName(tune, 1) == "bar 1");
    CHECK(barName(tune, 2) == "bar 2");
}

TEST_CASE("A pick-up of the second strain shares the number of the short bar it completes",
          "[tune]")
{
    Tune tune =
        bars::of({bars::bar(35, Rational(1, 4)), bars::bar(36), bars::bar(37, Rational(3, 4)),
                  bars::bar(38, Rational(1, 4)), bars::bar(39)});
    tune.bars[2].repeatCloses = true;
    markPickUps(tune.bars);
    numberBars(tune.bars);
    CHECK(tune.bars[2].upbeat == Length{});
    CHECK(tune.bars[3].upbeat == Length{Rational(3, 4)});
    CHECK(barName(tune, 2) == "bar 2");
    CHECK(barName(tune, 3) == "the pick-up after bar 2");
    CHECK(barName(tune, 4) == "bar 3");
}

TEST_CASE("A short second ending is no pick-up", "[tune]")
{
    Tune tune =
        bars::of({bars::bar(35), bars::bar(36), bars::bar(37, Rational(3, 4)), bars::bar(38)});
    tune.bars[1].endings = {1};
    tune.bars[1].repeatCloses = true;
    tune.bars[2].endings = {2};
    markPickUps(tune.bars);
    CHECK(tune.bars[2].upbeat == Length{});
}

TEST_CASE("A tune moved by an interval keeps its spelling, chords and key with it", "[tune]")
{
    Tune tune = bars::plain(1);
    tune.key = *music::keyFrom("G");
    tune.bars[0].key = tune.key;
    tune.bars[0].notes[0].graces = {*music::pitchFrom("D5")};
    tune.bars[0].chords = {{{}, *music::chordFrom("D7/F#"), "D7/F#", {}}};
    Tune const moved = transposed(tune, {-1, -2}); // G to F
    CHECK(moved.key == *music::keyFrom("F"));
    CHECK(moved.bars[0].key == *music::keyFrom("F"));
    CHECK(moved.bars[0].notes[0].pitches[0] == *music::pitchFrom("Bb4"));
    CHECK(moved.bars[0].notes[0].graces[0] == *music::pitchFrom("C5"));
    CHECK(plain(moved.bars[0].chords[0].chord) == "C7/E");
    CHECK(transposed(moved, {1, 2}) == tune);
}

TEST_CASE("Rests alone are no notes, annotations alone no chords", "[tune]")
{
    Tune tune = bars::plain(1);
    CHECK(hasNotes(tune));
    CHECK_FALSE(hasChords(tune));
    tune.bars[0].notes[0].pitches.clear();
    tune.bars[0].annotations = {{{}, "Fine"}};
    CHECK_FALSE(hasNotes(tune));
    CHECK_FALSE(hasChords(tune));
}

TEST_CASE("A tempo is told in the beat that the player counts", "[tempo]")
{
    // By hand: 99 crotchets are 66 dotted crotchets, 49.5 minims.
    CHECK(tune::tempoWords({music::Rational(3, 8)}, 99) == "66 dotted crotchets a minute");
    CHECK(tune::tempoWords({music::Rational(1, 2)}, 99) == "49 minims a minute");
    CHECK(tune::tempoWords({music::Rational(1, 4)}, 84) == "84 crotchets a minute");
}
