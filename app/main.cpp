#include "app/commands/commands.h"
#include "app/window.h"

#include <QApplication>

#include <cstdlib>

int main(int argc, char** argv)
{
    bool const verb = argc > 1 && app::isVerb(argv[1]);
    // Work without a window draws pages all the same; the offscreen platform needs no display.
    if (verb && std::getenv("QT_QPA_PLATFORM") == nullptr)
        qputenv("QT_QPA_PLATFORM", "offscreen");
    if (!verb && !app::displayThere()) return app::sayNoDisplay();

    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Sallow"));
    QApplication::setApplicationVersion(QStringLiteral(SALLOW_VERSION));
    return verb ? app::runVerb(argc, argv) : app::openWorkbench(argc, argv);
}
