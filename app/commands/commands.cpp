#include "app/commands/commands.h"

#include "app/cli/parse.h"
#include "app/cli/stop.h"
#include "app/commands/verbs.h"
#include "app/input.h"
#include "app/language.h"
#include "core/base/words.h"

#include <QApplication>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <memory>

namespace app {

namespace {

// Without a window only what the program itself has to say goes to the terminal.
void sayOnlyWhatMatters(QtMsgType type, QMessageLogContext const&, QString const& text)
{
    if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << text.toStdString() << '\n';
}

// Whether all that was printed has reached its place; a full disk is told here.
ExitStatus printedAll(ExitStatus status)
{
    std::cout.flush();
    if (std::cout.good()) return status;
    return refuse({base::FaultCode::CannotWrite, base::said("standard output"), {}});
}

ExitStatus answer(cli::Parsed const& parsed)
{
    if (parsed.off) {
        std::cerr << "sallow: " << parsed.says << '\n';
        return CallOff;
    }
    std::cout << parsed.says;
    return printedAll(Fine);
}

} // namespace

bool areForWorkbench(std::vector<std::string> const& words)
{
    if (words.empty()) return true;
    std::string const& first = words.front();
    if (first.starts_with('-')) return false;
    bool const verb = std::ranges::find(verbs(), first, &Verb::name) != verbs().end();
    std::error_code failed;
    return !verb && (canOpen(first) || std::filesystem::exists(first, failed));
}

std::optional<std::string> optionAmong(std::vector<std::string> const& words)
{
    auto const found = std::ranges::find_if(words, [](std::string const& word) {
        std::error_code failed;
        return word.starts_with('-') && !std::filesystem::exists(word, failed);
    });
    return found == words.end() ? std::nullopt : std::optional(*found);
}

int runVerb(std::vector<std::string> const& words, char* program)
{
    Call call;
    cli::Parsed const parsed = cli::parse(words, verbs(), call);
    if (!parsed.verb) return answer(parsed);
    cli::sayWhenStopped();
    if (!parsed.verb->draws) return printedAll(parsed.verb->run(call));

    // Drawing without a window needs no display. Qt is given no word of the call: it would take
    // some for its own.
    if (std::getenv("QT_QPA_PLATFORM") == nullptr) qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(sayOnlyWhatMatters);
    int count = 1;
    QApplication const application(count, &program);
    translateQt();
    return printedAll(parsed.verb->run(call));
}

} // namespace app
