#include "core/arrange/takes.h"
#include "core/proposal/repeats.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

using namespace proposal;
using scenario::briefFor;
using scenario::eightBars;
using scenario::proposed;

namespace {

int shapesApart(Proposal const& a, Proposal const& b)
{
    int apart = 0;
    for (arrange::PositionIndex const i : a.arrangement.positions.indices())
        if (a.arrangement.positions[i].voicing.pattern !=
            b.arrangement.positions[i].voicing.pattern)
            ++apart;
    return apart;
}

} // namespace

TEST_CASE("Takes are playable, clearly different, never cheaper than the best, and counted",
          "[take]")
{
    Brief brief = briefFor(eightBars);
    Proposal const best = proposed(brief);
    CHECK_FALSE(best.take);
    int const wanted = arrange::newShapesWanted(best.lattice);
    std::vector<Proposal> all{best};
    for (brief.take = 1; brief.take <= 3; ++brief.take) {
        CAPTURE(brief.take);
        Proposal const p = proposed(brief);
        REQUIRE(p.take);
        CHECK(p.take->number == brief.take);
        CHECK(p.take->otherShapes == shapesApart(p, best));
        CHECK(p.take->dearer == p.solution.best.cost - best.solution.best.cost);
        CHECK(p.take->dearer >= 0);
        for (Proposal const& earlier : all) CHECK(shapesApart(p, earlier) >= wanted);
        CHECK(brokenRules(p.arrangement, brief.book).empty());
        CHECK(conflicts(p, p.solution.best).empty());
        all.push_back(p);
    }
}

TEST_CASE("A take keeps the locks, and a lock keeps the take", "[take]")
{
    Brief brief = briefFor(eightBars);
    brief.take = 1;
    Proposal const p = proposed(brief);
    auto const locked = withChoice(p, 2, 3, true);
    REQUIRE(locked);
    CHECK(locked->take);
    CHECK(locked->solution.best.candidates[2] == 3);
    CHECK(locked->brief.take == 1);
}

TEST_CASE("Going from take to take is the same as asking for each", "[take]")
{
    Brief brief = briefFor(eightBars);
    Proposal const best = proposed(brief);
    brief.take = 2;
    CHECK(withTake(best, 2).arrangement.positions == proposed(brief).arrangement.positions);
    CHECK(withTake(withTake(best, 2), 0).solution == best.solution);
}

TEST_CASE("Where there are no more takes the last one is given and said", "[take]")
{
    // One bar: as many takes as it has shapes, and no more.
    Brief brief = briefFor("X:1\nM:4/4\nL:1/4\nK:G\n\"G\"gbd'g|]\n", 1);
    brief.take = 1000;
    Proposal const p = proposed(brief);
    CHECK(p.brief.take < 1000);
    REQUIRE(p.take);
    CHECK(p.take->number == p.brief.take);
}

TEST_CASE("The distance of a take is said in a plain sentence", "[take]")
{
    CHECK(takeWords({2, 9, 24, 1340}) ==
          "Setting 2: another shape on 9 of 24 chords; its score is 1.3 higher than the best "
          "(lower is better).");
}
