#include "core/files/tables/tables.h"
#include "core/perform/temperament.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace perform;

namespace {

std::vector<Temperament> const& all()
{
    static auto const tables = files::readTables(places::shared());
    REQUIRE(tables);
    return tables->temperaments;
}

double between(Temperament const& temperament, int from, int to) // cents of an interval upwards
{
    double const keys = ((to - from) % 12 + 12) % 12;
    return 100 * keys + temperament.cents[static_cast<std::size_t>(to)] -
           temperament.cents[static_cast<std::size_t>(from)];
}

double cents(double ratio) { return 1200 * std::log2(ratio); }

} // namespace

TEST_CASE("Thirds of meantone and fifths of Pythagorean tuning are pure, A stays", "[temperament]")
{
    // Ratios of the harmonic series: third 5:4, fifth 3:2.
    auto const meantone = *temperamentFrom(all(), "meantone");
    for (int const from : {0, 2, 3, 5, 7, 9, 10, 4}) // C D E flat F G A B flat E
        CHECK(between(meantone, from, (from + 4) % 12) == Approx(cents(5.0 / 4)).margin(0.01));
    auto const pythagorean = *temperamentFrom(all(), "pythagorean");
    for (int const from : {3, 10, 5, 0, 7, 2, 9, 4, 11, 6, 1})
        CHECK(between(pythagorean, from, (from + 7) % 12) == Approx(cents(1.5)).margin(0.01));
    for (Temperament const& one : all()) CHECK(one.cents[9] == 0);
}

TEST_CASE("The well temperament closes the circle of fifths, four of them narrow",
          "[temperament]")
{
    auto const well = *temperamentFrom(all(), "well");
    int narrow = 0;
    double sum = 0;
    for (int from = 0; from < 12; ++from) {
        double const fifth = between(well, from, (from + 7) % 12);
        sum += fifth;
        if (fifth < cents(1.5) - 1) ++narrow;
    }
    CHECK(narrow == 4);
    CHECK(sum == Approx(8400));
}

TEST_CASE("Cents are given note by note, and what is off is refused", "[temperament]")
{
    auto const own = temperamentFrom(all(), "E=-14,F#=+3.5,Bb=2");
    REQUIRE(own);
    CHECK(own->cents[4] == -14);
    CHECK(own->cents[6] == 3.5);
    CHECK(own->cents[10] == 2);
    CHECK(own->cents[0] == 0);
    for (char const* off : {"", "odd", "E", "E=", "E=51", "E=x", "H=3", "E#b=3", "E=1,", ",E=1",
                            "E=nan", "e=3"}) {
        CAPTURE(off);
        auto const refused = temperamentFrom(all(), off);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == base::FaultCode::BadCall);
    }
}
