#include "core/harmony/chordtable.h"
#include "core/harmony/features.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;
using music::Length;
using music::Rational;

TEST_CASE("A chord lasts half a bar, a bar of three beats, or a third of 9 8", "[units]")
{
    // Common practice, no source: where lead sheets of folk tunes change chords.
    auto const [beats, unit, length] = GENERATE(table<int, int, Rational>({
        {4, 4, Rational(1, 2)},
        {2, 2, Rational(1, 2)},
        {2, 4, Rational(1, 4)},
        {6, 8, Rational(3, 8)},
        {12, 8, Rational(3, 4)},
        {3, 4, Rational(3, 4)},
        {3, 8, Rational(3, 8)},
        {9, 8, Rational(3, 8)},
        {3, 2, Rational(1, 2)},
        {5, 4, Rational(5, 4)},
    }));
    CAPTURE(beats, unit);
    CHECK(unitLength({beats, unit}).wholes == length);
}

TEST_CASE("Strains are counted from their start and their end, without pick-ups", "[units]")
{
    tune::Tune const tune = scenes::jig();
    auto const units = unitsOf(tune);
    REQUIRE(units.size() == 32); // two strains of eight bars, two units each
    CHECK(units[0].first);
    CHECK(units[0].bar == 1); // bar 0 is the pick-up
    CHECK(units[0].barsToEnd == 7);
    CHECK(units[15].barsToEnd == 0);
    CHECK_FALSE(units[15].opensBar);
    CHECK(units[15].length.wholes == Rational(1, 4)); // the bar is short by its pick-up
    CHECK(units[16].barOfStrain == 0);
    CHECK(units[16].barOfPhrase == 0);
    CHECK(units[22].barOfPhrase == 3);
}

TEST_CASE("A second ending stands in the place of the first", "[units]")
{
    tune::Tune const tune = scenes::tuneOf(
        "X:1\nM:2/4\nL:1/8\nK:D\n|:DEFG|ABcd|1 dcBA|d4:|2 dcAF|D4||\n|:dcdc|B2A2:|\n");
    auto const units = unitsOf(tune);
    REQUIRE(units.size() == 16);
    CHECK(units[4].barOfStrain == 2);
    CHECK(units[8].barOfStrain == 2);
    CHECK(units[8].barsToEnd == 1);
    CHECK(units[12].barOfStrain == 0);
}

TEST_CASE("What is heard does not change when a tune is transposed", "[features]")
{
    tune::Tune const tune = scenes::jig();
    tune::Tune const higher = transposed(tune, {1, 2});
    auto const units = unitsOf(tune);
    auto const a = heard(tune, units, framesOf(tune));
    auto const b = heard(higher, unitsOf(higher), framesOf(higher));
    CHECK(a == b);
    for (Heard const& features : a)
        for (Feature const& feature : features) CHECK(feature.index < featureCount);
}

TEST_CASE("Degrees are chords of their key, spelt as it is spelt", "[degrees]")
{
    // Common practice: the diatonic chords of D and of B flat.
    CHECK(plain(chordOn(*degreeFrom("7"), 2)) == "A");
    CHECK(plain(chordOn(*degreeFrom("9m"), 2)) == "Bm");
    CHECK(plain(chordOn(*degreeFrom("4m"), 2)) == "F#m");
    CHECK(plain(chordOn(*degreeFrom("10"), 2)) == "C");
    CHECK(plain(chordOn(*degreeFrom("5"), -2)) == "Eb");
    CHECK(plain(chordOn(*degreeFrom("11o"), 0)) == "Bdim");
    CHECK(plain(chordOn(*degreeFrom("8"), 0)) == "Ab");
    for (int s = -7; s <= 7; ++s)
        for (Degree degree : scenes::learned().chords.degrees) {
            int const tonic = pitchClass(keyOf(s, music::Mode::Ionian).tonic);
            CHECK(degreeOf(chordOn(degree, s), tonic) == degree);
            CHECK(degreeFrom(text(degree)) == degree);
        }
    CHECK_FALSE(degreeFrom("12"));
    CHECK_FALSE(degreeFrom("3x"));
}
