// What a teacher waits for: a handout of three patterns, and the drill of a tune.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/proposal/proposal.h"
#include "core/sheet/papers/drill.h"
#include "core/sheet/papers/handout.h"
#include "tests/bench/orquit.h"
#include "tests/places.h"

#include <benchmark/benchmark.h>


namespace {

files::Tables const& tables()
{
    static files::Tables const read = orQuit(files::readTables(places::shared()));
    return read;
}

sheet::MusicFont const& font()
{
    static sheet::MusicFont const read = orQuit(
        files::musicFontFrom(orQuit(files::readTextFile(places::musicFont() + "/metadata.json"))));
    return read;
}

void handoutOfThree(benchmark::State& state)
{
    sheet::HandoutWish wish{orQuit(files::harpFrom(tables(), "floor34", "Eb")),
                            orQuit(files::handFrom(tables(), "medium")),
                            orQuit(files::levelFrom(tables(), 3)),
                            tables().book,
                            *music::keyFrom("G"),
                            {},
                            {},
                            {}};
    for (char const* name : {"1-5-8", "1-5-10", "1-5-8-9-10"})
        wish.patterns.push_back(orQuit(pattern::patternFrom(name)));
    font();
    for (auto _ : state) benchmark::DoNotOptimize(sheet::handout(wish, font(), {}));
}
BENCHMARK(handoutOfThree)->Unit(benchmark::kMillisecond);

void drillOfTune(benchmark::State& state)
{
    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = orQuit(files::readTextFile(path));
    auto const entries = orQuit(files::abcTunes(text));
    proposal::Brief brief;
    brief.tune = orQuit(files::readAbc(text, entries.front(), path));
    brief.harp = orQuit(files::harpFrom(tables(), "floor34", "Eb"));
    brief.hand = orQuit(files::handFrom(tables(), "medium"));
    brief.level = orQuit(files::levelFrom(tables(), 3));
    brief.book = tables().book;
    brief.weights = tables().styles.front();
    auto const proposal = orQuit(proposal::propose(brief));
    font();
    for (auto _ : state)
        benchmark::DoNotOptimize(sheet::drillSheet(proposal.arrangement, font(), {}));
}
BENCHMARK(drillOfTune)->Unit(benchmark::kMillisecond);

} // namespace
