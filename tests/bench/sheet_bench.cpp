// Times of the page: layout alone, layout and PDF, and the layout again after one chord has
// another pattern. Two chords a bar, eight notes a bar, fingers and brackets of both hands.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/proposal/proposal.h"
#include "core/sheet/sheet.h"
#include "tests/bench/orquit.h"
#include "tests/places.h"
#include "ui/paint/sheetfiles.h"
#include "ui/paint/sheetfonts.h"

#include <benchmark/benchmark.h>

#include <QGuiApplication>

#include <map>

namespace {

tune::Tune tuneOf(std::string const& text)
{
    auto const entries = orQuit(files::abcTunes(text));
    return orQuit(files::readAbc(text, entries.front(), "bench"));
}

tune::Tune longTune(int bars)
{
    std::string text = "X:1\nT:Bench\nM:4/4\nL:1/8\nQ:1/4=70\nK:G\n";
    for (int bar = 0; bar < bars; bar += 4)
        text += "\"G\"gfgd \"Em\"B2d2|\"C\"e2gf \"Am\"edc2|\"D\"f2a2 \"Bm\"fedB|"
                "\"C\"e2(gf) \"D7\"f2d2|\n";
    return tuneOf(text);
}

arrange::Arrangement const& arranged(int bars)
{
    static std::map<int, arrange::Arrangement> made;
    auto found = made.find(bars);
    if (found == made.end()) {
        static files::Tables const tables = orQuit(files::readTables(places::shared()));
        proposal::Brief brief;
        brief.tune = longTune(bars);
        brief.harp = orQuit(files::harpFrom(tables, "floor34", "Eb"));
        brief.hand = orQuit(files::handFrom(tables, "medium"));
        brief.level = orQuit(files::levelFrom(tables, 4));
        brief.book = tables.book;
        brief.weights = tables.styles.front();
        found = made.emplace(bars, orQuit(proposal::propose(brief)).arrangement).first;
    }
    return found->second;
}

sheet::MusicFont const& font()
{
    static sheet::MusicFont const read = orQuit(ui::musicFont());
    return read;
}

void layout(benchmark::State& state)
{
    auto const& arrangement = arranged(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(sheet::arrangementSheet(arrangement, font(), {}));
}
BENCHMARK(layout)->ArgName("bars")->Arg(32)->Arg(64)->Arg(500)->Unit(benchmark::kMillisecond);

void layoutAndPdf(benchmark::State& state)
{
    auto const& arrangement = arranged(static_cast<int>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(ui::pdfFile(sheet::arrangementSheet(arrangement, font(), {})));
}
BENCHMARK(layoutAndPdf)->ArgName("bars")->Arg(32)->Arg(500)->Unit(benchmark::kMillisecond);

void layoutAfterSwap(benchmark::State& state)
{
    arrange::Arrangement arrangement = arranged(static_cast<int>(state.range(0)));
    auto& voicing =
        arrangement.positions[arrange::PositionIndex(arrangement.positions.size() / 2)].voicing;
    auto const one = voicing;
    auto other = one;
    other.pattern = "1-5";
    other.notes.resize(std::min<std::size_t>(other.notes.size(), 1));
    bool swapped = false;
    for (auto _ : state) {
        swapped = !swapped;
        voicing = swapped ? other : one;
        benchmark::DoNotOptimize(sheet::arrangementSheet(arrangement, font(), {}));
    }
}
BENCHMARK(layoutAfterSwap)->ArgName("bars")->Arg(32)->Arg(500)->Unit(benchmark::kMillisecond);

// One bar of so many semiquavers, as no one would write it.
void hostileBar(benchmark::State& state)
{
    std::string text = "X:1\nT:One bar\nM:4/4\nL:1/16\nK:G\n\"G\"";
    for (int i = 0; i < state.range(0); ++i) text += i % 2 == 0 ? "G" : "^c";
    tune::Tune const tune = tuneOf(text + "|]\n");
    for (auto _ : state) benchmark::DoNotOptimize(sheet::leadSheet(tune, font(), {}));
}
BENCHMARK(hostileBar)->ArgName("notes")->Arg(1000)->Arg(20000)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
