#include "app/language.h"

#include "app/sharedfolder.h"
#include "core/base/spoken.h"
#include "core/base/words.h"
#include "core/files/catalogue.h"
#include "core/files/textfile.h"
#include "ui/numbers.h"

#include <fmt/format.h>

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <filesystem>

namespace app {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view option = "--language";
constexpr std::string_view fileBegin = "sallow_";

std::string& spoken()
{
    static std::string language = "en";
    return language;
}

fs::path folder() { return sharedFolder() / "translations"; }

// Qt asks for each text by class, text, note and count; ours are found by text and note.
class Spoken : public QTranslator {
public:
    using QTranslator::QTranslator;

    bool isEmpty() const override { return false; }
    QString translate(char const*, char const* text, char const* note, int count) const override
    {
        if (text == nullptr) return {};
        std::string_view const english(text);
        if (note != nullptr && *note != 0) {
            std::string const noted = std::string(note) + '|' + text;
            if (base::isSaid(noted)) return form(noted, count);
        }
        return base::isSaid(english) ? form(english, count) : QString();
    }

private:
    static QString form(std::string_view english, int count)
    {
        std::string_view const said =
            count < 0 ? base::wordsFor(english) : base::formFor(count, english, english);
        return QString::fromUtf8(said.data(), static_cast<qsizetype>(said.size()));
    }
};

base::Fault noLanguage(std::string const& language)
{
    return {base::FaultCode::BadCall, std::string(option),
            base::say("there is no language \"{}\"; choose one of {}", language,
                      fmt::join(languages(), ", "))};
}

} // namespace

std::vector<std::string> languages()
{
    std::vector<std::string> out{"en"};
    std::error_code failed;
    for (fs::directory_iterator entry(folder(), failed), end; !failed && entry != end;
         entry.increment(failed)) {
        std::string const name = entry->path().stem().string();
        if (entry->path().extension() == ".ts" && name.starts_with(fileBegin))
            out.push_back(name.substr(fileBegin.size()));
    }
    std::sort(out.begin() + 1, out.end());
    return out;
}

base::Result<base::Done> speak(std::string const& language)
{
    if (language == "en") {
        base::speakBy({});
        spoken() = language;
        return base::Done{};
    }
    auto const known = languages();
    if (std::ranges::find(known, language) == known.end()) return noLanguage(language);
    auto const text =
        files::readTextFile(folder() / (std::string(fileBegin) + language + ".ts"));
    if (!text) return text.error();
    auto catalogue = files::catalogueFrom(*text);
    if (!catalogue) return catalogue.error();
    base::speakBy(*std::move(catalogue));
    spoken() = language;
    return base::Done{};
}

std::string const& languageSpoken() { return spoken(); }

base::Result<bool> takeLanguage(std::vector<std::string>& words)
{
    for (auto word = words.begin(); word != words.end(); ++word) {
        if (!word->starts_with(option)) continue;
        std::string language;
        if (*word == option) {
            if (word + 1 == words.end()) return noLanguage("");
            language = *(word + 1);
            words.erase(word, word + 2);
        } else if ((*word)[option.size()] == '=') {
            language = word->substr(option.size() + 1);
            words.erase(word);
        } else {
            continue;
        }
        auto const done = speak(language);
        if (!done) return done.error();
        return true;
    }
    return false;
}

void translateQt()
{
    QLocale::setDefault(ui::spokenLocale()); // of fields for numbers
    if (spoken() != "en") QCoreApplication::installTranslator(new Spoken(qApp));
}

fs::path handbookFolder()
{
    fs::path const english = sharedFolder() / "handbook";
    std::error_code failed;
    fs::path const own = english / spoken();
    return fs::is_directory(own, failed) ? own : english;
}

std::string languageOfSystem()
{
    auto const known = languages();
    for (QString const& tag : QLocale::system().uiLanguages()) {
        std::string const language = tag.section(QLatin1Char('-'), 0, 0).toStdString();
        if (std::ranges::find(known, language) != known.end()) return language;
    }
    return "en";
}

} // namespace app
