#pragma once

#include "core/harmony/chordtable.h"

#include <vector>

namespace harmony {

// Logarithms of probabilities here are whole numbers of 1/nat nats, so that every machine finds
// the same chords.
inline constexpr int nat = 1024;
inline constexpr int impossible = -200 * nat;

// A chain of units, each of which takes one of the states.
struct Chain {
    std::size_t states = 0;
    std::vector<std::vector<int>> own; // [unit][state]: what speaks for it, in 1/nat nats
    std::vector<int> places;           // [unit]: which of `steps` leads into it
    std::vector<std::vector<int>> steps; // [place][from * states + to]
};

// How likely each state is in each unit, all that comes before and after considered (forward
// and backward sums). Exact but for rounding to 1/nat; each unit adds up to 1.
std::vector<std::vector<int>> logLikelihoods(Chain const& chain);

// Sum and normalisation in logarithms: of a list, and of two numbers.
int logSum(int a, int b);
void normalise(std::vector<int>& logs);

// e^(log/nat), for the reader.
double probability(int log);

// The chain of a tune by the table, before wishes and clamps.
Chain chainOf(ChordTable const& table, std::vector<Unit> const& units,
              std::vector<Heard> const& heard);

} // namespace harmony
