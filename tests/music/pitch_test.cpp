#include "core/music/meter.h"
#include "core/music/pitch.h"
#include "core/music/time.h"

#include <catch2/catch.hpp>

using namespace music;

TEST_CASE("Middle C is MIDI key 60 and A4 is 440 Hz", "[pitch]")
{
    // ISO 16:1975 for A4 = 440 Hz; MIDI 1.0 for the key numbers.
    CHECK(midi({Letter::C, 0, 4}) == 60);
    CHECK(midi({Letter::A, 0, 4}) == 69);
    CHECK(frequencyHz(69) == Approx(440.0));
    CHECK(frequencyHz(60) == Approx(261.63).margin(0.005));
}

TEST_CASE("C sharp and D flat sound alike but lie on different strings", "[pitch]")
{
    Pitch const cSharp{Letter::C, 1, 4};
    Pitch const dFlat{Letter::D, -1, 4};
    CHECK(midi(cSharp) == midi(dFlat));
    CHECK(diatonicStep(cSharp) != diatonicStep(dFlat));
}

TEST_CASE("Diatonic steps and natural pitches are each other's inverse", "[pitch]")
{
    for (int step = -10; step < 80; ++step) CHECK(diatonicStep(naturalAt(step)) == step);
}

TEST_CASE("Transposing keeps the spelling of the interval", "[pitch]")
{
    Interval const fifthUp{4, 7};
    CHECK(transposed(Pitch{Letter::B, 0, 3}, fifthUp) == Pitch{Letter::F, 1, 4});
    CHECK(transposed(Pitch{Letter::E, -1, 4}, fifthUp) == Pitch{Letter::B, -1, 4});
    CHECK(between({Letter::C, 0, 4}, {Letter::E, 0, 5}) == Interval{9, 16}); // a tenth
}

TEST_CASE("Note names are read and written with sharps and flats", "[pitch]")
{
    CHECK(pitchNameFrom("F#") == PitchName{Letter::F, 1});
    CHECK(pitchNameFrom("bb") == PitchName{Letter::B, -1});
    CHECK(!pitchNameFrom("H"));
    CHECK(pitchFrom("Bb2") == Pitch{Letter::B, -1, 2});
    CHECK(!pitchFrom("B"));
    CHECK(shown(Pitch{Letter::F, 1, 3}) == "F♯3");
}

template<typename A, typename B>
concept Addable = requires(A a, B b)
{
    a + b;
};
static_assert(Addable<Moment, Length>);
static_assert(!Addable<Moment, Moment>, "two places in a tune have no sum");

TEST_CASE("The beats of simple and compound meters", "[meter]")
{
    // Common practice, no source: 6/8 has two dotted beats, 3/4 three plain ones.
    CHECK(beatLength({6, 8}).wholes == Rational(3, 8));
    CHECK(beatsInBar({6, 8}) == 2);
    CHECK(beatsInBar({3, 4}) == 3);
    CHECK(beatStrength({6, 8}, {Rational(0)}) == 3);
    CHECK(beatStrength({6, 8}, {Rational(3, 8)}) == 2);
    CHECK(beatStrength({6, 8}, {Rational(1, 8)}) == 0);
    CHECK(beatStrength({4, 4}, {Rational(1, 2)}) == 2);
    CHECK(beatStrength({4, 4}, {Rational(1, 4)}) == 1);
}
