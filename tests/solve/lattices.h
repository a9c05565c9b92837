#pragma once

#include "core/arrange/lattice.h"

#include <algorithm>
#include <random>
#include <vector>

// Lattices of bare numbers, to try the solver on, and the plainest possible solver to compare
// it with.
namespace lattices {

using arrange::CandidateIndex;
using arrange::Choice;
using arrange::Lattice;
using arrange::Points;
using arrange::PositionIndex;

inline Lattice fromNumbers(std::vector<std::vector<Points>> const& own,
                           std::vector<std::vector<std::vector<Points>>> const& between)
{
    Lattice lattice;
    for (auto const& costs : own) {
        arrange::Candidates list;
        for (Points cost : costs) list.push_back({{}, {}, cost});
        lattice.candidates.push_back(list);
    }
    for (auto const& table : between) {
        std::vector<Points> flat;
        for (auto const& row : table) flat.insert(flat.end(), row.begin(), row.end());
        lattice.pairs.emplace_back(flat, table.front().size());
    }
    lattice.positions.resize(lattice.candidates.size());
    lattice.locks.resize(lattice.candidates.size());
    return lattice;
}

// Costs from 0 to `largest`; a small one makes many ties.
inline Lattice random(std::mt19937& source, std::vector<std::size_t> const& sizes, int largest)
{
    auto const cost = [&] { return Points(source() % static_cast<unsigned>(largest + 1)); };
    std::vector<std::vector<Points>> own;
    std::vector<std::vector<std::vector<Points>>> between;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        own.emplace_back(sizes[i]);
        for (Points& c : own.back()) c = cost();
        if (i == 0) continue;
        between.emplace_back(sizes[i - 1], std::vector<Points>(sizes[i]));
        for (auto& row : between.back())
            for (Points& c : row) c = cost();
    }
    return fromNumbers(own, between);
}

inline std::vector<std::size_t> randomSizes(std::mt19937& source)
{
    std::vector<std::size_t> sizes(1 + source() % 6);
    for (auto& size : sizes) size = 1 + source() % 4;
    return sizes;
}

inline Points costOf(Lattice const& lattice,
                     base::List<PositionIndex, CandidateIndex> const& candidates)
{
    Points cost = 0;
    for (PositionIndex const i : candidates.indices()) {
        cost += lattice.candidates[i][candidates[i]].cost;
        if (i > 0) cost += lattice.pair(i - 1, candidates[i - 1], candidates[i]);
    }
    return cost;
}

// Every choice that keeps the locks, in order of candidate numbers from the first position.
inline std::vector<Choice> all(Lattice const& lattice)
{
    using Begun = base::List<PositionIndex, CandidateIndex>;
    std::vector<Begun> begun{Begun()};
    for (PositionIndex const i : lattice.candidates.indices()) {
        std::vector<Begun> longer;
        for (auto const& choice : begun)
            for (CandidateIndex const b : lattice.candidates[i].indices()) {
                if (lattice.locks[i] && *lattice.locks[i] != b) continue;
                longer.push_back(choice);
                longer.back().push_back(b);
            }
        begun = std::move(longer);
    }
    std::vector<Choice> out;
    for (auto const& choice : begun) out.push_back({choice, costOf(lattice, choice)});
    return out;
}

// Cheapest first; equal costs stay in order of candidate numbers.
inline std::vector<Choice> allByCost(Lattice const& lattice)
{
    std::vector<Choice> out = all(lattice);
    std::stable_sort(out.begin(), out.end(),
                     [](Choice const& a, Choice const& b) { return a.cost < b.cost; });
    return out;
}

// By trying all: the least total with one candidate held, the lock of its position lifted.
inline base::List<PositionIndex, arrange::Costs> regretsByTryingAll(Lattice const& lattice)
{
    Points const best = allByCost(lattice).front().cost;
    base::List<PositionIndex, arrange::Costs> out;
    for (PositionIndex const i : lattice.candidates.indices()) {
        out.emplace_back();
        for (CandidateIndex const a : lattice.candidates[i].indices()) {
            Lattice held = lattice;
            held.locks[i] = a;
            out.back().push_back(allByCost(held).front().cost - best);
        }
    }
    return out;
}

// Any of a list.
inline CandidateIndex oneOf(std::mt19937& source, arrange::CandidateList const& list)
{
    return CandidateIndex(static_cast<int>(source() % static_cast<unsigned>(list.size())));
}

inline void lockSome(Lattice& lattice, std::mt19937& source)
{
    for (PositionIndex const i : lattice.candidates.indices())
        if (source() % 3 == 0) lattice.locks[i] = oneOf(source, lattice.candidates[i]);
}

} // namespace lattices
