// Bars with the same tune and chords, and the same left hand.

#include "core/arrange/alike.h"

#include "core/arrange/build.h"
#include "core/arrange/solve.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;

namespace {

// Bars 1 and 2 come again as 5 and 6, bar 3 as 7 with another chord after it.
char const* const twoPhrases =
    "[G] B4:1/2 D5:1/2 | [C] E5:1/2 C5:1/2 | [D] A4:1 | [G] B4:1 | "
    "[G] B4:1/2 D5:1/2 | [C] E5:1/2 C5:1/2 | [D] A4:1 | [Em] G4:1 | [D] F#4:1 | [G] G4:1 |";

} // namespace

TEST_CASE("A position answers the earlier one that has the longest run of like bars", "[alike]")
{
    auto const x = scenes::example(twoPhrases);
    Lattice const lattice = latticeFor(x.scene(), x.positions());
    CHECK_FALSE(answered(lattice, 0));
    CHECK_FALSE(answered(lattice, 3));
    CHECK(answered(lattice, 4) == Answer{0, 3});
    CHECK(answered(lattice, 5) == Answer{1, 3});
    CHECK(answered(lattice, 6) == Answer{2, 3});
    CHECK_FALSE(answered(lattice, 7));
}

TEST_CASE("What answers an earlier bar costs as much more as the figures say, unless it is like it",
          "[alike]")
{
    auto x = scenes::example(twoPhrases);
    x.weights.taste.variety.unlikePhrase = {0, 0, 450, 0, 0};
    Lattice const free = latticeFor(x.scene(), x.positions());
    auto const best = solved(free).best.candidates;
    Lattice drawn = free;
    drawLikeTogether(drawn, x.scene());
    for (arrange::PositionIndex const i : free.candidates.indices()) {
        bool const answers = i >= 4 && i <= 6;
        for (arrange::CandidateIndex const c : free.candidates[i].indices()) {
            bool const like = answers && c == best[i - 4];
            Points const more = answers && !like ? 450 : 0;
            CHECK(drawn.candidates[i][c].cost == free.candidates[i][c].cost + more);
            CHECK(drawn.candidates[i][c].cost == total(drawn.candidates[i][c].account));
        }
    }
    // A bound: no more is lost than the likeness would have cost.
    Points const lost = solved(drawn).best.cost - solved(free).best.cost;
    CHECK(lost >= 0);
    CHECK(lost <= 3 * 450);
}

TEST_CASE("At levels whose figures are nothing no bar is drawn to another", "[alike]")
{
    auto x = scenes::example(twoPhrases);
    x.weights.taste.variety.unlikePhrase = {};
    x.weights.taste.variety.unlikeBar = {};
    Lattice const free = latticeFor(x.scene(), x.positions());
    Lattice drawn = free;
    drawLikeTogether(drawn, x.scene());
    for (arrange::PositionIndex const i : free.candidates.indices())
        for (arrange::CandidateIndex const c : free.candidates[i].indices())
            CHECK(drawn.candidates[i][c].cost == free.candidates[i][c].cost);
}

TEST_CASE("Bars with the same music are alike however the levers stand", "[alike]")
{
    // A lever that nobody needs goes up in bar 4.
    auto x = scenes::example(twoPhrases);
    music::Moment const inBar4{music::Rational(7, 2)};
    x.levers.flips.push_back(
        {inBar4, inBar4, inBar4, x.string("D6"), harp::Lever::Up, harp::Side::Right});
    Lattice const lattice = latticeFor(x.scene(), x.positions());
    CHECK(answered(lattice, 4) == Answer{0, 3});
    x.weights.taste.variety.unlikePhrase = {0, 0, 450, 0, 0};
    Lattice const free = latticeFor(x.scene(), x.positions());
    Voicing const& first = free.candidates[0][solved(free).best.candidates[0]].voicing;
    Lattice drawn = free;
    drawLikeTogether(drawn, x.scene());
    for (arrange::CandidateIndex const c : free.candidates[4].indices()) {
        bool const like = free.candidates[4][c].voicing == first;
        CHECK(drawn.candidates[4][c].cost == free.candidates[4][c].cost + (like ? 0 : 450));
    }
}
