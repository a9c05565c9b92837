#include "core/arrange/build.h"
#include "core/arrange/solve.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace arrange;

namespace {

char const* const sixteenBars =
    "[G] B4:1/4 C5:1/4 D5:1/2 | [C] E5:1/4 D5:1/4 C5:1/2 | [G] B4:1/4 A4:1/4 B4:1/2 | "
    "[D7] A4:1/2 [D] F#4:1/2 | [G] G4:1/4 A4:1/4 B4:1/2 | [Em] G4:1/2 B4:1/2 | "
    "[Am] C5:1/2 [D7] A4:1/2 | [G] G4:1 :|";

Lattice latticeOf(scenes::Example const& x) { return latticeFor(x.scene(), x.positions()); }

} // namespace

TEST_CASE("A lattice has candidates everywhere and a cost for every pair", "[lattice]")
{
    auto const x = scenes::example(sixteenBars);
    Lattice const lattice = latticeOf(x);
    REQUIRE(lattice.candidates.size() == lattice.positions.size());
    REQUIRE(lattice.pairs.size() + 1 == lattice.positions.size());
    REQUIRE(lattice.locks.size() == lattice.positions.size());
    for (arrange::PositionIndex const i : lattice.candidates.indices()) {
        CHECK(!lattice.candidates[i].empty());
        CHECK(lattice.candidates[i].back().voicing.notes.empty());
        if (i + 1 < lattice.candidates.size())
            CHECK(static_cast<int>(lattice.pairs[i].size()) ==
                  lattice.candidates[i].size() * lattice.candidates[i + 1].size());
    }
}

TEST_CASE("A candidate's cost is the sum of its account, and no judgement is below zero",
          "[lattice]")
{
    auto const x = scenes::example(sixteenBars);
    Lattice const lattice = latticeOf(x);
    for (auto const& list : lattice.candidates) {
        for (Candidate const& c : list) {
            CHECK(c.cost == total(c.account));
            for (Points p : c.account) CHECK(p >= 0);
        }
    }
}

TEST_CASE("The account of a pair adds up to the cost the solver sees", "[lattice]")
{
    auto const x = scenes::example(sixteenBars);
    Lattice const lattice = latticeOf(x);
    for (PositionIndex i = 0; i + 1 < lattice.positions.size(); ++i) {
        for (arrange::CandidateIndex a = 0; a < lattice.candidates[i].size(); a += 7) {
            for (arrange::CandidateIndex b = 0; b < lattice.candidates[i + 1].size(); b += 5) {
                Account const account = pairAccount(x.scene(), lattice, i, a, b);
                CHECK(total(account) == lattice.pair(i, a, b));
            }
        }
    }
}

TEST_CASE("Bars that come back share their pair tables, and the numbers are those of each place",
          "[lattice]")
{
    std::string const four = "[G] B4:1/4 C5:1/4 D5:1/2 | [C] E5:1/4 D5:1/4 C5:1/2 | "
                             "[G] B4:1/4 A4:1/4 B4:1/2 | [D7] A4:1/2 F#4:1/2 | ";
    auto const x = scenes::example(four + four + four);
    Lattice const lattice = latticeOf(x);
    REQUIRE(lattice.pairs.size() == 11);
    CHECK(lattice.pairs[4].sharesWith(lattice.pairs[0]));
    CHECK(lattice.pairs[7].sharesWith(lattice.pairs[3]));
    CHECK_FALSE(lattice.pairs[1].sharesWith(lattice.pairs[0]));
    CHECK_FALSE(lattice.pairs[10].sharesWith(lattice.pairs[6])); // the tune closes there
    for (PositionIndex i = 3; i < 11; ++i)
        for (arrange::CandidateIndex a = 0; a < lattice.candidates[i].size(); a += 5)
            for (arrange::CandidateIndex b = 0; b < lattice.candidates[i + 1].size(); b += 7)
                CHECK(lattice.pair(i, a, b) == total(pairAccount(x.scene(), lattice, i, a, b)));
}

TEST_CASE("The same tune on the same harp gives the same lattice", "[lattice]")
{
    auto const x = scenes::example(sixteenBars);
    Lattice const first = latticeFor(x.scene(), x.positions());
    Lattice const second = latticeFor(x.scene(), x.positions());
    CHECK(solved(first) == solved(second));
    for (arrange::PositionIndex const i : first.candidates.indices())
        for (arrange::CandidateIndex const c : first.candidates[i].indices())
            CHECK(first.candidates[i][c].voicing == second.candidates[i][c].voicing);
}

TEST_CASE("A lattice with other levers is the same whether or not others were built before it",
          "[lattice]")
{
    auto x = scenes::example(sixteenBars);
    auto turned = x;
    // An F is turned down behind the fourth bar, with the left hand, and up again before it
    // comes back.
    for (harp::StringIndex const string : turned.harp.indices())
        if (turned.harp.string(string).open.letter == music::Letter::F)
            for (auto const& [at, to] :
                 {std::pair{4, harp::Lever::Down}, {10, harp::Lever::Up}}) {
                harp::Flip flip;
                flip.at = flip.freeFrom = flip.freeTo = music::Moment{music::Rational(at)};
                flip.freeTo = flip.at + music::Length{music::Rational(1, 8)};
                flip.string = string;
                flip.to = to;
                turned.levers.flips.push_back(flip);
            }
    std::ranges::stable_sort(turned.levers.flips, {}, &harp::Flip::at);
    LatticeBuilder builder(x.scene());
    for (auto const* levers : {&x.levers, &turned.levers, &x.levers}) {
        Lattice const built = builder.lattice(*levers, x.positions());
        Lattice const afresh =
            latticeFor(levers == &x.levers ? x.scene() : turned.scene(), x.positions());
        CHECK(solved(built) == solved(afresh));
        CHECK(built.like == afresh.like);
        REQUIRE(built.candidates.size() == afresh.candidates.size());
        for (arrange::PositionIndex const i : built.candidates.indices()) {
            REQUIRE(built.candidates[i].size() == afresh.candidates[i].size());
            for (arrange::CandidateIndex const c : built.candidates[i].indices()) {
                CHECK(built.candidates[i][c].voicing == afresh.candidates[i][c].voicing);
                CHECK(built.candidates[i][c].cost == afresh.candidates[i][c].cost);
            }
        }
    }
    CHECK_FALSE(solved(latticeFor(turned.scene(), x.positions())) ==
                solved(latticeFor(x.scene(), x.positions())));
}

TEST_CASE("The best arrangement uses no unplayable pair", "[lattice]")
{
    auto x = scenes::example(sixteenBars);
    x.tempo.beatsPerMinute = 220;
    Lattice const lattice = latticeOf(x);
    CHECK(solved(lattice).best.cost < unplayablePair);
}

TEST_CASE("Every term has a name of its own, as lattice files have it", "[lattice]")
{
    std::set<std::string_view> names;
    for (std::size_t t = 0; t < termCount; ++t) names.insert(termName(static_cast<Term>(t)));
    CHECK(names.size() == termCount);
    CHECK(termName(Term::Reach) == "reach");
    CHECK(termName(Term::ChordFit) == "chord_fit");
    CHECK(termName(Term::Variety) == "variety");
}
