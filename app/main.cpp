#include "app/commands/commands.h"
#include "app/window.h"

#include <QApplication>
#include <QIcon>

#include <cstdlib>
#include <iostream>

namespace {

// Without a window only what the program itself has to say goes to the terminal.
void sayOnlyWhatMatters(QtMsgType type, QMessageLogContext const&, QString const& text)
{
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << text.toStdString() << '\n';
}

} // namespace

int main(int argc, char** argv)
{
    bool const verb = argc > 1 && app::isVerb(argv[1]);
    // Work without a window draws pages all the same; the offscreen platform needs no display.
    if (verb && std::getenv("QT_QPA_PLATFORM") == nullptr)
        qputenv("QT_QPA_PLATFORM", "offscreen");
    if (!verb && !app::displayThere()) return app::sayNoDisplay();

    if (verb) qInstallMessageHandler(sayOnlyWhatMatters);
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Sallow"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/sallow.svg")));
    QApplication::setApplicationVersion(QStringLiteral(SALLOW_VERSION));
    return verb ? app::runVerb(argc, argv) : app::openWorkbench(argc, argv);
}
