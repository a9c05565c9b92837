// The menus and dialogs of the real window, in every language: no two entries of a menu and no
// two controls of a dialog are reached by the same letter with Alt.
#include "window.h"

#include "app/language.h"
#include "app/languagemenu.h"
#include "ui/chordediting.h"
#include "ui/levelsdialog.h"
#include "ui/newtunedialog.h"
#include "ui/noteediting.h"
#include "ui/notetake.h"
#include "ui/pngdialog.h"
#include "ui/readingmenu.h"
#include "ui/setdialog.h"
#include "ui/tunefinder.h"
#include "ui/tunefolders.h"

#include <QAbstractButton>
#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>

#include <map>

using namespace keeping;

namespace {

struct InLanguage {
    explicit InLanguage(std::string const& language)
    {
        REQUIRE(app::speak(language));
        application();
        app::translateQt();
    }
    InLanguage(InLanguage const&) = delete;
    InLanguage& operator=(InLanguage const&) = delete;
    ~InLanguage() { static_cast<void>(app::speak("en")); }
};

// Each letter that more than one has, with those.
QStringList shared(QStringList const& words)
{
    std::map<QString, QStringList> byLetter;
    for (QString const& each : words) {
        QString const keys = QKeySequence::mnemonic(each).toString();
        if (!keys.isEmpty()) byLetter[keys] << each;
    }
    QStringList out;
    for (auto const& [keys, those] : byLetter)
        if (those.size() > 1) out << keys + QStringLiteral(": ") + those.join(QStringLiteral(" | "));
    return out;
}

QStringList sharedIn(QMenu const& menu)
{
    QStringList words;
    QStringList out;
    for (QAction const* action : menu.actions()) {
        if (action->isSeparator()) continue;
        words << action->text();
        if (action->menu()) out << sharedIn(*action->menu());
    }
    return out << shared(words);
}

QStringList sharedIn(QMenuBar const& bar)
{
    QStringList words;
    QStringList out;
    for (QAction const* action : bar.actions()) {
        words << action->text();
        if (action->menu()) out << sharedIn(*action->menu());
    }
    return out << shared(words);
}

QStringList sharedIn(QDialog const& dialog)
{
    QStringList words;
    for (auto const* button : dialog.findChildren<QAbstractButton*>()) words << button->text();
    for (auto const* label : dialog.findChildren<QLabel*>())
        if (label->buddy()) words << label->text();
    words.removeDuplicates(); // of dialogs within it
    return shared(words);
}

} // namespace

TEST_CASE("No two entries of a menu share their letter, in any language", "[keeping][menus]")
{
    for (std::string const& language : app::languages()) {
        CAPTURE(language);
        UserFolder const user;
        InLanguage const spoken(language);
        Window window;
        app::addLanguageMenu(window.workbench, window.preferences);
        ui::ChordMenu const chords(window.workbench, window.session, shelf().harmony);
        ui::NoteEditing notes(window.workbench, window.session);
        ui::NoteTake const take(window.workbench, window.session, notes);
        user.write("a.abc", tuneText());
        window.open(user.at("a.abc"));
        QStringList const found = sharedIn(*window.workbench.menuBar());
        CAPTURE(found.join('\n').toStdString());
        CHECK(window.workbench.menuBar()->actions().size() >= 7);
        CHECK(found.isEmpty());
        ui::ReadingMenu const reading(nullptr);
        CAPTURE(sharedIn(reading).join('\n').toStdString());
        CHECK(sharedIn(reading).isEmpty());
    }
}

TEST_CASE("No two controls of a dialog share their letter, in any language", "[keeping][menus]")
{
    for (std::string const& language : app::languages()) {
        CAPTURE(language);
        InLanguage const spoken(language);
        ui::TuneFinder const finder;
        ui::TuneFolders const folders;
        ui::SetDialog const set({}, {}, {}, 0, nullptr);
        ui::NewTuneDialog const begun(nullptr);
        ui::LevelsDialog const levels;
        ui::PngDialog const png({}, 2, [](int) { return QString(); });
        for (QDialog const* dialog : std::initializer_list<QDialog const*>{
                 &finder, &folders, &set, &begun, &levels, &png}) {
            CAPTURE(dialog->windowTitle().toStdString());
            CAPTURE(sharedIn(*dialog).join('\n').toStdString());
            CHECK(sharedIn(*dialog).isEmpty());
        }
    }
}

TEST_CASE("What is said of letters is the letter that the dialog has", "[keeping][menus]")
{
    for (std::string const& language : app::languages()) {
        CAPTURE(language);
        InLanguage const spoken(language);
        ui::TuneFinder finder;
        QString folders;
        for (auto const* button : finder.findChildren<QAbstractButton*>())
            if (QString(button->text()).remove(QChar(u'&')).contains(ui::TuneFolders::tr("Folders")))
                folders = QKeySequence::mnemonic(button->text()).toString();
        REQUIRE(!folders.isEmpty());
        bool isTold = false;
        for (auto const* label : finder.findChildren<QLabel*>())
            isTold = isTold || label->text().contains('(' + folders + ')');
        CHECK(isTold);
    }
}
