#include "core/arrange/solve.h"
#include "tests/reference/latticenumbers.h"
#include "tests/solve/lattices.h"

#include <catch2/catch.hpp>

using arrange::Lattice;

namespace {

reference::LatticeNumbers numbersOf(Lattice const& lattice)
{
    reference::LatticeNumbers out;
    for (arrange::PositionIndex const i : lattice.candidates.indices()) {
        out.own.emplace_back();
        for (auto const& candidate : lattice.candidates[i])
            out.own.back().push_back(candidate.cost);
        auto const& lock = lattice.locks[i];
        out.locked.push_back(lock ? std::optional(lock->value()) : std::nullopt);
        if (i == 0) continue;
        out.pairs.emplace_back();
        for (arrange::CandidateIndex const a : lattice.candidates[i - 1].indices()) {
            out.pairs.back().emplace_back();
            for (arrange::CandidateIndex const b : lattice.candidates[i].indices())
                out.pairs.back().back().push_back(lattice.pair(i - 1, a, b));
        }
    }
    return out;
}

} // namespace

TEST_CASE("An integer program finds the same least cost on random lattices", "[cbc]")
{
    // COIN-OR branch and cut; sizes that it solves in well under a second.
    if (!reference::cbcIsThere()) {
        WARN("SKIPPED: cbc is not installed: not compared with an integer program");
        return;
    }
    std::mt19937 source(31);
    auto const sizes =
        GENERATE(std::vector<std::size_t>(12, 20), std::vector<std::size_t>(32, 10),
                 std::vector<std::size_t>{1, 7, 1, 30, 2, 9});
    Lattice lattice = lattices::random(source, sizes, 5000);
    lattice.locks[3] = lattices::oneOf(source, lattice.candidates[3]);
    auto const numbers = numbersOf(lattice);
    auto const choice = reference::choiceByCbc(numbers);
    REQUIRE(choice);
    CHECK(choice->at(3) == lattice.locks[3]);
    CHECK(reference::costOf(numbers, *choice) == arrange::solved(lattice).best.cost);
}
