// Times of the exact solver by positions and candidates, on random costs.

#include "core/arrange/solve.h"
#include "tests/solve/lattices.h"

#include <benchmark/benchmark.h>

namespace {

// Costs up to sixty points, as in tunes.
constexpr int dearest = 60000;

arrange::Lattice latticeOf(benchmark::State const& state)
{
    std::mt19937 source(1);
    return lattices::random(source,
                            std::vector<std::size_t>(static_cast<std::size_t>(state.range(0)),
                                                     static_cast<std::size_t>(state.range(1))),
                            dearest);
}

void sizes(benchmark::internal::Benchmark* bench)
{
    bench->ArgNames({"positions", "candidates"})->Unit(benchmark::kMillisecond);
    for (auto [positions, candidates] : {std::pair{12, 20},
                                         {32, 10},
                                         {32, 50},
                                         {32, 200},
                                         {64, 200},
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
}
BENCHMARK(solve)->Apply(sizes);

// The same after the lock of the middle position has changed.
void solveAfterLock(benchmark::State& state)
{
    arrange::Lattice lattice = latticeOf(state);
    arrange::Tables tables = arrange::tables(lattice);
    std::size_t const middle = lattice.candidates.size() / 2;
    for (auto _ : state) {
        lattice.locks[middle] = lattice.locks[middle] ? std::nullopt : std::optional<int>(0);
        tables = arrange::tablesAfterLock(lattice, std::move(tables), middle);
        benchmark::DoNotOptimize(arrange::solved(lattice, tables));
    }
}
BENCHMARK(solveAfterLock)->Apply(sizes);

void tenBest(benchmark::State& state)
{
    arrange::Lattice const lattice = latticeOf(state);
    for (auto _ : state) benchmark::DoNotOptimize(arrange::bestChoices(lattice, 10));
}
BENCHMARK(tenBest)->Apply(sizes);

} // namespace
