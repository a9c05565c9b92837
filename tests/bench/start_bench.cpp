// From the start of the real program to a tune that is seen on the screen, and the memory it
// then has. Needs a display of its own with nothing else on it, as Xvfb gives:
//   sallow_start_bench PROGRAM TUNE.abc [times]

#include "ui/palette.h"

#include <QColor>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QPixmap>
#include <QProcess>
#include <QScreen>
#include <QTemporaryDir>
#include <QThread>

#include <algorithm>
#include <iostream>
#include <vector>

namespace {

// Whether plucks of the left hand are seen: nothing else is of their colour there before.
bool showsTune(QScreen& screen)
{
    QImage const seen = screen.grabWindow(0, 60, 110, 700, 380).toImage();
    QRgb const leaf =
        QColor(ui::dayPalette.leaf.red, ui::dayPalette.leaf.green, ui::dayPalette.leaf.blue)
            .rgb();
    int found = 0;
    for (int y = 0; y < seen.height(); y += 2)
        for (int x = 0; x < seen.width(); x += 2)
            if (seen.pixel(x, y) == leaf && ++found > 40) return true;
    return false;
}

// Of a process, in MB: what it has now and the most that it had.
std::pair<double, double> memoryOf(qint64 process)
{
    QFile file(QStringLiteral("/proc/%1/status").arg(process));
    double now = 0;
    double most = 0;
    if (!file.open(QIODevice::ReadOnly)) return {};
    for (QByteArray const& line : file.readAll().split('\n')) {
        double const kilobytes = line.simplified().split(' ').value(1).toDouble();
        if (line.startsWith("VmRSS:")) now = kilobytes / 1024;
        if (line.startsWith("VmHWM:")) most = kilobytes / 1024;
    }
    return {now, most};
}

} // namespace

int main(int argc, char** argv)
{
    QGuiApplication application(argc, argv);
    QStringList const words = QCoreApplication::arguments();
    if (words.size() < 3) {
        std::cerr << "sallow_start_bench PROGRAM TUNE.abc [times]\n";
        return 2;
    }
    int const times = words.value(3, QStringLiteral("9")).toInt();
    QScreen& screen = *QGuiApplication::primaryScreen();
    QTemporaryDir const home;
    std::vector<double> took;
    for (int i = 0; i < times; ++i) {
        if (showsTune(screen)) {
            std::cerr << "The screen shows something already.\n";
            return 2;
        }
        QProcess program;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), home.path());
        environment.insert(QStringLiteral("XDG_CONFIG_HOME"), home.path());
        environment.insert(QStringLiteral("SALLOW_USER"),
                           home.filePath(QStringLiteral("user")));
        program.setProcessEnvironment(environment);
        QElapsedTimer timer;
        timer.start();
        program.start(words.at(1), {words.at(2)});
        while (!showsTune(screen) && timer.elapsed() < 20000) QThread::msleep(2);
        took.push_back(static_cast<double>(timer.nsecsElapsed()) / 1e6);
        QThread::msleep(1000);
        auto const [now, most] = memoryOf(program.processId());
        std::cout << "start " << took.back() << " ms, memory " << now << " MB (most " << most
                  << ")\n";
        program.kill();
        program.waitForFinished();
        QThread::msleep(200);
    }
    std::ranges::sort(took);
    std::cout << "median " << took[took.size() / 2] << " ms of " << times << '\n';
    return 0;
}
