#include "core/music/key.h"

#include <catch2/catch.hpp>

using namespace music;

TEST_CASE("Signatures of major keys follow the circle of fifths", "[key]")
{
    // Common practice, no source: E flat has three flats, D two sharps.
    CHECK(signature(*keyFrom("Eb")) == -3);
    CHECK(signature(*keyFrom("D")) == 2);
    CHECK(signature(*keyFrom("C#")) == 7);
}

TEST_CASE("E dorian, A mixolydian and D major share the signature of two sharps", "[key]")
{
    // Trade check 73 (derived).
    CHECK(signature(*keyFrom("Edor")) == 2);
    CHECK(signature(*keyFrom("AMixolydian")) == 2);
    CHECK(signature(*keyFrom("D")) == 2);
}

TEST_CASE("A signature alters the letters in the order of sharps and flats", "[key]")
{
    CHECK(alterIn(2, Letter::F) == 1);
    CHECK(alterIn(2, Letter::C) == 1);
    CHECK(alterIn(2, Letter::G) == 0);
    CHECK(alterIn(-3, Letter::A) == -1);
    CHECK(alterIn(-3, Letter::D) == 0);
    CHECK(alterIn(0, Letter::B) == 0);
    CHECK(alterIn(-1, Letter::B) == -1);
}

TEST_CASE("Key words of ABC are read in any case, three letters being enough", "[key]")
{
    // ABC 2.1, section 3.1.14.
    CHECK(keyFrom("Amin") == Key{{Letter::A, 0}, Mode::Aeolian});
    CHECK(keyFrom("F#m") == Key{{Letter::F, 1}, Mode::Aeolian});
    CHECK(keyFrom("D Dorian") == Key{{Letter::D, 0}, Mode::Dorian});
    CHECK(keyFrom("Bb") == Key{{Letter::B, -1}, Mode::Ionian});
    CHECK(!keyFrom("Gxyz"));
    CHECK(!keyFrom(""));
}

TEST_CASE("A key is found again from its signature and mode", "[key]")
{
    for (Mode mode : allModes)
        for (int s = -7; s <= 7; ++s) CHECK(signature(keyOf(s, mode)) == s);
}
