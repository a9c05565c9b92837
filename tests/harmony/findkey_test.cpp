#include "core/harmony/findkey.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;

TEST_CASE("Key and mode are found from the notes, whatever the file says", "[key]")
{
    // Invented tunes. The modes by their scales, common practice: dorian has a minor third and a
    // raised sixth, mixolydian a major third and a low seventh.
    auto const [body, key] = GENERATE(table<std::string, std::string>({
        {"GABc d2dB|cBAG ABAD|GABc d2dB|cAFA G4|gfed edcB|cBAG ABAD|GABc d2dB|cAFA G4|", "G"},
        {"E2EF GABc|dBGB AFDF|E2EF GABc|dBAF E4|e2ed BGBd|cBAG AFDF|E2EF GABc|dBAF E4|", "Em"},
    }));
    for (std::string const written : {"G", "Em", "D", "Bdor"}) {
        // The same sounding notes under another signature.
        std::string notes = body;
        tune::Tune tune = scenes::tuneOf("X:1\nM:4/4\nL:1/8\nK:G\n" + notes + "\n");
        tune.key = *music::keyFrom(written);
        auto const found = foundKey(scenes::learned().keys, tune);
        REQUIRE(found);
        CHECK(plain(found->likely.front().key) == key);
        CHECK_FALSE(found->reason.empty());
    }
}

TEST_CASE("A found key moves with the tune", "[key]")
{
    tune::Tune const tune = scenes::jig();
    auto const found = foundKey(scenes::learned().keys, tune);
    REQUIRE(found);
    CHECK(plain(found->likely.front().key) == "G");
    auto const higher = foundKey(scenes::learned().keys, transposed(tune, {1, 2}));
    CHECK(plain(higher->likely.front().key) == "A");
    CHECK(higher->likely.front().probability == found->likely.front().probability);
    CHECK_FALSE(keyContradiction(*found, tune.key));
    CHECK(keyContradiction(*found, *music::keyFrom("D")));
}

TEST_CASE("Without notes no key is found", "[key]")
{
    CHECK_FALSE(foundKey(scenes::learned().keys, tune::Tune{}));
}
