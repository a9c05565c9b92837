// From a click to the picture: what the arranger waits for when a variant is committed, taken
// back or another chord is selected. The window is painted whole into an image, off screen.

#include "core/files/abc/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "tests/places.h"
#include "ui/engine.h"
#include "ui/session.h"
#include "ui/theme.h"
#include "ui/workbench.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QImage>

#include <cstdlib>
#include <iostream>

namespace {

template<typename T>
T orQuit(base::Result<T> result)
{
    if (result) return *std::move(result);
    std::cerr << base::sentence(result.error()) << '\n';
    std::exit(EXIT_FAILURE);
}

tune::Tune demoTune(std::size_t place)
{
    std::string const path = places::shared() + "/demo/demo.abc";
    std::string const text = orQuit(files::readTextFile(path));
    auto const entries = orQuit(files::abcTunes(text));
    return orQuit(files::readAbc(text, entries.at(place), path));
}

struct Window {
    files::Tables tables = orQuit(files::readTables(places::shared()));
    ui::Session session;
    ui::Workbench workbench;
    QImage image{QSize(1440, 900), QImage::Format_RGB32};

    explicit Window(std::size_t tune)
        : session(ui::coreEngine(),
                  proposal::Brief{
                      demoTune(tune), orQuit(files::harpFrom(tables, "floor34", "Eb")),
                      orQuit(files::handFrom(tables, "medium")),
                      orQuit(files::levelFrom(tables, 3)), tables.book, tables.styles.front()}),
          workbench(session, tables)
    {
        workbench.setAttribute(Qt::WA_DontShowOnScreen);
        workbench.resize(image.size());
        workbench.show();
        session.open(demoTune(tune));
        paint();
    }

    void paint()
    {
        QCoreApplication::sendPostedEvents();
        workbench.render(&image);
    }
};

void chooseSecond(benchmark::State& state)
{
    Window window(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) {
        window.session.chooseRanked(1);
        window.paint();
        state.PauseTiming();
        window.session.undoStack().undo();
        window.paint();
        state.ResumeTiming();
    }
}

void selectNext(benchmark::State& state)
{
    Window window(static_cast<std::size_t>(state.range(0)));
    int position = 0;
    for (auto _ : state) {
        position = 1 - position;
        window.session.select(position);
        window.paint();
    }
}

void openTune(benchmark::State& state)
{
    auto const tune = static_cast<std::size_t>(state.range(0));
    Window window(tune);
    for (auto _ : state) {
        window.session.open(demoTune(tune));
        window.paint();
    }
}

BENCHMARK(chooseSecond)->ArgName("demo")->DenseRange(0, 2)->Unit(benchmark::kMillisecond);
BENCHMARK(selectNext)->ArgName("demo")->DenseRange(0, 2)->Unit(benchmark::kMillisecond);
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
