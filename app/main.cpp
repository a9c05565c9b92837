#include "app/commands/commands.h"
#include "app/exitstatus.h"
#include "app/language.h"
#include "app/languagemenu.h"
#include "app/window.h"
#include "core/base/words.h"

#include <QApplication>
#include <QHashFunctions>
#include <QIcon>

#include <exception>
#include <iostream>
#include <string>
#include <utility>
#include <vector>

namespace {

// In the language that was asked for, else in that chosen in the window, else in the system's.
int workbench(std::vector<std::string> words, bool languageAsked, char* program)
{
    if (!app::displayThere()) return app::sayNoDisplay();
    int count = 1; // the files are ours, not Qt's
    QApplication application(count, &program);
    QApplication::setApplicationName(QStringLiteral("Sallow"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/sallow.svg")));
    QApplication::setApplicationVersion(QStringLiteral(SALLOW_VERSION));
    if (!languageAsked) app::speakAsChosen();
    app::translateQt();
    std::vector<char*> call{program};
    for (std::string& word : words) call.push_back(word.data());
    return app::openWorkbench(static_cast<int>(call.size()), call.data());
}

} // namespace

int main(int argc, char** argv)
try {
    // Qt numbers the fonts of a PDF in the order of a table that is stirred anew at each start;
    // files made for a named moment have the same bytes each time.
    if (qEnvironmentVariableIsSet("SOURCE_DATE_EPOCH")) QHashSeed::setDeterministicGlobalSeed();
    std::vector<std::string> words(argv + 1, argv + argc);
    auto const language = app::takeLanguage(words);
    if (!language) return app::refuse(language.error());
    if (app::areForWorkbench(words)) {
        if (auto const option = app::optionAmong(words)) {
            std::cerr << "sallow: "
                      << base::say(
                             "{}: the workbench takes files only, all else is chosen in its "
                             "window; for options use sallow arrange, see sallow --help",
                             *option)
                      << '\n';
            return app::CallOff;
        }
        return workbench(std::move(words), *language, argv[0]);
    }
    return app::runVerb(words, argv[0]);
} catch (std::exception const& fault) {
    // Nothing should come here: every refusal is a value. What does is told, not crashed over.
    std::cerr << "sallow: "
              << base::say(
                     "something went wrong inside Sallow ({}); no file was changed by halves",
                     fault.what())
              << '\n';
    return app::Internal;
}
