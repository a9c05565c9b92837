// Times of building the lattice: 32 bars with two chords each, from the shipped tables, at
// every level.

#include "core/arrange/build.h"
#include "core/files/tables/tables.h"
#include "tests/arrange/scenes.h"
#include "tests/places.h"

#include <benchmark/benchmark.h>

#include <array>
#include <string>

namespace {

// Invented: quavers that wander over two octaves, a chord for each half bar.
std::string wanderingTune()
{
    constexpr std::array chords{"G", "C", "D", "Em", "Am", "G", "D7", "G"};
    constexpr std::array notes{"B4", "C5", "D5", "B4", "A4", "G4", "F#4", "G4", "E5", "D5"};
    constexpr std::size_t halfBars = 64;
    std::string text;
    std::size_t note = 0;
    for (std::size_t half = 0; half < halfBars; ++half) {
        text += std::string("[") + chords[half % chords.size()] + "] ";
        for (int quaver = 0; quaver < 4; ++quaver)
            text += std::string(notes[(note++ * 7 + half) % notes.size()]) + ":1/8 ";
        if (half % 2 == 1) text += "| ";
    }
    return text;
}

scenes::Example exampleAt(files::Tables const& tables, int level)
{
    scenes::Example x = scenes::example(wanderingTune());
    x.harp = *files::harpFrom(tables, "floor34", "Eb");
    x.hand = *files::handFrom(tables, "medium");
    x.level = *files::levelFrom(tables, level);
    x.book = tables.book;
    x.weights = tables.styles.front();
    x.levers.setup = *harp::settingFor(x.harp, x.tune.key);
    return x;
}

void buildLattice(benchmark::State& state)
{
    auto const tables = files::readTables(places::shared());
    if (!tables) {
        state.SkipWithError("the tables of shared/ do not read");
        return;
    }
    scenes::Example const x = exampleAt(*tables, static_cast<int>(state.range(0)));
    arrange::Positions const positions = x.positions();
    std::size_t candidates = 0;
    for (auto _ : state) {
        arrange::Lattice const lattice = arrange::latticeFor(x.scene(), positions);
        candidates = 0;
        for (auto const& list : lattice.candidates) candidates += list.size();
        benchmark::DoNotOptimize(lattice);
    }
    state.counters["positions"] = static_cast<double>(positions.size());
    state.counters["candidates"] =
        static_cast<double>(candidates) / static_cast<double>(positions.size());
}
BENCHMARK(buildLattice)->ArgName("level")->DenseRange(1, 5)->Unit(benchmark::kMillisecond);

} // namespace
