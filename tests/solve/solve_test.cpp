#include "core/arrange/solve.h"
#include "tests/solve/lattices.h"

#include <catch2/catch.hpp>

using namespace arrange;
using lattices::allByCost;
using lattices::lockSome;
using lattices::regretsByTryingAll;
using Taken = base::List<PositionIndex, CandidateIndex>;

namespace {

// The worked example of the project's science notes: three positions of two candidates, all
// eight totals written out by hand there.
Lattice workedExample()
{
    return lattices::fromNumbers({{3, 1}, {2, 2}, {0, 4}},
                                 {{{0, 5}, {4, 1}}, {{1, 3}, {2, 0}}});
}

std::vector<Points> costs(std::vector<Choice> const& choices)
{
    std::vector<Points> out;
    for (Choice const& choice : choices) out.push_back(choice.cost);
    return out;
}

} // namespace

TEST_CASE("The worked example has two best choices and the one with lower numbers is taken",
          "[solve]")
{
    Solution const solution = solved(workedExample());
    CHECK(solution.best == Choice{{0, 0, 0}, 6});
    CHECK(solution.regrets == base::List<PositionIndex, Costs>{{0, 0}, {0, 0}, {0, 2}});
}

TEST_CASE("The eight choices of the worked example come cheapest first", "[solve]")
{
    auto const choices = bestChoices(workedExample(), 20);
    CHECK(costs(choices) == std::vector<Points>{6, 6, 8, 8, 12, 12, 14, 14});
    CHECK(choices[1].candidates == Taken{1, 1, 0});
    CHECK(choices[2].candidates == Taken{1, 0, 0});
    CHECK(choices[3].candidates == Taken{1, 1, 1});
}

TEST_CASE("Best choice and regrets equal those found by trying everything", "[solve]")
{
    std::mt19937 source(20240611); // fixed, so that a failure can be seen again
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        int const largest = round % 2 == 0 ? 2 : 5000; // many ties, few ties
        Lattice lattice = lattices::random(source, lattices::randomSizes(source), largest);
        if (round % 3 == 0) lockSome(lattice, source);
        Solution const solution = solved(lattice);
        CHECK(solution.best == allByCost(lattice).front());
        CHECK(solution.regrets == regretsByTryingAll(lattice));
    }
}

TEST_CASE("The k best choices equal the first k of all, ties in order of candidate numbers",
          "[solve]")
{
    std::mt19937 source(7);
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        int const largest = round % 2 == 0 ? 1 : 300;
        Lattice lattice = lattices::random(source, lattices::randomSizes(source), largest);
        if (round % 3 == 0) lockSome(lattice, source);
        auto everything = allByCost(lattice);
        auto const k = static_cast<std::size_t>(1 + source() % 40);
        if (everything.size() > k) everything.resize(k);
        CHECK(bestChoices(lattice, static_cast<int>(k)) == everything);
    }
}

TEST_CASE("A lock is kept, and lifting it would save what its negative regret says", "[solve]")
{
    Lattice lattice = workedExample();
    lattice.locks[2] = CandidateIndex(1);
    Solution const solution = solved(lattice);
    CHECK(solution.best == Choice{{1, 1, 1}, 8}); // totals 001 12, 011 14, 101 14, 111 8
    CHECK(solution.regrets[2] == Costs{-2, 0});
}

TEST_CASE("After one lock more or less, half of each table stays and the answer is the same",
          "[solve]")
{
    std::mt19937 source(11);
    for (int round = 0; round < 200; ++round) {
        CAPTURE(round);
        Lattice lattice = lattices::random(source, lattices::randomSizes(source), 9);
        lockSome(lattice, source);
        CostTables const before = tables(lattice);
        PositionIndex const position(
            static_cast<int>(source() % static_cast<unsigned>(lattice.candidates.size())));
        if (lattice.locks[position])
            lattice.locks[position].reset();
        else
            lattice.locks[position] = CandidateIndex(0);
        CHECK(tablesAfterLock(lattice, before, position) == tables(lattice));
    }
}

TEST_CASE("Costs far apart are still added exactly", "[solve]")
{
    // Sums beyond 32 bits, where the narrow inner loop must not be used.
    Points const far = Points{1} << 40;
    Points const edge = PairTable::largest - 1;
    Lattice const lattice = lattices::fromNumbers(
        {{far, 0, -far}, {3, far}, {0, 1}},
        {{{0, -edge}, {edge, -edge}, {edge, edge}}, {{edge, -edge}, {-edge, 0}}});
    CHECK(solved(lattice).best == allByCost(lattice).front());
    CHECK(solved(lattice).regrets == regretsByTryingAll(lattice));
}

TEST_CASE("An arrangement without positions costs nothing", "[solve]")
{
    CHECK(solved(Lattice{}).best == Choice{});
    CHECK(bestChoices(Lattice{}, 3).empty());
}

TEST_CASE("Regrets are exact where every position offers two hundred candidates", "[solve]")
{
    // The regret of the chosen is 0, no regret is below it, and holding the candidate with the
    // least other regret costs exactly that much more.
    std::mt19937 source(5);
    Lattice lattice = lattices::random(source, std::vector<std::size_t>(12, 200), 100000);
    Solution const solution = solved(lattice);
    CHECK(lattices::costOf(lattice, solution.best.candidates) == solution.best.cost);
    for (PositionIndex i = 0; i < 12; ++i) {
        auto const& regrets = solution.regrets[i];
        CHECK(regrets[solution.best.candidates[i]] == 0);
        CHECK(*std::min_element(regrets.begin(), regrets.end()) == 0);
        CandidateIndex const other = lattices::oneOf(source, lattice.candidates[i]);
        lattice.locks[i] = other;
        CHECK(solved(lattice).best.cost - solution.best.cost == regrets[other]);
        lattice.locks[i].reset();
    }
}

TEST_CASE("A pair table gives back every cost, near each other, far apart, or unplayable",
          "[solve]")
{
    Points const far = GENERATE(Points{65534}, Points{65535}, Points{65536}, unplayablePair);
    Points const base = GENERATE(Points{0}, Points{-70000}, Points{12});
    Points const other = GENERATE(Points{3}, Points{500000}); // a second one out of line
    std::vector<Points> costs;
    for (Points cost : {Points{0}, far, Points{7}, other, far, Points{65534}})
        costs.push_back(base + cost);
    PairTable const table(costs, 2);
    CHECK(table.rows() == 3);
    CHECK(table.columns() == 2);
    CHECK(table.costs() == costs);
    CHECK(table.at(2, 0) == base + far);
    CHECK(table.isNarrow() == (other == 3 || far < 65535));
}

TEST_CASE("Copies of a pair table share their numbers", "[solve]")
{
    PairTable const table(std::vector<Points>{1, 2, 3}, 3);
    PairTable const copy = table;
    CHECK(copy.sharesWith(table));
    CHECK(copy.at(0, 2) == 3);
    CHECK_FALSE(PairTable(std::vector<Points>{1, 2, 3}, 3).sharesWith(table));
}
