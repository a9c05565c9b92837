// Every tune that can be read opens: a fixed sample of folk tunes and old tunebooks, most of them
// without chords, over harps and levels. sallow_collection does the same for all of them.
#include "core/harmony/findchords.h"
#include "core/proposal/rules.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <array>
#include <iostream>
#include <map>

using namespace proposal;

TEST_CASE("Of two hundred sampled tunes each is arranged at every harp and level it is tried at",
          "[snags]")
{
    auto const tunes = nottingham::everyTune();
    if (!tunes) {
        WARN("SKIPPED: the folk tunes are absent: no sample arranged");
        return;
    }
    constexpr std::size_t every = 12;
    constexpr std::array harps{"lap26", "floor34", "floor38"};
    constexpr std::array levels{1, 3, 5};
    std::map<std::string, int> ways;
    int arranged = 0;
    int snagged = 0;
    for (std::size_t i = 0; i < tunes->size(); i += every) {
        std::size_t const turn = i / every;
        // As the program does: chords are found where there are none; every fourth goes over
        // a drone.
        tune::Tune tune = (*tunes)[i].tune;
        if (!tune::hasChords(tune) && turn % 4 != 3)
            tune = harmony::withFoundChords(scenario::tables().harmony, std::move(tune));
        Brief brief =
            scenario::briefFor(std::move(tune), levels[turn / harps.size() % levels.size()]);
        brief.harp = *files::harpFrom(scenario::tables(), harps[turn % harps.size()]);
        CAPTURE((*tunes)[i].name, brief.harp.id(), brief.level.number);
        auto const proposal = propose(brief);
        REQUIRE(proposal);
        ++arranged;
        snagged += proposal->snags.empty() ? 0 : 1;
        CHECK(brokenRules(proposal->arrangement, proposal->brief.book) ==
              std::vector<std::string>{});
        for (Snag const& snag : proposal->snags) {
            CHECK_FALSE(snag.what.empty());
            if (snag.hand == harp::Side::Right) ++ways[std::string(tune::wayId(snag.way))];
        }
    }
    std::cout << arranged << " sampled tunes arranged, " << snagged << " with snags:";
    for (auto const& [way, count] : ways) std::cout << ' ' << way << ' ' << count;
    std::cout << '\n';
    CHECK(arranged >= 200);
    CHECK(snagged * 2 < arranged);
    // Common practice, no source: among the ways round, plain comes first, then the note before
    // rings on; an octave or a hole is the exception.
    CHECK(ways["plain"] > ways["held"]);
    CHECK(ways["held"] > ways["octave"] + ways["leave-out"]);
}
