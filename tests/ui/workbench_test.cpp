#include "ui/workbench.h"

#include "openwindow.h"
#include "ui/messagebar.h"
#include "ui/session.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QLabel>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <QUndoView>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

struct Open : scenario::OpenWindow {
    Open() { workbench.resize(1200, 800); }
    arrange::ArrangedPosition const& at(arrange::PositionIndex position) const
    {
        return session.arrangement().positions[position];
    }
};

void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
{
    QWidget* focused = QApplication::focusWidget();
    REQUIRE(focused);
    QTest::keyClick(focused, key, modifiers);
}

} // namespace

TEST_CASE("By keys alone a chord is chosen, a variant looked at, used, undone and redone",
          "[ui]")
{
    Open open;
    Workbench& workbench = open.workbench;
    workbench.activateWindow();
    workbench.grid()->setFocus();
    REQUIRE(QTest::qWaitForWindowActive(&workbench));
    press(Qt::Key_Right);
    press(Qt::Key_Right);
    REQUIRE(open.session.selected() == 2);
    press(Qt::Key_Return);
    CHECK(QApplication::focusWidget() == workbench.variants()->list());
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    int const looked = *open.session.shown();
    CHECK(open.session.undoStack().count() == 0);
    press(Qt::Key_Return);
    CHECK(open.at(2).locked);
    CHECK(open.session.proposal().lattice.locks[2] == looked);
    press(Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(open.at(2).locked);
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK(open.at(2).locked);
    press(Qt::Key_U);
    CHECK_FALSE(open.at(2).locked);
    press(Qt::Key_Escape);
    CHECK(open.session.undoStack().count() == 2);
}

TEST_CASE("The history lists every step, and a click goes back to any of them and on again",
          "[ui]")
{
    Open open;
    auto const before = open.at(0).voicing;
    open.session.select(0);
    REQUIRE(open.session.chooseRanked(3));
    auto const chosen = open.at(0).voicing;
    REQUIRE(open.session.setTempo(50));
    REQUIRE(open.session.setPasses(proposal::Passes::Varied));
    open.workbench.actions().history->trigger();
    auto* const steps = open.workbench.findChild<QUndoView*>("steps");
    REQUIRE(steps);
    REQUIRE(steps->model()->rowCount() == 4); // as it was opened, and three steps
    auto const click = [steps](int row) {
        QTest::mouseClick(steps->viewport(), Qt::LeftButton, {},
                          steps->visualRect(steps->model()->index(row, 0)).center());
    };
    click(1);
    CHECK(open.at(0).voicing == chosen);
    CHECK_FALSE(open.session.brief().quartersPerMinute);
    click(0);
    CHECK(open.at(0).voicing == before);
    click(3);
    CHECK(open.session.brief().quartersPerMinute == 50);
    CHECK(open.session.brief().passes == proposal::Passes::Varied);
}

TEST_CASE("A number typed in the grid uses the variant of that rank", "[ui]")
{
    Open open;
    int const third = open.session.variants()[2].candidate;
    QTest::keyClick(open.workbench.grid(), Qt::Key_3);
    CHECK(open.session.proposal().lattice.locks[0] == third);
}

TEST_CASE("A click on a bar of the grid selects its chord", "[ui]")
{
    Open open;
    TuneGrid* grid = open.workbench.grid();
    LaneChord const* chord = chordOf(grid->grid(), 3);
    REQUIRE(chord);
    QTest::mouseClick(grid->viewport(), Qt::LeftButton, {},
                      {qRound(chord->name.x + 8), qRound(chord->name.y + 8)});
    CHECK(open.session.selected() == 3);
    CHECK(grid->selected() == 3);
}

TEST_CASE("Hearing a bar asks for that bar alone, at the tempo and with the hands set", "[ui]")
{
    Open open;
    Workbench& workbench = open.workbench;
    open.session.select(3); // bar 3: bar 2 has two chords
    std::optional<Audition> heard;
    QObject::connect(&workbench, &Workbench::playRequested,
                     [&heard](Audition const& audition) { heard = audition; });
    workbench.transport()->stepTempo(-50);
    workbench.transport()->toggleLeft();
    workbench.transport()->toggleLoop();
    QTest::keyClick(workbench.grid(), Qt::Key_Space);
    REQUIRE(heard);
    CHECK(heard->hearing.firstPlayedBar == 2);
    CHECK(heard->hearing.lastPlayedBar == 2);
    CHECK(heard->hearing.tempoScale == Approx(0.5));
    CHECK_FALSE(heard->hearing.left);
    CHECK(heard->hearing.right);
    CHECK(heard->loop);
}

TEST_CASE("The bank shows the strings of one hand where that one alone is heard", "[ui]")
{
    Open open;
    open.session.select(3);
    StringBank* bank = open.workbench.bank();
    auto const shown = [bank](QString const& hand) {
        int count = 0;
        for (int i = 0; i < bank->readableCount(); ++i)
            count += bank->readableItem(i).name.contains(hand) ? 1 : 0;
        return count;
    };
    int const left = shown("left hand");
    int const right = shown("right hand");
    REQUIRE(left > 0);
    REQUIRE(right > 0);
    open.workbench.transport()->toggleLeft();
    CHECK(shown("left hand") == 0);
    CHECK(shown("right hand") == right);
    open.workbench.transport()->toggleLeft();
    open.workbench.transport()->toggleRight();
    CHECK(shown("left hand") == left);
    CHECK(shown("right hand") == 0);
    open.workbench.transport()->toggleRight();
    CHECK(shown("right hand") == right);
}

TEST_CASE("A variant is heard before it is used", "[ui]")
{
    Open open;
    std::optional<Audition> heard;
    QObject::connect(&open.workbench, &Workbench::playRequested,
                     [&heard](Audition const& audition) { heard = audition; });
    VariantList* list = open.workbench.variants()->list();
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Space);
    REQUIRE(heard);
    arrange::CandidateIndex const shown = *open.session.shown();
    CHECK(heard->arrangement.positions[0].voicing ==
          open.session.proposal().lattice.candidates[0][shown].voicing);
    CHECK(open.session.brief().locks.empty());
}

TEST_CASE("While a bar plays it is marked, its strings light, and stopping clears both", "[ui]")
{
    Open open;
    Workbench& workbench = open.workbench;
    workbench.playbackStarted();
    workbench.barPlaying(10); // the third bar the second time through
    QImage const marked = workbench.grid()->grab().toImage();
    workbench.stringSounding(10, harp::Side::Left);
    QSignalSpy stopped(&workbench, &Workbench::stopRequested);
    workbench.actions().stop->trigger();
    CHECK(stopped.size() == 1);
    workbench.playbackStopped();
    CHECK(workbench.grid()->grab().toImage() != marked);
}

TEST_CASE("A pluck asks for the pitch that the lever gives", "[ui]")
{
    Open open;
    QSignalSpy plucked(&open.workbench, &Workbench::stringPluckRequested);
    auto const& string = open.workbench.bank()->bank().strings[3]; // the lowest F
    QTest::mouseClick(open.workbench.bank(), Qt::LeftButton, {},
                      {qRound(string.x), qRound(string.top + 50)});
    REQUIRE(plucked.size() == 1);
    CHECK(plucked.at(0).at(0).value<harp::StringIndex>() == 3);
    // F2 is key 41 (MIDI 1.0); with the lever up for G major F sharp.
    CHECK(plucked.at(0).at(1).toInt() ==
          (open.session.arrangement().levers.setup[3] == harp::Lever::Up ? 42 : 41));
}

TEST_CASE("A refusal is told in the bar with its place and goes when dismissed", "[ui]")
{
    Open open;
    MessageBar* messages = open.workbench.messages();
    CHECK_FALSE(messages->isVisible());
    open.workbench.tellFault({base::FaultCode::NoMomentForFlip, "bar 12", ""});
    CHECK(messages->isVisible());
    CHECK(messages->words().contains("ar 12"));
    open.workbench.actions().stop->trigger();
    CHECK_FALSE(messages->isVisible());
}

TEST_CASE("What would help is offered under the message and taken by a click", "[ui]")
{
    Open open;
    MessageBar* messages = open.workbench.messages();
    proposal::Brief brief = open.session.brief();
    brief.changes = {{{0, 0, 0, false}, tune::Change::LeftOut}};
    open.workbench.tellFault({base::FaultCode::NoMomentForFlip, "bar 1", ""});
    emit open.session.offered(
        {{proposal::Help::LeaveOut, "Leave out the G4 in bar 1.", brief}});
    REQUIRE(messages->choices() == QStringList{"Leave out the G4 in bar 1."});
    auto* choice = messages->findChild<QAbstractButton*>("Leave out the G4 in bar 1.");
    REQUIRE(choice);
    choice->click();
    CHECK(messages->choices().isEmpty());
    CHECK(open.session.arrangement().tune.bars[0].notes[0].pitches.empty());
    open.session.undoStack().undo();
    CHECK_FALSE(open.session.arrangement().tune.bars[0].notes[0].pitches.empty());
}

TEST_CASE("A lever that the tune needs stays, and the bar says why", "[ui]")
{
    Open open;
    auto const& a = open.session.arrangement();
    harp::StringIndex const string = *harp::stringFor(a.harp, a.playing.notes.front().pitch);
    harp::LeverSetting const before = a.levers.setup;
    emit open.workbench.bank()->leverTurned(string, harp::Lever::Up);
    CHECK(open.workbench.messages()->words().contains("first uses"));
    CHECK(open.session.arrangement().levers.setup == before);
    harp::Lever const other =
        before[0] == harp::Lever::Up ? harp::Lever::Down : harp::Lever::Up;
    emit open.workbench.bank()->leverTurned(0, other);
    CHECK(open.session.arrangement().levers.setup[0] == other);
}

TEST_CASE("Another tuning is chosen from the header's menu and undone", "[ui]")
{
    Open open;
    auto* header = open.workbench.findChild<Header*>();
    REQUIRE(header);
    emit header->harpMenu()->aboutToShow();
    QAction* inC = nullptr;
    auto* tunings = header->harpMenu()->findChild<QMenu*>("tunings");
    REQUIRE(tunings);
    for (QAction* action : tunings->actions())
        if (action->text() == "C") inC = action;
    REQUIRE(inC);
    CHECK_FALSE(inC->isChecked());
    inC->trigger();
    CHECK(open.session.arrangement().harp.tuning() == music::PitchName{music::Letter::C, 0});
    CHECK(open.session.arrangement().harp.count() == 34);
    open.session.undoStack().undo();
    CHECK(open.session.arrangement().harp.tuning() == music::PitchName{music::Letter::E, -1});
}

TEST_CASE("Every control of the workbench has a name for readers of the screen", "[ui]")
{
    Open open;
    int controls = 0;
    for (QAbstractButton* button : open.workbench.findChildren<QAbstractButton*>()) {
        if (button->objectName().startsWith("qt_")) continue; // Qt's own, of the menu bar
        CAPTURE(button->toolTip().toStdString());
        CHECK_FALSE((button->accessibleName().isEmpty() && button->text().isEmpty()));
        CHECK(button->focusPolicy() != Qt::NoFocus);
        ++controls;
    }
    CHECK(controls >= 12);
    for (QWidget* view : std::initializer_list<QWidget*>{
             open.workbench.grid(), open.workbench.variants()->list(), open.workbench.bank()}) {
        CHECK_FALSE(view->accessibleName().isEmpty());
        CHECK_FALSE(view->accessibleDescription().isEmpty());
    }
}

TEST_CASE("Shortcuts of the menus are all different", "[ui]")
{
    Open open;
    QStringList keys;
    for (QAction const* action : open.workbench.actions().all())
        if (!action->shortcut().isEmpty()) keys << action->shortcut().toString();
    CHECK(keys.size() >= 20);
    QStringList once = keys;
    once.removeDuplicates();
    CHECK(once == keys);
}

TEST_CASE("Bars, variants and strings can be told and pressed by a reader of the screen",
          "[ui]")
{
    Open open;
    Workbench& workbench = open.workbench;
    auto* grid = QAccessible::queryAccessibleInterface(workbench.grid());
    REQUIRE(grid);
    REQUIRE(grid->childCount() ==
            static_cast<int>(open.session.arrangement().positions.size()));
    QAccessibleInterface* third = grid->child(2);
    REQUIRE(third);
    CHECK(third->text(QAccessible::Name).contains("Bar 2"));
    CHECK(grid->indexOfChild(third) == 2);
    CHECK_FALSE(third->state().selected);
    third->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    CHECK(open.session.selected() == 2);
    CHECK(third->state().selected);
    CHECK(grid->childAt(third->rect().center().x(), third->rect().center().y()) == third);

    auto* bank = QAccessible::queryAccessibleInterface(workbench.bank());
    REQUIRE(bank->childCount() == 34);
    // trade/checks.csv 1: middle C is string 15 of 34.
    CHECK(bank->child(14)->text(QAccessible::Name).startsWith("C4"));
    QSignalSpy plucked(&workbench, &Workbench::stringPluckRequested);
    bank->child(14)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    CHECK(plucked.size() == 1);

    auto* list = QAccessible::queryAccessibleInterface(workbench.variants()->list());
    REQUIRE(list->childCount() > 2);
    list->child(1)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    CHECK(open.session.shown() == open.session.variants()[1].candidate);
    CHECK(list->child(1)->state().selected);
}

TEST_CASE("Alt and a number opens each menu of the header", "[ui]")
{
    Open open;
    open.workbench.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&open.workbench));
    auto* header = open.workbench.findChild<Header*>();
    std::vector<std::pair<Qt::Key, QMenu*>> const menus{{Qt::Key_1, header->keyMenu()},
                                                        {Qt::Key_2, header->harpMenu()},
                                                        {Qt::Key_3, header->handMenu()},
                                                        {Qt::Key_4, header->levelMenu()},
                                                        {Qt::Key_5, header->styleMenu()}};
    for (auto const& [key, menu] : menus) {
        CAPTURE(key);
        QSignalSpy opened(menu, &QMenu::aboutToShow);
        QTest::keyClick(open.workbench.grid(), key, Qt::AltModifier);
        CHECK(opened.size() == 1);
        CHECK(menu->actions().size() > 1);
        menu->close();
    }
}

TEST_CASE("The tempo that is heard can become the one that is arranged for", "[ui]")
{
    Open open;
    double const own = quartersPerMinute(open.session.arrangement().tempo);
    open.workbench.transport()->stepTempo(-40);
    open.workbench.actions().heardTempo->trigger();
    CHECK(quartersPerMinute(open.session.arrangement().tempo) == Approx(0.6 * own));
    CHECK(open.workbench.transport()->tempoPercent() == 100);
    open.workbench.actions().ownTempo->trigger();
    CHECK(quartersPerMinute(open.session.arrangement().tempo) == Approx(own));
    open.session.undoStack().undo();
    CHECK(quartersPerMinute(open.session.arrangement().tempo) == Approx(0.6 * own));
}

TEST_CASE("A message stays readable when the theme is changed under it", "[ui]")
{
    Open open;
    open.workbench.tell("Bar 3: the note lies beyond the strings.");
    auto const words = open.workbench.messages()->findChild<QLabel*>();
    REQUIRE(words);
    auto const ink = [&] { return words->palette().color(words->foregroundRole()); };
    open.workbench.actions().dark->trigger();
    QApplication::processEvents();
    CHECK(ink() == colour(nightPalette.warnInk));
    open.workbench.actions().light->trigger();
    QApplication::processEvents();
    CHECK(ink() == colour(dayPalette.warnInk));
}
