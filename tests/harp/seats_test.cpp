#include "core/harp/seats.h"

#include "tests/harp/harps.h"
#include "tests/trade/table.h"

#include <catch2/catch.hpp>

#include <string>

using harp::Lever;
using harp::Seat;

namespace {

music::Pitch pitch(std::string const& name) { return music::pitchFrom(name).value(); }

// "D string down": the letter and lever of the seat that is not of the pitch's own letter.
std::string inWords(harp::Harp const& harp, Seat const& seat)
{
    return std::string(1, "CDEFGAB"[index(harp.string(seat.string).open.letter)]) + " string " +
           (seat.lever == Lever::Up ? "up" : "down");
}

} // namespace

TEST_CASE("D flat sits on the C string of an E flat harp and nowhere else", "[harp]")
{
    // [trade-1.4]: no own string for D flat; respell as C sharp.
    auto const harp = example::floor34();
    auto const seats = harp::seats(harp, pitch("Db4"));
    REQUIRE(seats.size() == 1);
    CHECK(seats.front() == Seat{*stringFor(harp, pitch("C4")), Lever::Up});
}

TEST_CASE("The own letter of a pitch comes before the neighbour that sounds alike", "[harp]")
{
    auto const harp = example::floor34();
    auto const g = *stringFor(harp, pitch("G4"));
    CHECK(seats(harp, pitch("G#4")) == std::vector<Seat>{{g, Lever::Up}, {g + 1, Lever::Down}});
    CHECK(seats(harp, pitch("Ab4")) == std::vector<Seat>{{g + 1, Lever::Down}, {g, Lever::Up}});
    CHECK(seatOf(harp, pitch("Ab4")) == Seat{g + 1, Lever::Down});
}

TEST_CASE("C flat and B sharp cross the octave number to their neighbours", "[harp]")
{
    auto const harp = example::floor34();
    CHECK(seatOf(harp, pitch("Cb5")) == Seat{*stringFor(harp, pitch("B4")), Lever::Up});
    CHECK(seatOf(harp, pitch("B#4")) == Seat{*stringFor(harp, pitch("C5")), Lever::Down});
}

TEST_CASE("Beyond the ends of the harp a pitch has no seat", "[harp]")
{
    auto const harp = example::floor34();
    CHECK(seats(harp, pitch("B1")).empty());
    CHECK(seats(harp, pitch("B6")).empty());
    CHECK(seats(harp, pitch("B#1")).size() == 1); // sounds as C2, the lowest string
}

TEST_CASE("Without its lever a string gives only its open pitch", "[harp]")
{
    auto const harp = example::harp(example::c2, example::a6, {music::Letter::C, 0}, "CF");
    CHECK(seatOf(harp, pitch("F#4")));
    CHECK(seatOf(harp, pitch("C#4")));
    CHECK_FALSE(seatOf(harp, pitch("G#4")));
}

TEST_CASE("The string of a note follows the levers as they stand then", "[harp]")
{
    auto const harp = example::floor34();
    auto const g = *stringFor(harp, pitch("G4"));
    harp::LeverTimeline levers{harp::LeverSetting(harp.count(), Lever::Down), {}};
    music::Moment const at{music::Rational(1)};
    levers.flips.push_back({at, at, at, g, Lever::Up, harp::Side::Left, 0});
    CHECK(stringAtMoment(harp, levers, pitch("G#4"), {music::Rational(1, 2)}) == g + 1);
    CHECK(stringAtMoment(harp, levers, pitch("G#4"), at) == g);
    CHECK(stringAtMoment(harp, levers, pitch("G4"), {music::Rational(1, 2)}) == g);
    CHECK_FALSE(stringAtMoment(harp, levers, pitch("G4"), at));
}

TEST_CASE("Every accidental of six tunings sits where the trade's table says", "[harp]")
{
    auto const rows = trade::table("accidentals.csv");
    if (!rows) return;
    for (trade::Row const& row : *rows) {
        CAPTURE(row.at("tuning"), row.at("spelling"));
        auto const harp =
            example::harp(example::c2, example::a6, *music::pitchNameFrom(row.at("tuning")));
        music::Pitch const wanted = pitch(row.at("spelling") + "4");
        auto const seats = harp::seats(harp, wanted);
        auto const own = *stringFor(harp, wanted);
        bool const onOwn = row.at("own_string") == "yes";
        std::string const& elsewhere = row.at("enharmonic_elsewhere");
        std::size_t const expected = onOwn + (elsewhere != "-");
        REQUIRE(seats.size() == expected);
        if (onOwn)
            CHECK(seats.front() ==
                  Seat{own, row.at("lever") == "up" ? Lever::Up : Lever::Down});
        if (elsewhere != "-") CHECK(inWords(harp, seats.back()) == elsewhere);
    }
    CHECK(rows->size() == 126); // six tunings, 21 spellings
}
