#include "core/harp/levers.h"
#include "core/harp/model.h"
#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

using harp::HarpModel;
using harp::Naming;
using music::Letter;

namespace {

HarpModel floor34()
{
    HarpModel model = harp::modelOf(example::floor34());
    model.id = "example";
    return model;
}

} // namespace

TEST_CASE("A harp taken into the editor and back is the same harp", "[harp]")
{
    auto const harp = example::floor34("CFB");
    auto const again = harpOf(harp::modelOf(harp));
    REQUIRE(again);
    CHECK(*again == harp);
}

TEST_CASE("Strings are added at the top like the highest and taken from there", "[harp]")
{
    auto const larger = withStrings(floor34(), 36);
    auto const harp = harpOf(larger);
    REQUIRE(harp);
    CHECK(harp->count() == 36);
    CHECK(music::plain(harp->string(35).open) == "C7");
    CHECK(withStrings(larger, 34) == floor34());
}

TEST_CASE("Another lowest string keeps the number of strings, and levers keep their letters",
          "[harp]")
{
    HarpModel model = withLevers(floor34(), {Letter::C, Letter::F});
    model = withLowest(std::move(model), {Letter::A, 0, 1});
    auto const harp = harpOf(model);
    REQUIRE(harp);
    CHECK(harp->count() == 34);
    CHECK(music::plain(harp->string(0).open) == "Ab1");
    for (harp::HarpString const& string : harp->strings())
        CHECK(string.hasLever ==
              (string.open.letter == Letter::C || string.open.letter == Letter::F));
}

TEST_CASE("Levers are put on string by string", "[harp]")
{
    HarpModel model = withLevers(floor34(), {});
    model = withLever(std::move(model), 14, true);
    model = withLever(std::move(model), 99, true); // no such string
    auto const harp = harpOf(model);
    REQUIRE(harp);
    int levers = 0;
    for (harp::HarpString const& string : harp->strings()) levers += string.hasLever ? 1 : 0;
    CHECK(levers == 1);
    CHECK(harp->string(14).hasLever); // middle C
}

TEST_CASE("Spacing changes evenly between its ends, or on one string alone", "[harp]")
{
    auto const even = withSpacing(floor34(), 16.5, 13.2);
    CHECK(even.gapsMm.front() == Approx(16.5));
    CHECK(even.gapsMm.back() == Approx(13.2));
    CHECK(even.gapsMm[1] == Approx(16.4));
    CHECK(withGap(even, 3, 15).gapsMm[3] == 15);
}

TEST_CASE("What no harp can be is refused with its place", "[harp]")
{
    auto const refused = [](HarpModel const& model) {
        auto const harp = harpOf(model);
        REQUIRE_FALSE(harp);
        CHECK(harp.error().code == base::FaultCode::BadHarp);
        return harp.error().place;
    };
    CHECK(refused(withStrings(floor34(), 3)) == "strings");
    CHECK(refused(withStrings(floor34(), 60)) == "strings");
    CHECK(refused(withGap(floor34(), 6, 2)) == "string 7");
    CHECK(refused(withName(floor34(), "")) == "name");
    CHECK(refused(withLowest(floor34(), {Letter::C, 0, 5})) == "lowest string");
    CHECK(refused(withTuning(floor34(), {Letter::F, -1})) == "tuning");
    HarpModel damaged = floor34();
    damaged.gapsMm.pop_back();
    CHECK(refused(damaged) == "strings");
}

TEST_CASE("A harp's name makes its id", "[harp]")
{
    CHECK(withName(floor34(), "The old one, 29").id == "the-old-one-29");
    CHECK(withName(floor34(), "\u00e9").id == "own");
}

TEST_CASE("Strings are named by pitch, by harp octave, or by number from the top", "[harp]")
{
    // Middle C of 34 strings from C2 is string 15, 20 from the top, and in the fourth harp
    // octave: rows 1, 2 and 7 of the trade's check values.
    auto const harp = example::floor34();
    CHECK(stringName(harp, 14) == "C4 (string 15)");
    CHECK(stringName(withNaming(harp, Naming::Scientific), 14) == "C4 (string 15)");
    CHECK(stringName(withNaming(harp, Naming::HarpOctave), 14) == "4C (string 15)");
    CHECK(stringName(withNaming(harp, Naming::FromTop), 14) == "C, string 20 from the top");
    harp::LeverSetting setup(34, harp::Lever::Down);
    setup[14] = harp::Lever::Up;
    CHECK(setupLine(harp, setup) == "Set levers: only 4C♯");
    CHECK(setupLine(withNaming(harp, Naming::Scientific), setup) == "Set levers: only C♯4");
    CHECK(setupLine(withNaming(harp, Naming::FromTop), setup) ==
          "Set levers: only C♯ (string 20 from the top)");
    for (Naming const naming :
         {Naming::Usual, Naming::Scientific, Naming::HarpOctave, Naming::FromTop})
        CHECK(harp::namingFrom(harp::namingId(naming)) == naming);
}
