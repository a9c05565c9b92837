#include "scenario.h"
#include "ui/handoutdialog.h"
#include "ui/pageview/pageview.h"
#include "ui/paint/sheetfonts.h"
#include "ui/session.h"
#include "ui/theme.h"
#include "ui/wordsdialog.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

bool pageHas(sheet::Document const& document, std::string const& text)
{
    for (sheet::Page const& page : document.pages)
        for (sheet::Mark const& mark : page.marks)
            if (auto const* words = std::get_if<sheet::Words>(&mark.what);
                words && words->text == text)
                return true;
    return false;
}

sheet::HandoutWish wish()
{
    proposal::Brief const brief = scenario::brief();
    return {brief.harp,
            brief.hand,
            brief.level,
            brief.book,
            *music::keyFrom("G"),
            {*pattern::patternFrom("1-5-8")},
            {},
            {}};
}

} // namespace

TEST_CASE("The dialog of words gives back what it was given, and what is typed", "[ui]")
{
    scenario::application();
    tune::PageWords const words{"Title",    "Composer", "Place",         "Source",
                                "Arranger", "©",        {"One.", "Two."}};
    WordsDialog dialog(words);
    CHECK(dialog.words() == words);
    auto const fields = dialog.findChildren<QLineEdit*>();
    REQUIRE(fields.size() == 6);
    fields.front()->setText("  Another  ");
    dialog.findChild<QPlainTextEdit*>()->setPlainText("Slowly.\n\n  Let it ring. \n");
    CHECK(dialog.words().title == "Another");
    CHECK(dialog.words().notes == std::vector<std::string>{"Slowly.", "Let it ring."});
}

TEST_CASE("Title, composer, source and notes are one step to undo and stand on the sheet",
          "[ui]")
{
    scenario::application();
    Session session(coreEngine(), scenario::brief());
    Workbench workbench(session, scenario::tables());
    REQUIRE(session.open(scenario::jig()));
    auto const before = tune::pageWords(session.brief().tune);
    auto words = before;
    words.title = "A name of her own";
    words.arranger = "A. Willow";
    REQUIRE(session.setWords(words));
    CHECK(session.undoStack().count() == 1);
    REQUIRE(workbench.pages());
    CHECK(pageHas(*workbench.pages(), "A name of her own"));
    CHECK(pageHas(*workbench.pages(), "arr. A. Willow"));
    CHECK(session.setWords(words)); // nothing to do
    CHECK(session.undoStack().count() == 1);
    session.undoStack().undo();
    CHECK(tune::pageWords(session.brief().tune) == before);
    CHECK_FALSE(pageHas(*workbench.pages(), "A name of her own"));
}

TEST_CASE("The paper that is chosen is the one that is shown and given out", "[ui]")
{
    scenario::application();
    Session session(coreEngine(), scenario::brief());
    Workbench workbench(session, scenario::tables());
    workbench.resize(1024, 640);
    workbench.show();
    REQUIRE(session.open(scenario::jig()));
    workbench.setView(Workbench::View::Sheet);
    auto const staves = [](sheet::Document const& document) {
        int lines = 0;
        for (sheet::Page const& page : document.pages)
            for (sheet::Mark const& mark : page.marks)
                if (auto const* line = std::get_if<sheet::Line>(&mark.what);
                    line && line->ink == sheet::Ink::Staff)
                    ++lines;
        return lines / 5;
    };
    int const grand = staves(*workbench.pages());
    workbench.setPaperKind(PaperKind::Lead);
    CHECK(staves(*workbench.pages()) < grand);
    CHECK(staves(workbench.sheet()->document()) == staves(*workbench.pages()));
    workbench.setPaperKind(PaperKind::Drill);
    CHECK(pageHas(workbench.sheet()->document(), "hands down"));
    workbench.setPaper(sheet::Paper::Letter);
    CHECK(workbench.sheet()->document().pages.front().widthMm == Approx(215.9));
}

TEST_CASE("A handout is drawn for the key and patterns that are chosen", "[ui]")
{
    scenario::application();
    HandoutDialog dialog(wish(), musicFont().value(), {});
    CHECK(dialog.document().pages.size() == 1);
    CHECK(pageHas(dialog.document(), "G major"));
    auto* key = dialog.findChild<QComboBox*>();
    CHECK(key->count() == 8); // of a harp in E flat with all levers: E flat to E [trade-1.4]
    key->setCurrentIndex(key->findText("D major"));
    CHECK(pageHas(dialog.document(), "D major"));
    auto* patterns = dialog.findChild<QListWidget*>();
    for (int row = 0; row < patterns->count(); ++row)
        patterns->item(row)->setCheckState(row < 2 ? Qt::Checked : Qt::Unchecked);
    CHECK(dialog.document().pages.size() == 2);
    for (int row = 0; row < 2; ++row) patterns->item(row)->setCheckState(Qt::Unchecked);
    CHECK(dialog.document().pages.empty());
    for (QPushButton* button : dialog.findChildren<QPushButton*>())
        if (button->text().contains("port")) CHECK_FALSE(button->isEnabled());
}

TEST_CASE("The program follows the desktop's theme while it runs, unless told otherwise",
          "[ui]")
{
    QApplication& application = scenario::application();
    bool dark = false;
    ThemeFollower follower(application, [&dark] { return dark; });
    QWidget window;
    auto const change = [&] {
        QEvent event(QEvent::ThemeChange);
        QApplication::sendEvent(&window, &event);
        QApplication::processEvents();
    };
    auto const isDark = [&] { return &paletteOf(window) == &nightPalette; };
    dress(application, Theme::Light);
    dark = true;
    change();
    CHECK(isDark());
    dark = false;
    change();
    CHECK_FALSE(isDark());
    follower.setTheme(Theme::Light);
    dark = true;
    change();
    CHECK_FALSE(isDark());
}
