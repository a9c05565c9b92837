// Times of the exact solver by positions and candidates, on random costs.

#include "core/arrange/solve.h"
#include "tests/reference/latticenumbers.h"

#include <benchmark/benchmark.h>

#include <sys/resource.h>

#include <chrono>
#include <random>

namespace {

// Costs up to sixty points, as in tunes; one table after the other, so that no more memory is
// used than a lattice has.
constexpr unsigned dearest = 60000;

arrange::Lattice latticeOf(benchmark::State const& state)
{
    auto const positions = static_cast<std::size_t>(state.range(0));
    auto const candidates = static_cast<std::size_t>(state.range(1));
    std::mt19937 source(1);
    auto const cost = [&] { return arrange::Points(source() % (dearest + 1)); };
    arrange::Lattice lattice;
    std::vector<arrange::Points> table(candidates * candidates);
    for (std::size_t i = 0; i < positions; ++i) {
        arrange::Candidates list(static_cast<int>(candidates), {});
        for (arrange::Candidate& c : list) c.cost = cost();
        lattice.candidates.push_back(std::move(list));
        if (i == 0) continue;
        for (arrange::Points& c : table) c = cost();
        lattice.pairs.emplace_back(table, candidates);
    }
    lattice.positions.resize(lattice.candidates.size());
    lattice.locks.resize(lattice.candidates.size());
    return lattice;
}

// The most memory that this program has had, in millions of bytes: run one benchmark alone.
double peakMegabytes()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) * 1024 / 1e6;
}

void sizes(benchmark::internal::Benchmark* bench)
{
    bench->ArgNames({"positions", "candidates"})->Unit(benchmark::kMillisecond);
    for (auto [positions, candidates] : {std::pair{12, 20},
                                         {32, 10},
                                         {32, 50},
                                         {32, 200},
                                         {64, 200},
                                         {200, 256},
                                         {500, 200},
                                         {2000, 50},
                                         {2000, 200}})
        bench->Args({positions, candidates});
}

// Best choice and every regret.
void solve(benchmark::State& state)
{
    arrange::Lattice const lattice = latticeOf(state);
    for (auto _ : state) benchmark::DoNotOptimize(arrange::solved(lattice));
    state.counters["peak_MB"] = peakMegabytes();
}
BENCHMARK(solve)->Apply(sizes);

// The same after the lock of the middle position has changed.
void solveAfterLock(benchmark::State& state)
{
    arrange::Lattice lattice = latticeOf(state);
    arrange::CostTables tables = arrange::tables(lattice);
    arrange::PositionIndex const middle(lattice.candidates.size() / 2);
    for (auto _ : state) {
        lattice.locks[middle] =
            lattice.locks[middle] ? std::nullopt : std::optional<arrange::CandidateIndex>(0);
        tables = arrange::tablesAfterLock(lattice, std::move(tables), middle);
        benchmark::DoNotOptimize(arrange::solved(lattice, tables));
    }
}
BENCHMARK(solveAfterLock)->Apply(sizes);

// The same lattice as an integer program, and how many times longer that takes.
void solveByCbc(benchmark::State& state)
{
    if (!reference::cbcIsThere()) {
        state.SkipWithError("cbc is not installed");
        return;
    }
    arrange::Lattice const lattice = latticeOf(state);
    reference::LatticeNumbers numbers;
    for (arrange::PositionIndex const i : lattice.candidates.indices()) {
        numbers.own.emplace_back();
        for (arrange::Candidate const& c : lattice.candidates[i])
            numbers.own.back().push_back(c.cost);
        numbers.locked.emplace_back();
        if (i == 0) continue;
        numbers.pairs.emplace_back();
        for (arrange::CandidateIndex const a : lattice.candidates[i - 1].indices()) {
            numbers.pairs.back().emplace_back();
            for (arrange::CandidateIndex const b : lattice.candidates[i].indices())
                numbers.pairs.back().back().push_back(lattice.pair(i - 1, a, b));
        }
    }
    using Clock = std::chrono::steady_clock;
    constexpr int rounds = 200;
    auto const begun = Clock::now();
    for (int i = 0; i < rounds; ++i) benchmark::DoNotOptimize(arrange::solved(lattice));
    double const ours = std::chrono::duration<double>(Clock::now() - begun).count() / rounds;
    double theirs = 0;
    bool same = true;
    for (auto _ : state) {
        auto const from = Clock::now();
        auto const choice = reference::choiceByCbc(numbers);
        theirs = std::chrono::duration<double>(Clock::now() - from).count();
        same = same && choice &&
               reference::costOf(numbers, *choice) == arrange::solved(lattice).best.cost;
    }
    state.counters["times_ours"] = theirs / ours;
    if (!same) state.SkipWithError("cbc finds another optimum");
}
BENCHMARK(solveByCbc)
    ->ArgNames({"positions", "candidates"})
    ->Args({12, 20})
    ->Args({32, 10})
    ->Args({32, 50})
    ->Iterations(1)
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

void tenBest(benchmark::State& state)
{
    arrange::Lattice const lattice = latticeOf(state);
    for (auto _ : state) benchmark::DoNotOptimize(arrange::bestChoices(lattice, 10));
}
BENCHMARK(tenBest)->Apply(sizes);

} // namespace
