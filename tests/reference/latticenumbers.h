#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

// The numbers of a lattice.json and nothing else: what an outside solver is given.
namespace reference {

using Cost = std::int64_t;

struct LatticeNumbers {
    std::vector<std::vector<Cost>> own;                // [position][candidate]
    std::vector<std::vector<std::vector<Cost>>> pairs; // [position][a][b]
    std::vector<std::optional<int>> locked;
    std::vector<std::vector<Cost>> regrets; // [position][candidate], as the file has them
    std::vector<int> bestChoice;
    Cost bestCost = 0;
    friend bool operator==(LatticeNumbers const&, LatticeNumbers const&) = default;
};

LatticeNumbers latticeNumbers(std::string const& latticeJson);

// The same from a lattice.bin, read by the table in DEVELOPERS.md and by nothing of the
// program. An empty value where the bytes end too early or are no such file.
LatticeNumbers latticeNumbersOfBinary(std::string const& bytes);

Cost costOf(LatticeNumbers const& numbers, std::vector<int> const& choice);

// The least cost of all choices that keep the locks, each one added up: for small lattices.
Cost leastByTryingAll(LatticeNumbers const& numbers);

// The least cost, and by how much the cheapest choice through each candidate is dearer: two
// sweeps over tables of plain sums, for lattices without locks.
struct PlainSolution {
    Cost least = 0;
    std::vector<std::vector<Cost>> regrets;
};
PlainSolution plainlySolved(LatticeNumbers const& numbers);

// Whether the cbc program (COIN-OR branch and cut) can be called here.
bool cbcIsThere();

// The choice that cbc finds for the lattice as an integer program (one binary for each
// candidate, one flow for each pair); none when cbc does not report an optimum.
std::optional<std::vector<int>> choiceByCbc(LatticeNumbers const& numbers);

} // namespace reference
