// From a click to the picture: what the arranger waits for when a shape is kept, taken back or
// another chord is selected. The window is shown on a screen of its own, and what a click
// changes is painted there as on any screen.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "tests/bench/orquit.h"
#include "tests/places.h"
#include "ui/engine.h"
#include "ui/melodyeditor.h"
#include "ui/melodylane.h"
#include "ui/noteediting.h"
#include "ui/session.h"
#include "ui/theme.h"
#include "ui/workbench.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QKeyEvent>

#include <algorithm>
#include <chrono>
#include <ctime>
#include <vector>

namespace {

tune::Tune demoTune(std::size_t place)
{
    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = orQuit(files::readTextFile(path));
    auto const entries = orQuit(files::abcTunes(text));
    return orQuit(files::readAbc(text, entries.at(place), path));
}

// The demo tune over and over, until it has so many chords.
tune::Tune longTune(std::size_t place, std::size_t chords)
{
    tune::Tune tune = demoTune(place);
    tune::Bars const once = tune.bars;
    auto const count = [&] {
        std::size_t sum = 0;
        for (tune::Bar const& bar : tune.bars) sum += bar.chords.size();
        return sum;
    };
    for (int i = 0; count() < chords; ++i) {
        tune::Bar bar = once[tune::BarIndex(i % once.size())];
        bar.number = tune.bars.size() + 1;
        bar.endings.clear();
        bar.repeatOpens = bar.repeatCloses = false;
        if (bar.upbeat.wholes > music::Rational(0)) continue;
        tune.bars.push_back(std::move(bar));
    }
    return tune;
}

struct Window {
    files::Tables tables = orQuit(files::readTables(SALLOW_SHARED_DIR));
    ui::Session session;
    ui::Workbench workbench;

    explicit Window(tune::Tune const& tune)
        : session(ui::coreEngine(),
                  proposal::Brief{tune, orQuit(files::harpFrom(tables, "floor34", "Eb")),
                                  orQuit(files::handFrom(tables, "medium")),
                                  orQuit(files::levelFrom(tables, 3)), tables.book,
                                  tables.styles.front()}),
          workbench(session, tables)
    {
        workbench.resize(1440, 900);
        workbench.show();
        QCoreApplication::processEvents();
        session.open(tune);
        paint();
    }

    static void paint()
    {
        // What is laid out anew may ask to be painted once more.
        for (int round = 0; round < 2; ++round) QCoreApplication::sendPostedEvents();
    }
};

double atShare(std::vector<double> sorted, double share)
{
    std::ranges::sort(sorted);
    auto const last = static_cast<double>(sorted.size() - 1);
    return sorted.empty() ? 0 : sorted[static_cast<std::size_t>(share * last + 0.5)];
}

// The times of single clicks, of which the slowest hundredth is felt.
class Stopwatch {
public:
    template<typename F>
    void time(F const& click)
    {
        std::clock_t const cpuBegin = std::clock();
        auto const begin = std::chrono::steady_clock::now();
        click();
        std::chrono::duration<double, std::milli> const took =
            std::chrono::steady_clock::now() - begin;
        m_ms.push_back(took.count());
        m_cpuMs.push_back(1000.0 * static_cast<double>(std::clock() - cpuBegin) /
                          CLOCKS_PER_SEC);
    }
    void tell(benchmark::State& state) const
    {
        state.counters["p50_ms"] = atShare(m_ms, 0.5);
        state.counters["p99_ms"] = atShare(m_ms, 0.99);
        state.counters["max_ms"] = atShare(m_ms, 1);
        state.counters["cpu50_ms"] = atShare(m_cpuMs, 0.5);
        state.counters["cpu99_ms"] = atShare(m_cpuMs, 0.99);
    }

private:
    std::vector<double> m_ms;
    std::vector<double> m_cpuMs; // of all threads: other processes weigh less on it
};

// At one chord after another the second best shape is kept, and the change taken back.
void chooseSecond(benchmark::State& state)
{
    Window window(longTune(static_cast<std::size_t>(state.range(0)),
                           static_cast<std::size_t>(state.range(1))));
    auto const positions = static_cast<int>(window.session.arrangement().positions.size());
    state.counters["positions"] = positions;
    Stopwatch watch;
    arrange::PositionIndex position = 0;
    for (auto _ : state) {
        state.PauseTiming();
        position = arrange::PositionIndex((position.value() + 7) % positions);
        window.session.select(position);
        Window::paint();
        state.ResumeTiming();
        watch.time([&] {
            window.session.chooseRanked(1);
            Window::paint();
        });
        state.PauseTiming();
        window.session.undoStack().undo();
        Window::paint();
        state.ResumeTiming();
    }
    watch.tell(state);
}

void selectNext(benchmark::State& state)
{
    Window window(longTune(static_cast<std::size_t>(state.range(0)), 64));
    auto const positions = static_cast<int>(window.session.arrangement().positions.size());
    Stopwatch watch;
    arrange::PositionIndex position = 0;
    for (auto _ : state) {
        position = arrange::PositionIndex((position.value() + 1) % positions);
        watch.time([&] {
            window.session.select(position);
            Window::paint();
        });
    }
    watch.tell(state);
}

// One note after another is typed into a tune of so many bars, up to the repainted arrangement:
// to be under 100 ms for 64 bars.
void typeNote(benchmark::State& state)
{
    tune::Tune tune = longTune(static_cast<std::size_t>(state.range(0)), 1);
    tune::Bars const once = tune.bars;
    for (int i = 0; tune.bars.size() < 64; ++i) {
        tune::Bar bar = once[tune::BarIndex(1 + i % (once.size() - 1))];
        bar.endings.clear();
        bar.repeatOpens = bar.repeatCloses = bar.endingCloses = false;
        bar.number = tune.bars.size();
        tune.bars.push_back(std::move(bar));
    }
    tune.bars.resize(64);
    Window window(tune);
    ui::NoteEditing notes(window.workbench, window.session);
    notes.openPane();
    Window::paint();
    state.counters["bars"] = static_cast<double>(window.session.brief().tune.bars.size());
    Stopwatch watch;
    int typed = 0;
    for (auto _ : state) {
        Qt::Key const key = ++typed % 3 == 0 ? Qt::Key_A : typed % 3 == 1 ? Qt::Key_G : Qt::Key_B;
        watch.time([&] {
            QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier,
                            QString(QChar(static_cast<char16_t>(key))).toLower());
            QCoreApplication::sendEvent(notes.pane()->lane(), &press);
            Window::paint();
        });
    }
    state.counters["steps"] = window.session.undoStack().count();
    watch.tell(state);
}

void openTune(benchmark::State& state)
{
    auto const tune = demoTune(static_cast<std::size_t>(state.range(0)));
    Window window(tune);
    for (auto _ : state) {
        window.session.open(tune);
        Window::paint();
    }
}

BENCHMARK(chooseSecond)
    ->ArgNames({"demo", "chords"})
    ->ArgsProduct({{0, 1, 2}, {16, 64}})
    ->Iterations(300)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(selectNext)->ArgName("demo")->DenseRange(0, 2)->Iterations(300)->Unit(
    benchmark::kMillisecond);
BENCHMARK(typeNote)->ArgName("demo")->DenseRange(0, 2)->Iterations(60)->Unit(
    benchmark::kMillisecond);
BENCHMARK(openTune)->ArgName("demo")->DenseRange(0, 2)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    ui::dress(application, ui::Theme::Light);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
