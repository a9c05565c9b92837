#include "core/arrange/solve.h"
#include "tests/solve/lattices.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <limits>

// The exact solver against trying everything on lattices that rapidcheck makes up and, where it
// finds a difference, makes as small as it can; and against the plainest tables on large ones.

using arrange::CandidateIndex;
using arrange::Lattice;
using arrange::Points;
using arrange::PositionIndex;

namespace {

// A cost: nearly always one of four, so that ties are everywhere, now and then one that no hand
// can play, or one far from all others.
rc::Gen<Points> costs()
{
    return rc::gen::weightedOneOf<Points>(
        {{12, rc::gen::inRange<Points>(0, 4)},
         {2, rc::gen::just(arrange::unplayablePair)},
         {1, rc::gen::element<Points>(65534, 65535, 65536, 400000)}});
}

std::size_t sizeBelow(std::size_t limit) { return *rc::gen::inRange<std::size_t>(1, limit); }

CandidateIndex anyOf(arrange::CandidateList const& list)
{
    return CandidateIndex(*rc::gen::inRange(0, list.size()));
}

Lattice madeUp()
{
    std::vector<std::vector<Points>> own;
    std::vector<std::vector<std::vector<Points>>> between;
    std::size_t const positions = sizeBelow(6);
    for (std::size_t i = 0; i < positions; ++i) {
        own.push_back(*rc::gen::container<std::vector<Points>>(sizeBelow(5), costs()));
        if (i == 0) continue;
        between.emplace_back();
        for (std::size_t a = 0; a < own[i - 1].size(); ++a)
            between.back().push_back(
                *rc::gen::container<std::vector<Points>>(own[i].size(), costs()));
    }
    Lattice lattice = lattices::fromNumbers(own, between);
    for (PositionIndex const i : lattice.candidates.indices())
        if (*rc::gen::inRange(0, 4) == 0) lattice.locks[i] = anyOf(lattice.candidates[i]);
    return lattice;
}

// Two sweeps over plain sums.
base::List<PositionIndex, arrange::Costs> plainTotals(Lattice const& lattice)
{
    constexpr Points none = std::numeric_limits<Points>::max();
    PositionIndex const beyond = lattice.candidates.beyond();
    base::List<PositionIndex, arrange::Costs> upTo(beyond.value(), {});
    base::List<PositionIndex, arrange::Costs> after(beyond.value(), {});
    for (PositionIndex i = 0; i < beyond; ++i) {
        for (CandidateIndex const b : lattice.candidates[i].indices()) {
            Points least = i == 0 ? 0 : none;
            for (CandidateIndex a = 0; i > 0 && a < upTo[i - 1].size(); ++a)
                least = std::min(least, upTo[i - 1][a] + lattice.pair(i - 1, a, b));
            upTo[i].push_back(least + lattice.candidates[i][b].cost);
        }
    }
    for (PositionIndex i = beyond - 1; i >= 0; --i) {
        for (CandidateIndex const a : lattice.candidates[i].indices()) {
            Points least = i + 1 == beyond ? 0 : none;
            for (CandidateIndex b = 0; i + 1 < beyond && b < after[i + 1].size(); ++b)
                least =
                    std::min(least, lattice.pair(i, a, b) + lattice.candidates[i + 1][b].cost +
                                        after[i + 1][b]);
            after[i].push_back(least);
        }
        for (CandidateIndex const a : upTo[i].indices()) upTo[i][a] += after[i][a];
    }
    return upTo;
}

} // namespace

TEST_CASE(
    "Best choice and every regret are those of trying everything, ties and locks included",
    "[properties]")
{
    CHECK(rc::check("best and regrets", [] {
        Lattice const lattice = madeUp();
        arrange::Solution const solution = arrange::solved(lattice);
        RC_ASSERT(solution.best == lattices::allByCost(lattice).front());
        RC_ASSERT(solution.regrets == lattices::regretsByTryingAll(lattice));
    }));
}

TEST_CASE("The cheapest choices come in the order of trying everything", "[properties]")
{
    CHECK(rc::check("k best", [] {
        Lattice const lattice = madeUp();
        auto all = lattices::allByCost(lattice);
        auto const wanted = *rc::gen::inRange<std::size_t>(0, 12);
        if (all.size() > wanted) all.resize(wanted);
        RC_ASSERT(arrange::bestChoices(lattice, static_cast<int>(wanted)) == all);
    }));
}

TEST_CASE("Half the tables stay after a lock, whichever lock it is", "[properties]")
{
    CHECK(rc::check("one lock", [] {
        Lattice lattice = madeUp();
        arrange::CostTables const before = arrange::tables(lattice);
        PositionIndex const i(*rc::gen::inRange(0, lattice.candidates.size()));
        lattice.locks[i] = anyOf(lattice.candidates[i]);
        RC_ASSERT(arrange::tablesAfterLock(lattice, before, i) == arrange::tables(lattice));
    }));
}

TEST_CASE("Two hundred positions of up to 256 candidates are solved as plain tables have it",
          "[properties]")
{
    // Few values and so many ties; as in tunes; with some that no hand can play; beyond two
    // bytes.
    struct Kind {
        unsigned largest;
        unsigned oneInUnplayable; // 0: none
    };
    Kind const kind = GENERATE(Kind{2, 0}, Kind{60000, 0}, Kind{900, 5}, Kind{5'000'000, 0});
    std::mt19937 source(kind.largest); // fixed, so that a failure can be seen again
    auto const cost = [&] {
        bool const never = kind.oneInUnplayable > 0 && source() % kind.oneInUnplayable == 0;
        return never ? arrange::unplayablePair : Points(source() % (kind.largest + 1));
    };
    Lattice lattice;
    for (PositionIndex i = 0; i < 200; ++i) {
        std::size_t const size = i % 50 == 7 ? 256 : 1 + source() % 96;
        arrange::Candidates list(static_cast<int>(size), {});
        for (auto& candidate : list) candidate.cost = Points(source() % (kind.largest + 1));
        lattice.candidates.push_back(std::move(list));
        if (i == 0) continue;
        auto const rows = static_cast<std::size_t>(lattice.candidates[i - 1].size());
        std::vector<Points> table(rows * size);
        for (Points& c : table) c = cost();
        lattice.pairs.emplace_back(table, size);
    }
    lattice.positions.resize(lattice.candidates.size());
    lattice.locks.resize(lattice.candidates.size());

    arrange::Solution const solution = arrange::solved(lattice);
    auto expected = plainTotals(lattice);
    Points const least = *std::min_element(expected[0].begin(), expected[0].end());
    CHECK(solution.best.cost == least);
    CHECK(lattices::costOf(lattice, solution.best.candidates) == least);
    for (auto& totals : expected)
        for (Points& total : totals) total -= least;
    CHECK(solution.regrets == expected);
}
