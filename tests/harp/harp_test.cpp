#include "core/harp/harp.h"
#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

using namespace harp;
using music::Letter;
using music::Pitch;

TEST_CASE("Middle C is string 15 of 34 from C2, 17 of 36 from A1 and 8 of 26 from C3", "[harp]")
{
    // Trade checks 1, 3 and 4 (derived); ranges from memory.
    Pitch const middleC{Letter::C, 0, 4};
    music::PitchName const c{};
    auto const stringOfMiddleC = [&](Pitch low, Pitch high) {
        return *stringFor(example::harp(low, high, c), middleC) + 1;
    };
    CHECK(stringOfMiddleC({Letter::C, 0, 2}, {Letter::A, 0, 6}) == 15);
    CHECK(stringOfMiddleC({Letter::A, 0, 1}, {Letter::A, 0, 6}) == 17);
    CHECK(stringOfMiddleC({Letter::C, 0, 3}, {Letter::G, 0, 6}) == 8);
}

TEST_CASE("C2 to A6 are 34 strings and middle C is the 20th from the top", "[harp]")
{
    // Trade check 2: makers number from the shortest string (open harp-making page).
    Harp const h = example::floor34();
    CHECK(h.count() == 34);
    CHECK(h.count() - *stringFor(h, {Letter::C, 0, 4}) == 20);
}

TEST_CASE("A pitch beyond the ends lies on no string", "[harp]")
{
    Harp const h = example::floor34();
    CHECK(!stringFor(h, {Letter::B, 0, 1}));
    CHECK(!stringFor(h, {Letter::B, -1, 6}));
    CHECK(stringFor(h, {Letter::A, 1, 6}) == 33); // the letter decides, not the sound
}

TEST_CASE("Strings that skip or repeat a letter are refused by number", "[harp]")
{
    auto const refusal = [](harp::HarpStrings strings) {
        return Harp::make("x", "x", {}, std::move(strings)).error();
    };
    HarpString const c{{Letter::C, 0, 3}, true, 15, false};
    HarpString const d{{Letter::D, 0, 3}, true, 15, false};
    HarpString const e{{Letter::E, 0, 3}, true, 15, false};
    for (base::Fault const& fault : {refusal({c, e}), refusal({c, c}), refusal({d, c}),
                                     refusal({c, {d.open, true, 0, false}})}) {
        CHECK(fault.code == base::FaultCode::StringsOutOfOrder);
        CHECK(fault.place == "string 2");
    }
    CHECK(refusal({}).code == base::FaultCode::StringsOutOfOrder);
    CHECK(Harp::make("x", "x", {}, {c, d, e}));
}

TEST_CASE("C strings are red, F strings are blue and all others white", "[harp]")
{
    // Trade check 11 (open maker and teacher pages).
    Harp const h = example::floor34();
    for (HarpString const& s : h.strings()) {
        CHECK((colourOf(s) == StringColour::Red) == (s.open.letter == Letter::C));
        CHECK((colourOf(s) == StringColour::Blue) == (s.open.letter == Letter::F));
    }
}

TEST_CASE("A lever gives its own string a semitone more and nothing else", "[harp]")
{
    HarpString const aFlat{{Letter::A, -1, 4}, true, 15, false};
    CHECK(leverFor(aFlat, {Letter::A, -1, 4}) == Lever::Down);
    CHECK(leverFor(aFlat, {Letter::A, 0, 4}) == Lever::Up);
    CHECK(!leverFor(aFlat, {Letter::A, 1, 4})); // two semitones
    CHECK(!leverFor(aFlat, {Letter::G, 1, 4})); // sounds alike, lies on the G string
    CHECK(!leverFor(aFlat, {Letter::A, 0, 5})); // another octave
    HarpString const bare{{Letter::A, -1, 4}, false, 15, false};
    CHECK(!leverFor(bare, {Letter::A, 0, 4}));
    // Trade check 34: 100 cents, ratio 1.0595.
    CHECK(music::frequencyHz(midi(sounding(aFlat, Lever::Up))) /
              music::frequencyHz(midi(sounding(aFlat, Lever::Down))) ==
          Approx(1.0595).margin(0.00005));
}

TEST_CASE("A lever shortens its string by 5.61 per cent, 29.7 mm of 530", "[harp]")
{
    // Trade checks 35 and 36 (physics: length goes with one over frequency).
    HarpString const c{{Letter::C, 0, 4}, true, 15, false};
    double const share = 1 - music::frequencyHz(midi(sounding(c, Lever::Down))) /
                                 music::frequencyHz(midi(sounding(c, Lever::Up)));
    CHECK(share == Approx(0.0561).margin(0.00005));
    CHECK(share * 530 == Approx(29.7).margin(0.05));
}

TEST_CASE("Harp octaves count from the top and change between E and F", "[harp]")
{
    // Trade checks 7 to 10 (open lesson page, exam syllabus).
    CHECK(harpOctave({Letter::C, 0, 4}) == 4);
    CHECK(harpOctave({Letter::C, 0, 2}) == 6);
    CHECK(harpOctave({Letter::C, 0, 3}) == 5);
    CHECK(harpOctave({Letter::F, 0, 5}) == 2);
    CHECK(harpOctave({Letter::E, 0, 4}) == 4);
    CHECK(harpOctave({Letter::F, 0, 4}) == 3);
    CHECK(harpOctave({Letter::E, 0, 5}) == 3);
    CHECK(harpOctave({Letter::A, 0, 6}) == 1);
}

TEST_CASE("Ten strings at 15 mm are a stretch of 135 mm", "[harp]")
{
    // Trade check 52 (arithmetic).
    Harp const h = example::floor34();
    CHECK(distanceMm(h, 4, 13) == Approx(135));
    CHECK(distanceMm(h, 13, 4) == Approx(135));
    CHECK(distanceMm(h, 7, 7) == 0);
}

TEST_CASE("A plain string at middle C rings 5.8 s and the ring shortens as pitch rises",
          "[harp]")
{
    // Trade checks 62 and 63 (working model of trade 2.2).
    auto const ring = [](Pitch open, bool wound) {
        return ringSeconds({open, true, 15, wound});
    };
    CHECK(ring({Letter::C, 0, 4}, false) == Approx(5.8).margin(0.05));
    CHECK(ring({Letter::C, 0, 2}, true) == Approx(12.1).margin(0.05));
    CHECK(ring({Letter::C, 0, 7}, false) == Approx(1.5).margin(0.05));
    for (bool wound : {false, true})
        for (int step = 14; step < 49; ++step)
            CHECK(ring(music::naturalAt(step + 1), wound) <
                  ring(music::naturalAt(step), wound));
}

TEST_CASE("A string is named by its open pitch and its number from the lowest", "[harp]")
{
    CHECK(stringName(example::floor34(), 0) == "C2 (string 1)");
    CHECK(stringName(example::floor34(), 9) == "E♭3 (string 10)");
}
