// What the menus offer, asked for by the keys that stand beside it or from the menu itself.

#include "openwindow.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"

#include <QMenu>
#include <QSignalSpy>
#include <optional>

using namespace ui;

namespace {

struct Open : scenario::OpenWindow {
    Open()
    {
        workbench.activateWindow();
        workbench.grid()->setFocus();
        REQUIRE(QTest::qWaitForWindowActive(&workbench));
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
    {
        QWidget* focused = QApplication::focusWidget();
        QTest::keyClick(focused ? focused : &workbench, key, modifiers);
    }
};

// Opens the menu that has it, goes to it and presses Enter.
void chooseFromMenu(QWidget& window, QAction* action)
{
    for (QMenu* menu : window.findChildren<QMenu*>()) {
        if (!menu->actions().contains(action)) continue;
        menu->popup({});
        menu->setActiveAction(action);
        QTest::keyClick(menu, Qt::Key_Return);
        return;
    }
    FAIL("no menu has it");
}

} // namespace

TEST_CASE("Save, save as, export, export levels and another tune are asked for by their keys",
          "[ui]")
{
    Open open;
    Qt::KeyboardModifiers const ctrl = Qt::ControlModifier;
    Qt::KeyboardModifiers const both = ctrl | Qt::ShiftModifier;
    QSignalSpy save(&open.workbench, &Workbench::saveRequested);
    QSignalSpy saveAs(&open.workbench, &Workbench::saveAsRequested);
    QSignalSpy exported(&open.workbench, &Workbench::exportRequested);
    QSignalSpy levels(&open.workbench, &Workbench::levelsRequested);
    QSignalSpy other(&open.workbench, &Workbench::otherTuneRequested);
    open.press(Qt::Key_S, ctrl);
    CHECK(save.size() == 1);
    CHECK(saveAs.isEmpty());
    open.press(Qt::Key_S, both);
    CHECK(saveAs.size() == 1);
    CHECK(save.size() == 1);
    open.press(Qt::Key_E, ctrl);
    CHECK(exported.size() == 1);
    open.press(Qt::Key_E, both);
    CHECK(levels.size() == 1);
    CHECK(exported.size() == 1);
    open.press(Qt::Key_T, ctrl); // no book is open
    CHECK(other.isEmpty());
    open.workbench.actions().otherTune->setEnabled(true);
    open.press(Qt::Key_T, ctrl);
    CHECK(other.size() == 1);
}

TEST_CASE("Nothing is saved, exported or played before a tune is open", "[ui]")
{
    QApplication& application = scenario::application();
    Session session{coreEngine(), scenario::brief()};
    Workbench workbench{session, scenario::tables()};
    workbench.show();
    workbench.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&workbench));
    QSignalSpy save(&workbench, &Workbench::saveRequested);
    QSignalSpy exported(&workbench, &Workbench::exportRequested);
    QSignalSpy levels(&workbench, &Workbench::levelsRequested);
    QSignalSpy played(&workbench, &Workbench::playRequested);
    for (Qt::Key const key : {Qt::Key_S, Qt::Key_E}) {
        QTest::keyClick(&workbench, key, Qt::ControlModifier);
        QTest::keyClick(&workbench, key, Qt::ControlModifier | Qt::ShiftModifier);
    }
    QTest::keyClick(&workbench, Qt::Key_Space, Qt::ShiftModifier);
    application.processEvents();
    CHECK(save.isEmpty());
    CHECK(exported.isEmpty());
    CHECK(levels.isEmpty());
    CHECK(played.isEmpty());
}

TEST_CASE("Shift+U lets all shapes change that are kept, and undo keeps them again", "[ui]")
{
    Open open;
    for (auto const position : std::vector<arrange::PositionIndex>{1, 3}) {
        open.session.select(position);
        REQUIRE(open.session.lockShown());
    }
    REQUIRE(open.session.brief().locks.size() == 2);
    open.press(Qt::Key_U, Qt::ShiftModifier);
    CHECK(open.session.brief().locks.empty());
    CHECK_FALSE(open.workbench.actions().unlockAll->isEnabled());
    open.press(Qt::Key_Z, Qt::ControlModifier);
    CHECK(open.session.brief().locks.size() == 2);
}

TEST_CASE("Shapes are varied on the repeats from the menu, and are alike again", "[ui]")
{
    Open open;
    QAction* const vary = open.workbench.actions().varyPasses;
    REQUIRE_FALSE(vary->isChecked());
    auto const positions = open.session.arrangement().positions.size();
    chooseFromMenu(open.workbench, vary);
    CHECK(open.session.brief().passes == proposal::Passes::Varied);
    CHECK(vary->isChecked());
    CHECK(open.session.arrangement().positions.size() > positions);
    chooseFromMenu(open.workbench, vary);
    CHECK(open.session.brief().passes == proposal::Passes::Written);
    CHECK(open.session.arrangement().positions.size() == positions);
}

TEST_CASE("Shift+Space plays on from the selected bar to the end", "[ui]")
{
    Open open;
    std::optional<Audition> heard;
    QObject::connect(&open.workbench, &Workbench::playRequested,
                     [&heard](Audition const& audition) { heard = audition; });
    open.session.select(3);
    open.press(Qt::Key_Space, Qt::ShiftModifier);
    REQUIRE(heard);
    CHECK(heard->hearing.firstPlayedBar ==
          open.session.arrangement().positions[3].position.played.front().playedBar);
    CHECK(heard->hearing.firstPlayedBar > 0);
    CHECK(heard->hearing.lastPlayedBar == std::nullopt); // to the end
}

TEST_CASE("Ctrl and the arrow keys up and down play faster and slower by five per cent", "[ui]")
{
    Open open;
    Transport const& transport = *open.workbench.transport();
    REQUIRE(transport.tempoPercent() == 100);
    open.press(Qt::Key_Up, Qt::ControlModifier);
    CHECK(transport.tempoPercent() == 105);
    open.press(Qt::Key_Down, Qt::ControlModifier);
    open.press(Qt::Key_Down, Qt::ControlModifier);
    CHECK(transport.tempoPercent() == 95);
}

TEST_CASE("F6 goes from the tune to the shapes, the strings and back, over hidden panes",
          "[ui]")
{
    Open open;
    Workbench& workbench = open.workbench;
    REQUIRE(workbench.grid()->hasFocus());
    open.press(Qt::Key_F6);
    CHECK(workbench.variants()->list()->hasFocus());
    open.press(Qt::Key_F6);
    CHECK(workbench.bank()->hasFocus());
    open.press(Qt::Key_F6);
    CHECK(workbench.grid()->hasFocus());
    workbench.actions().showShapes->setChecked(false);
    open.press(Qt::Key_F6);
    CHECK(workbench.bank()->hasFocus());
}
