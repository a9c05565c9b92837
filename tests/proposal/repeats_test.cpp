#include "core/arrange/build.h"
#include "core/proposal/repeats.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"
#include "tests/solve/lattices.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;

namespace {

// A beginner plays one string once a second (trade 3.4); a bar here lasts 0.86 s. Written, the
// two bars of G are no neighbours, but over the repeat the third meets the first.
Proposal threeBarsRepeated()
{
    return scenario::proposed(scenario::briefFor("X:1\nM:2/4\nL:1/4\nQ:1/4=140\nK:G\n"
                                                 "|:\"G\"gg|\"D\"ff|\"G\"gg:|\n",
                                                 1));
}

// Without what was learnt of the repeat.
arrange::Lattice asWritten(Proposal const& proposal)
{
    arrange::Lattice lattice = proposal.lattice;
    lattice.pairs = proposal.writtenPairs;
    return lattice;
}

// The candidate of a position that plucks the fewest notes, one at least, from a root string.
arrange::CandidateIndex plainestOn(Proposal const& proposal, arrange::PositionIndex position,
                                   harp::StringIndex rootString)
{
    auto const& list = proposal.lattice.candidates[position];
    for (arrange::CandidateIndex const c : list.indices()) {
        arrange::Voicing const& v = list[c].voicing;
        if (v.notes.size() == 1 && v.rootString == rootString) return c;
    }
    FAIL("no single note on that string");
    return 0;
}

} // namespace

TEST_CASE("Written, the bars on both sides of a repeat may want one string too soon",
          "[repeats]")
{
    Proposal const p = threeBarsRepeated();
    arrange::Lattice const lattice = asWritten(p);
    REQUIRE_FALSE(conflicts(p, arrange::solved(lattice).best).empty());
    CHECK(conflicts(p, p.solution.best).empty());
    CHECK(brokenRules(p.arrangement, p.brief.book) == std::vector<std::string>{});
}

TEST_CASE("Over a repeat the best playable choice equals that found by trying all in order",
          "[repeats]")
{
    Proposal const p = threeBarsRepeated();
    auto const choices = lattices::allByCost(asWritten(p));
    auto const first =
        std::find_if(choices.begin(), choices.end(), [&p](arrange::Choice const& choice) {
            return conflicts(p, choice).empty();
        });
    REQUIRE(first != choices.end());
    CHECK(p.solution.best.cost == first->cost);
}

TEST_CASE("What a repeat forbids stands in the lattice, so that solving it finds the same",
          "[repeats]")
{
    Proposal const p = threeBarsRepeated();
    CHECK(arrange::solved(p.lattice) == p.solution);
    CHECK(arrange::bestChoices(p.lattice, 1).front() == p.solution.best);
}

TEST_CASE("Locks that no hand can play over a repeat are kept and said", "[repeats]")
{
    Proposal p = threeBarsRepeated();
    harp::StringIndex const g2 = *harp::stringFor(p.arrangement.harp, {music::Letter::G, 0, 2});
    arrange::CandidateIndex const first = plainestOn(p, 0, g2);
    arrange::CandidateIndex const third = plainestOn(p, 2, g2);
    p = *withChoice(std::move(p), 0, first, true);
    p = *withChoice(std::move(p), 2, third, true);
    CHECK(p.solution.best.candidates[0] == first);
    CHECK(p.solution.best.candidates[2] == third);
    CHECK(std::any_of(p.warnings.begin(), p.warnings.end(), [](std::string const& w) {
        return w.find("From bar 3 to bar 1 the left hand has no time to move") !=
               std::string::npos;
    }));
    CHECK_FALSE(brokenRules(p.arrangement, p.brief.book).empty());

    Proposal const mended = withoutLock(p, 0);
    CHECK(mended.solution.best.candidates[2] == third);
    CHECK(conflicts(mended, mended.solution.best).empty());
    CHECK(brokenRules(mended.arrangement, mended.brief.book) == std::vector<std::string>{});
}

TEST_CASE("A single bar that is repeated keeps only shapes that can follow themselves",
          "[repeats]")
{
    Proposal const p = scenario::proposed(
        scenario::briefFor("X:1\nM:2/4\nL:1/4\nQ:1/4=140\nK:G\n|:\"G\"gg:|\n", 2));
    REQUIRE(p.lattice.positions.size() == 2); // the bar, and the end of the tune
    arrange::Position const& only = p.lattice.positions.front();
    for (arrange::Candidate const& c : p.lattice.candidates.front())
        CHECK(arrange::playableInTurn(sceneOf(p), only, c.voicing, only, c.voicing));
    CHECK(brokenRules(p.arrangement, p.brief.book) == std::vector<std::string>{});
}
