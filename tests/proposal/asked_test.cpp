#include "core/pattern/own.h"
#include "core/proposal/asked.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;
using scenario::briefFor;
using scenario::eightBars;
using scenario::proposed;

namespace {

std::string shapeAt(Proposal const& p, arrange::PositionIndex position)
{
    return p.arrangement.positions[position].voicing.pattern;
}

} // namespace

TEST_CASE("A chord is found by its printed bar and a beat that it holds", "[asked]")
{
    Proposal const p = proposed(briefFor("X:1\nM:4/4\nL:1/4\nK:G\n\"G\"gfed|\"C\"e2\"D\"f2|"
                                         "\"G\"g4|]\n"));
    CHECK(positionsAt(p, 1, std::nullopt) == std::vector<arrange::PositionIndex>{0});
    CHECK(positionsAt(p, 2, std::nullopt) == std::vector<arrange::PositionIndex>{1});
    CHECK(positionsAt(p, 2, 2) == std::vector<arrange::PositionIndex>{1});
    CHECK(positionsAt(p, 2, 3) == std::vector<arrange::PositionIndex>{2});
    CHECK(positionsAt(p, 2, 4) == std::vector<arrange::PositionIndex>{2});
    CHECK(positionsAt(p, 2, 5).empty());
    CHECK(positionsAt(p, 9, std::nullopt).empty());
}

TEST_CASE("A shape asked for is locked where it costs least", "[asked]")
{
    Proposal const p = proposed(briefFor(eightBars));
    auto const with = withPattern(p, 2, "1-5-10");
    REQUIRE(with);
    CHECK(shapeAt(*with, 2) == "1-5-10");
    CHECK(with->brief.locks.size() == 1);
    for (arrange::CandidateIndex const c : p.lattice.candidates[2].indices())
        if (p.lattice.candidates[2][c].voicing.pattern == "1-5-10")
            CHECK(p.solution.best.cost + p.solution.regrets[2][c] >= with->solution.best.cost);
}

TEST_CASE("An own shape can be asked for and is kept by the rules of the hand", "[asked]")
{
    Brief brief = briefFor(eightBars, 4);
    pattern::WithOwn with =
        pattern::withOwn(brief.book, *pattern::ownPatternFrom("1 5 8 10 8"));
    brief.book = with.book;
    auto const p = withPattern(proposed(brief), 0, with.name);
    REQUIRE(p);
    CHECK(shapeAt(*p, 0) == "1-5-8-10-8");
    CHECK(p->arrangement.positions[0].voicing.notes.size() == 5);
}

TEST_CASE("What no hand can play is refused with place, reason and remedy", "[asked]")
{
    // Over C2 the tenth is E3, which the tune holds.
    Brief brief = briefFor("X:1\nM:4/4\nL:1/4\nK:G\n\"G\"D,4|\"C\"E,4|\"G\"D,4|]\n");
    brief.key = AsWritten{};
    Proposal const p = proposed(brief);
    auto const refused = withPattern(p, 1, "1-5-10");
    REQUIRE(!refused);
    base::Fault const fault = refused.error();
    CHECK(fault.code == base::FaultCode::CannotPlayHere);
    CHECK(fault.place == "bar 2, beat 1, 1-5-10 over C");
    CHECK(fault.detail.find("E3") != std::string::npos);
    CHECK(fault.detail.find(": choose a narrower shape") != std::string::npos);
    auto const unknown = withPattern(p, 1, "1-9-1");
    REQUIRE(!unknown);
    CHECK(unknown.error().code == base::FaultCode::NoSuchPattern);
}

TEST_CASE("Every shape of the book is either offered at a chord or refused with a sentence",
          "[asked]")
{
    Proposal const p = proposed(briefFor(eightBars, 3));
    for (auto const position : std::vector<arrange::PositionIndex>{0, 3, 5}) {
        auto const& list = p.lattice.candidates[position];
        auto const refused = unplayable(p, position);
        for (pattern::Pattern const& shape : p.brief.book.patterns) {
            CAPTURE(position, shape.name);
            bool const offered = std::any_of(list.begin(), list.end(), [&](auto const& c) {
                return c.voicing.pattern == shape.name;
            });
            auto const told =
                std::find_if(refused.begin(), refused.end(),
                             [&](Unplayable const& u) { return u.pattern == shape.name; });
            bool const sameAsAnother =
                !offered && told == refused.end(); // its notes are there under another name
            if (sameAsAnother) continue;
            CHECK(offered == (told == refused.end()));
            if (told != refused.end()) CHECK(told->why.size() > 30);
        }
    }
}
