// Letters of 300 %: in the window and in every dialog nothing is cut, and what does not fit on
// the screen scrolls.
#include "../keeping/window.h"
#include "everydialog.h"

#include "app/language.h"
#include "ui/button.h"
#include "ui/firststeps.h"
#include "ui/motion.h"
#include "ui/noteediting.h"
#include "ui/practicecard.h"
#include "ui/stringbank.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"

#include <QCheckBox>
#include <QLabel>
#include <QRadioButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>

using namespace keeping;

namespace {

// Letters of the program so many times as large, while it lives.
struct Letters {
    QFont usual;
    explicit Letters(double times)
    {
        application();
        usual = QApplication::font();
        QFont large = usual;
        if (large.pointSizeF() > 0)
            large.setPointSizeF(times * usual.pointSizeF());
        else
            large.setPixelSize(qRound(times * usual.pixelSize()));
        QApplication::setFont(large);
    }
    Letters(Letters const&) = delete;
    Letters& operator=(Letters const&) = delete;
    ~Letters() { QApplication::setFont(usual); }
};

// A window that speaks a language in letters of 300 %.
struct LargeWindow {
    bool speaks;
    Letters letters{3};
    UserFolder user;
    Window window;

    explicit LargeWindow(std::string const& language) : speaks(begin(language))
    {
        user.write("a.abc", tuneText());
    }

private:
    static bool begin(std::string const& language)
    {
        application();
        bool const spoken = static_cast<bool>(app::speak(language));
        app::translateQt();
        return spoken;
    }
};

// Whether scrolling brings all of it into sight: it lies within what is scrolled, or else
// within its window.
bool isReached(QWidget const& widget)
{
    QRect box(QPoint(0, 0), widget.size());
    for (QWidget const* at = &widget; !at->isWindow(); at = at->parentWidget()) {
        QWidget const* parent = at->parentWidget();
        auto const* scrolled = parent->parentWidget()
                                   ? qobject_cast<QScrollArea const*>(parent->parentWidget())
                                   : nullptr;
        box.translate(at->pos());
        if (scrolled && scrolled->widget() == at) {
            box = QRect(QPoint(0, 0), parent->size()); // what is seen of it
            continue;
        }
        if (!parent->rect().adjusted(-1, -1, 1, 1).contains(box)) return false;
    }
    return true;
}

// What is cut or cannot be reached.
QStringList troublesIn(QWidget const& window)
{
    QStringList out;
    for (QWidget const* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&window) || widget->objectName().startsWith("qt_") ||
            widget->window() != &window)
            continue;
        QString words;
        QSize needs;
        if (auto const* own = qobject_cast<ui::Button const*>(widget)) {
            words = own->text();
            needs = own->sizeFor(false);
            if (own->menu())
                needs = own->minimumSizeHint(); // ends with dots, its tip says it all
        } else if (auto const* button = qobject_cast<QAbstractButton const*>(widget)) {
            words = button->text();
            needs = button->minimumSizeHint();
        } else if (auto const* label = qobject_cast<QLabel const*>(widget)) {
            words = label->text();
            needs = label->wordWrap() ? QSize(0, label->heightForWidth(label->width()) - 1)
                                      : label->minimumSizeHint();
            // A row may be lower than a line of letters is, as long as none is cut.
            // Some fonts have letters that reach beyond their own lines.
            if (!label->wordWrap())
                needs.setHeight(
                    std::min(needs.height(),
                             label->fontMetrics().tightBoundingRect(words).height() + 2));
        } else {
            continue;
        }
        if (words.isEmpty()) continue;
        if (widget->width() < needs.width() || widget->height() < needs.height())
            out << QStringLiteral("cut: %1 (%2 x %3 of %4 x %5)")
                       .arg(words)
                       .arg(widget->width())
                       .arg(widget->height())
                       .arg(needs.width())
                       .arg(needs.height());
        if (!isReached(*widget)) out << QStringLiteral("out of reach: %1").arg(words);
    }
    return out;
}

bool fits(QWidget const& window)
{
    QRect const room = window.screen()->availableGeometry();
    return window.width() <= room.width() && window.height() <= room.height();
}

} // namespace

TEST_CASE("With letters of 300 % nothing of the window is cut or out of reach",
          "[reading][large]")
{
    for (std::string const& language : app::languages()) {
        CAPTURE(language);
        LargeWindow large(language);
        REQUIRE(large.speaks);
        Window& window = large.window;
        ui::NoteEditing notes(window.workbench, window.session);
        window.workbench.resize(window.workbench.screen()->availableGeometry().size());
        auto const check = [&](char const* what) {
            QTest::qWait(40); // panes are laid out more than once
            CAPTURE(what);
            QStringList const found = troublesIn(window.workbench);
            CAPTURE(found.join('\n').toStdString());
            CHECK(fits(window.workbench));
            CHECK(found.isEmpty());
        };
        check("no tune");
        window.open(large.user.at("a.abc"));
        window.workbench.showFirstSteps();
        check("a tune");
        // Each pane has room for what it shows.
        CHECK(window.workbench.grid()->height() >=
              3 * QFontMetrics(QApplication::font()).height());
        CHECK(window.workbench.variants()->list()->height() >=
              3 * QFontMetrics(QApplication::font()).height());
        notes.openPane();
        check("notes");
        window.workbench.setView(ui::Workbench::View::Sheet);
        check("the sheet");
    }
    REQUIRE(app::speak("en"));
}

TEST_CASE("In a window of a third of a screen everything is reached", "[reading][large]")
{
    // As with a screen of 1366 by 768 points and everything at 300 %.
    REQUIRE(app::speak("en"));
    UserFolder const user;
    Window window;
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    QSize const small(455, 256);
    window.workbench.resize(small);
    QTest::qWait(40);
    CHECK(window.workbench.size() == small);
    QStringList const found = troublesIn(window.workbench);
    CAPTURE(found.join('\n').toStdString());
    CHECK(found.isEmpty());
    // Tab brings what it comes to into sight.
    window.workbench.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window.workbench));
    window.workbench.grid()->setFocus();
    for (int step = 0; step < 12; ++step) {
        QWidget* at = window.workbench.focusWidget();
        QTest::keyClick(at, Qt::Key_Tab);
        at = window.workbench.focusWidget();
        CAPTURE(at->metaObject()->className(), at->accessibleName().toStdString());
        QRect const seen(at->visibleRegion().boundingRect());
        CHECK(seen.width() > 10);
        CHECK(seen.height() > 10);
    }
}

TEST_CASE("With letters of 300 % every dialog fits on the screen, or scrolls",
          "[reading][large]")
{
    for (std::string const& language : app::languages()) {
        CAPTURE(language);
        LargeWindow large(language);
        REQUIRE(large.speaks);
        Window& window = large.window;
        window.open(large.user.at("a.abc"));
        for (auto const& dialog : reading::everyDialog(window.workbench, window.session)) {
            dialog->show();
            QApplication::processEvents();
            CAPTURE(dialog->windowTitle().toStdString());
            QStringList const found = troublesIn(*dialog);
            CAPTURE(found.join('\n').toStdString());
            CHECK(fits(*dialog));
            CHECK(found.isEmpty());
            dialog->hide();
        }
    }
    REQUIRE(app::speak("en"));
}

TEST_CASE("With letters of the usual size no dialog is put on a sheet that scrolls",
          "[reading][large]")
{
    REQUIRE(app::speak("en"));
    UserFolder const user;
    Window window;
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    for (auto const& dialog : reading::everyDialog(window.workbench, window.session)) {
        dialog->show();
        QApplication::processEvents();
        CAPTURE(dialog->windowTitle().toStdString());
        CHECK(dialog->findChild<QScrollArea*>(QStringLiteral("sheet")) == nullptr);
        dialog->hide();
    }
}

TEST_CASE("Less motion: strings are lit without fading, are kept so, and it is remembered",
          "[reading][motion]")
{
    REQUIRE(app::speak("en"));
    UserFolder const user;
    Window window;
    QObject::connect(&window.workbench, &ui::Workbench::lessMotionChosen,
                     [&](bool less) { window.preferences.keepLessMotion(less); });
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    auto const changes = [&] {
        ui::StringBank* bank = window.workbench.bank();
        bank->stillAll();
        bank->ring(10, harp::Side::Left);
        QTest::qWait(30);
        QImage const first = bank->grab().toImage();
        QTest::qWait(250);
        QImage const later = bank->grab().toImage();
        bank->stillAll();
        return first != later;
    };
    CHECK(changes());
    window.actions().lessMotion->trigger();
    CHECK(ui::lessMotion());
    CHECK_FALSE(changes());
    CHECK(window.preferences.lessMotion());
    window.actions().lessMotion->trigger();
    CHECK_FALSE(ui::lessMotion());
    CHECK(changes());
}

TEST_CASE("First steps go on as they are done, and away with Esc", "[reading][steps]")
{
    REQUIRE(app::speak("en"));
    UserFolder const user;
    Window window;
    ui::FirstSteps const& steps = *window.workbench.firstSteps();
    CHECK(steps.step() == 0); // shown by nobody
    QWidget const* keyboard = window.workbench.focusWidget();
    window.workbench.showFirstSteps();
    CHECK(steps.step() == 1);
    CHECK(window.workbench.focusWidget() == keyboard);
    user.write("a.abc", tuneText());
    window.open(user.at("a.abc"));
    CHECK(steps.step() == 2);
    REQUIRE(window.session.chooseRanked(2));
    CHECK(steps.step() == 3);
    window.workbench.setView(ui::Workbench::View::Sheet);
    CHECK(steps.step() == 0);
    CHECK_FALSE(steps.isVisible());
    window.actions().firstSteps->trigger(); // from the menu, with a tune open
    CHECK(steps.step() == 2);
    window.workbench.messages()->dismissAll();
    while (window.workbench.messages()->shownCount() > 0)
        window.workbench.messages()->dismiss();
    window.actions().stop->trigger();
    CHECK(steps.step() == 0);
    CHECK(window.preferences.toldBefore("first-steps") == false);
    CHECK(window.preferences.toldBefore("first-steps")); // and never again
}
