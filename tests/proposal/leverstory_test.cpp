// Why a lever stands as it does, told to the arranger who points at its string.

#include "core/harp/seats.h"
#include "core/levers/leverstory.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

namespace {

// In G, with a C sharp that is flipped for one bar and back.
std::string const raised = "X:1\nT:Raised\nM:4/4\nL:1/4\nQ:1/4=60\nK:G\n\"G\"GBdB|\"C\"c2e2|"
                           "\"G\"d4|\"A7\"e2^c2|\"D\"d4|\"C\"=c2e2|\"G\"d2B2|\"G\"G4|]\n";

harp::StringIndex stringOf(arrange::Arrangement const& arrangement, std::string const& pitch)
{
    music::Pitch const wanted = *music::pitchFrom(pitch);
    for (harp::StringIndex const s : arrangement.harp.indices()) {
        music::Pitch const open = arrangement.harp.string(s).open;
        if (open.letter == wanted.letter && open.octave == wanted.octave) return s;
    }
    FAIL("no such string");
    return 0;
}

arrange::Arrangement raisedArranged()
{
    return scenario::proposed(scenario::briefFor(raised)).arrangement;
}

} // namespace

TEST_CASE("A lever's story tells its first use, how it stands, and when it is flipped",
          "[proposal][leverstory]")
{
    arrange::Arrangement const a = raisedArranged();
    harp::StringIndex const c = stringOf(a, "C5");
    CHECK(levers::tunePlays(a, c));
    std::string const story = levers::leverStory(a, c);
    CAPTURE(story);
    REQUIRE_FALSE(a.levers.flips.empty());
    CHECK(story.find("first uses") != std::string::npos);
    CHECK(story.find("bar 2") != std::string::npos);
    CHECK(story.find("it is flipped up") != std::string::npos);
    CHECK(story.find(" hand") != std::string::npos);
}

TEST_CASE("A string that the tune leaves alone is free for the left hand",
          "[proposal][leverstory]")
{
    arrange::Arrangement const a = raisedArranged();
    harp::StringIndex const low = stringOf(a, "D2");
    CHECK_FALSE(levers::tunePlays(a, low));
    CHECK(levers::leverStory(a, low).find("may be set to suit the left hand") !=
          std::string::npos);
}

TEST_CASE("A string without a lever says so", "[proposal][leverstory]")
{
    arrange::Arrangement bare = raisedArranged();
    harp::StringIndex const string = stringOf(bare, "D2");
    auto const all = bare.harp.strings();
    harp::HarpStrings strings(all.begin(), all.end());
    strings[string].hasLever = false;
    bare.harp = *harp::Harp::make("bare", "bare", bare.harp.tuning(), strings);
    CHECK(levers::leverStory(bare, string).find("has no lever") != std::string::npos);
}
