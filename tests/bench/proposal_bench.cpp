// Times of whole proposals, of a click on a variant, and of the files that list them.

#include "core/files/abc/read.h"
#include "core/files/plan.h"
#include "core/files/tables/tables.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/proposal.h"
#include "tests/bench/orquit.h"
#include "tests/places.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>

namespace {

namespace fs = std::filesystem;

files::Tables const& tables()
{
    static files::Tables const read = orQuit(files::readTables(places::shared()));
    return read;
}

tune::Tune tuneOf(std::string const& text, std::size_t place)
{
    auto const entries = orQuit(files::abcTunes(text));
    return orQuit(files::readAbc(text, entries.at(place), "bench"));
}

tune::Tune demoReel()
{
    std::ifstream in(fs::path(places::shared()) / "demo" / "demo.abc", std::ios::binary);
    std::string const text{std::istreambuf_iterator<char>(in), {}};
    auto const entries = orQuit(files::abcTunes(text));
    for (std::size_t i = 0; i < entries.size(); ++i)
        if (tune::Tune tune = tuneOf(text, i); tune.rhythm == "reel") return tune;
    std::cerr << "there is no reel among the demo tunes\n";
    std::exit(EXIT_FAILURE);
}

// Thirty-two written bars, two chords in each.
tune::Tune longTune()
{
    std::string text = "X:1\nT:Thirty-two bars\nM:4/4\nL:1/8\nQ:1/4=90\nK:G\n";
    for (int round = 0; round < 8; ++round)
        text += "\"G\"g2d2 \"Em\"B2d2|\"C\"e2g2 \"Am\"e2c2|\"D\"f2a2 \"Bm\"f2d2|"
                "\"C\"e2g2 \"D7\"f2d2|\n";
    return tuneOf(text, 0);
}

proposal::Brief briefFor(tune::Tune tune, int level)
{
    files::Tables const& t = tables();
    return {std::move(tune),
            orQuit(files::harpFrom(t, "floor34", "Eb")),
            orQuit(files::handFrom(t, "medium")),
            orQuit(files::levelFrom(t, level)),
            t.book,
            t.styles.front()};
}

// Thirty-two written bars, two chords in each, of which no two are alike: what is not shared.
tune::Tune wanderingTune()
{
    constexpr std::array chords{"G", "C", "D", "Em", "Am", "G", "D7", "Bm", "C"};
    constexpr std::array notes{"B", "c", "d", "e", "A", "G", "F", "g", "a", "f"};
    constexpr std::size_t halfBars = 64;
    std::string text = "X:1\nT:Thirty-two bars\nM:4/4\nL:1/8\nQ:1/4=90\nK:G\n";
    std::size_t note = 0;
    for (std::size_t half = 0; half < halfBars; ++half) {
        text += fmt::format("\"{}\"", chords[half % chords.size()]);
        for (int quaver = 0; quaver < 4; ++quaver)
            text += notes[(note++ * 7 + half + half / 7) % notes.size()];
        if (half % 2 == 1) text += half % 8 == 7 ? "|\n" : "|";
    }
    return tuneOf(text, 0);
}

using MakeTune = tune::Tune (*)();

void propose(benchmark::State& state, MakeTune make)
{
    auto const brief = briefFor(make(), static_cast<int>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(orQuit(proposal::propose(brief)));
    auto const proposal = orQuit(proposal::propose(brief));
    std::size_t candidates = 0;
    for (auto const& list : proposal.lattice.candidates) candidates += list.size();
    state.counters["positions"] = static_cast<double>(proposal.lattice.positions.size());
    state.counters["candidates"] = static_cast<double>(candidates) /
                                   static_cast<double>(proposal.lattice.positions.size());
}
BENCHMARK_CAPTURE(propose, demo_reel, demoReel)
    ->ArgName("level")
    ->DenseRange(1, 5)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(propose, long_tune, longTune)
    ->ArgName("level")
    ->DenseRange(1, 5)
    ->Unit(benchmark::kMillisecond);

BENCHMARK_CAPTURE(propose, wandering_tune, wanderingTune)
    ->ArgName("level")
    ->DenseRange(1, 5)
    ->Unit(benchmark::kMillisecond);

// One candidate locked, and unlocked, in the middle of the tune: what a click asks of core.
void lockAndUnlock(benchmark::State& state, MakeTune make)
{
    auto proposal = orQuit(proposal::propose(briefFor(make(), 3)));
    arrange::PositionIndex const middle(
        static_cast<int>(proposal.lattice.positions.size() / 2));
    for (auto _ : state) {
        proposal = orQuit(proposal::withChoice(std::move(proposal), middle, 1, true));
        proposal = proposal::withoutLock(std::move(proposal), middle);
    }
}
BENCHMARK_CAPTURE(lockAndUnlock, demo_reel, demoReel)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(lockAndUnlock, long_tune, longTune)->Unit(benchmark::kMillisecond);

// Every key of a tune of 32 bars, each solved in full.
void rankKeys(benchmark::State& state, MakeTune make)
{
    auto const brief = briefFor(make(), static_cast<int>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(proposal::rankedKeys(brief));
    int solved = 0;
    for (auto const& key : proposal::rankedKeys(brief)) solved += key.cost ? 1 : 0;
    state.counters["keys"] = solved;
}
BENCHMARK_CAPTURE(rankKeys, demo_reel, demoReel)
    ->ArgName("level")
    ->DenseRange(1, 5, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(rankKeys, wandering_tune, wanderingTune)
    ->ArgName("level")
    ->DenseRange(1, 5, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(rankKeys, long_tune, longTune)
    ->ArgName("level")
    ->DenseRange(1, 5, 2)
    ->Unit(benchmark::kMillisecond);

void listVariants(benchmark::State& state, MakeTune make)
{
    auto const proposal = orQuit(proposal::propose(briefFor(make(), 3)));
    for (auto _ : state) benchmark::DoNotOptimize(proposal::variants(proposal, 3));
}
BENCHMARK_CAPTURE(listVariants, long_tune, longTune)->Unit(benchmark::kMillisecond);

void writePlan(benchmark::State& state, MakeTune make)
{
    auto const proposal = orQuit(proposal::propose(briefFor(make(), 3)));
    for (auto _ : state) benchmark::DoNotOptimize(files::planJson(proposal));
}
BENCHMARK_CAPTURE(writePlan, long_tune, longTune)->Unit(benchmark::kMillisecond);

void writeLattice(benchmark::State& state, MakeTune make)
{
    auto const proposal = orQuit(proposal::propose(briefFor(make(), 3)));
    for (auto _ : state) benchmark::DoNotOptimize(files::latticeJson(proposal));
}
BENCHMARK_CAPTURE(writeLattice, long_tune, longTune)->Unit(benchmark::kMillisecond);

} // namespace
