#include "app/commands/commands.h"
#include "app/exitstatus.h"
#include "app/window.h"

#include <QApplication>
#include <QHashFunctions>
#include <QIcon>

#include <exception>
#include <iostream>

namespace {

int workbench(int argc, char** argv)
{
    if (!app::displayThere()) return app::sayNoDisplay();
    int count = 1; // the files are ours, not Qt's
    QApplication application(count, argv);
    QApplication::setApplicationName(QStringLiteral("Sallow"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/sallow.svg")));
    QApplication::setApplicationVersion(QStringLiteral(SALLOW_VERSION));
    return app::openWorkbench(argc, argv);
}

} // namespace

int main(int argc, char** argv)
try {
    // Qt numbers the fonts of a PDF in the order of a table that is stirred anew at each start;
    // files made for a named moment have the same bytes each time.
    if (qEnvironmentVariableIsSet("SOURCE_DATE_EPOCH")) QHashSeed::setDeterministicGlobalSeed();
    std::vector<std::string> const words(argv + 1, argv + argc);
    if (app::areForWorkbench(words)) {
        if (auto const option = app::optionAmong(words)) {
            std::cerr
                << "sallow: " << *option
                << ": the workbench takes files only, all else is chosen in its window; for "
                   "options use sallow arrange, see sallow --help\n";
            return app::CallOff;
        }
        return workbench(argc, argv);
    }
    return app::runVerb(words, argv[0]);
} catch (std::exception const& fault) {
    // Nothing should come here: every refusal is a value. What does is told, not crashed over.
    std::cerr << "sallow: something went wrong inside Sallow (" << fault.what()
              << "); no file was changed by halves\n";
    return app::Internal;
}
