// How long chords and key take to be found. Target: 32 bars in 30 ms, so that they follow while
// the arranger sets one after the other.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/harmony/findchords.h"

#include <benchmark/benchmark.h>

#include <string>

namespace {

harmony::Learned const& learned()
{
    static files::Tables const tables = *files::readTables(SALLOW_SHARED_DIR);
    return tables.harmony;
}

// Invented; eight bars again and again.
tune::Tune reel(int bars)
{
    std::string abc = "X:1\nM:4/4\nL:1/8\nK:G\n";
    for (int i = 0; i < bars; i += 8)
        abc += "GABc dBGB|cedc BAGA|GABc dgfg|edcB A2FA|GABc dBGB|cedc BAGA|gfed cBAF|AGFA G4||\n";
    return *files::readAbc(abc, files::abcTunes(abc)->front(), "bench");
}

void findChords(benchmark::State& state)
{
    tune::Tune const tune = reel(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(harmony::suggestChords(learned(), tune));
}
BENCHMARK(findChords)->Arg(32)->Arg(64)->Arg(256)->Unit(benchmark::kMillisecond);

void findKey(benchmark::State& state)
{
    tune::Tune const tune = reel(32);
    for (auto _ : state) benchmark::DoNotOptimize(harmony::foundKey(learned().keys, tune));
}
BENCHMARK(findKey)->Unit(benchmark::kMillisecond);

void readTables(benchmark::State& state)
{
    for (auto _ : state) benchmark::DoNotOptimize(files::readTables(SALLOW_SHARED_DIR));
}
BENCHMARK(readTables)->Unit(benchmark::kMillisecond);

} // namespace
