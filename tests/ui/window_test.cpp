// The window as it is used: by the mouse and by keys.

#include "openwindow.h"
#include "ui/button.h"
#include "ui/followedbox.h"
#include "ui/header.h"
#include "ui/messagebar.h"
#include "ui/session.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QListWidget>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;

namespace {

struct Open : scenario::OpenWindow {
    QPoint middleOf(tune::BarIndex bar) const
    {
        Box const& box = workbench.grid()->grid().bars[bar].box;
        return {qRound(box.x + box.width / 2), qRound(box.y + box.height / 2)};
    }
};

tune::Tune withoutBars()
{
    tune::Tune tune = scenario::jig();
    tune.title = "The Empty Creel";
    tune.bars.clear();
    return tune;
}

// A rank at the first position after whose choice something follows elsewhere.
bool chooseWhatIsFollowed(Session& session)
{
    for (arrange::PositionIndex position = 0; position < 6; ++position)
        for (int rank = 1; rank < 5; ++rank) {
            session.select(position);
            auto const before = session.proposal().solution.best.candidates;
            if (!session.chooseRanked(rank)) continue;
            auto const& after = session.proposal().solution.best.candidates;
            for (arrange::PositionIndex const i : after.indices())
                if (i != position && after[i] != before[i]) return true;
            session.undoStack().undo();
        }
    return false;
}

} // namespace

TEST_CASE("A window made for a tune that is open already shows it whole", "[ui]")
{
    Open open;
    Workbench other{open.session, scenario::tables()};
    CHECK(other.grid()->readableCount() == open.workbench.grid()->readableCount());
    CHECK(other.grid()->selected() == open.session.selected());
    CHECK(other.bank()->readableCount() == 34);
}

TEST_CASE("Bars dragged over are a passage, named among the controls and heard as one", "[ui]")
{
    Open open;
    QWidget* view = open.workbench.grid()->viewport();
    std::optional<Audition> heard;
    QObject::connect(&open.workbench, &Workbench::playRequested,
                     [&heard](Audition const& audition) { heard = audition; });
    QTest::mousePress(view, Qt::LeftButton, {}, open.middleOf(1));
    QTest::mouseMove(view, open.middleOf(2));
    QTest::mouseMove(view, open.middleOf(3));
    QTest::mouseRelease(view, Qt::LeftButton, {}, open.middleOf(3));
    REQUIRE(open.workbench.passage() == Passage{1, 3});
    CHECK(open.workbench.grid()->passage() == Passage{1, 3});
    Button const* named = nullptr;
    for (Button const* button : open.workbench.transport()->findChildren<Button*>())
        if (button->text() == QStringLiteral("Bars 2–4")) named = button;
    CHECK(named);
    open.workbench.transport()->toggleLoop();
    QTest::keyClick(open.workbench.grid(), Qt::Key_Space);
    REQUIRE(heard);
    CHECK(heard->hearing.firstPlayedBar == 1);
    CHECK(heard->hearing.lastPlayedBar == 3);
    CHECK(heard->loop);
    open.workbench.actions().stop->trigger(); // lets the passage go
    CHECK_FALSE(open.workbench.passage());
}

TEST_CASE("Shift and arrows make a passage longer and shorter, a click lets it go", "[ui]")
{
    Open open;
    TuneGrid* grid = open.workbench.grid();
    open.session.select(3); // bar 3: bar 2 has two chords
    QTest::keyClick(grid, Qt::Key_Right, Qt::ShiftModifier);
    QTest::keyClick(grid, Qt::Key_Right, Qt::ShiftModifier);
    CHECK(open.workbench.passage() == Passage{2, 4});
    QTest::keyClick(grid, Qt::Key_Left, Qt::ShiftModifier);
    CHECK(open.workbench.passage() == Passage{2, 3});
    QTest::keyClick(grid, Qt::Key_Left, Qt::ShiftModifier);
    QTest::keyClick(grid, Qt::Key_Left, Qt::ShiftModifier);
    CHECK(open.workbench.passage() == Passage{1, 2}); // to the other side
    CHECK(open.session.selected() == 3);
    QTest::mouseClick(grid->viewport(), Qt::LeftButton, Qt::ShiftModifier, open.middleOf(6));
    CHECK(open.workbench.passage() == Passage{2, 6});
    QTest::mouseClick(grid->viewport(), Qt::LeftButton, {}, open.middleOf(0));
    CHECK_FALSE(open.workbench.passage());
    CHECK(open.session.selected() == 0);
}

TEST_CASE("Messages stand beside each other, each with its own look, tune and choices", "[ui]")
{
    Open open;
    MessageBar* messages = open.workbench.messages();
    open.workbench.tell("one");
    open.workbench.tellDone("two");
    open.workbench.tell("three");
    CHECK(messages->shownCount() == 3);
    CHECK(messages->words() == "three");
    REQUIRE(messages->kept().size() == 3);
    for (auto const& message : messages->kept())
        CHECK(message.about == "The Basket by the Weir");
    CHECK(messages->kept()[0].tone == MessageBar::Tone::Notice);
    CHECK(messages->kept()[1].tone == MessageBar::Tone::Done);
    open.workbench.tell("three"); // word for word
    CHECK(messages->kept().size() == 3);
    open.workbench.actions().stop->trigger();
    CHECK(messages->words() == "two");
    open.workbench.actions().stop->trigger();
    open.workbench.actions().stop->trigger();
    CHECK_FALSE(messages->isVisible());
    open.workbench.actions().messages->trigger();
    auto* list = open.workbench.findChild<QListWidget*>();
    REQUIRE(list);
    REQUIRE(list->count() == 3);
    CHECK(list->item(0)->text().contains("three"));
    CHECK(list->item(2)->text().contains("The Basket by the Weir: one"));
}

TEST_CASE("After a warning a thing done does not look like a warning", "[ui]")
{
    Open open;
    MessageBar* messages = open.workbench.messages();
    auto const edge = [&] {
        QApplication::processEvents();
        return messages->grab().toImage().pixelColor(1, 6);
    };
    open.workbench.tell("something to know");
    QColor const warned = edge();
    messages->dismiss();
    open.workbench.tellDone("well done");
    CHECK(edge() != warned);
    open.workbench.tell("something to know");
    CHECK(edge() == warned);
}

TEST_CASE("A tune that is refused is named, and no other tune stays under the message", "[ui]")
{
    Open open;
    CHECK_FALSE(open.session.open(withoutBars()));
    QApplication::processEvents();
    REQUIRE_FALSE(open.workbench.messages()->kept().empty());
    CHECK(open.workbench.messages()->kept().back().about == "The Empty Creel");
    CHECK_FALSE(open.workbench.grid()->isVisible());
    CHECK_FALSE(open.workbench.actions().exportTo->isEnabled());
    // Two keys: the message, then the tune that is still open.
    open.workbench.actions().stop->trigger();
    open.workbench.actions().stop->trigger();
    CHECK(open.workbench.grid()->isVisible());
    CHECK(open.workbench.grid()->readableCount() ==
          static_cast<int>(open.session.arrangement().positions.size()));
    CHECK(open.workbench.actions().exportTo->isEnabled());
}

TEST_CASE("What followed a choice is marked until it is seen", "[ui]")
{
    Open open;
    REQUIRE(chooseWhatIsFollowed(open.session));
    FollowedBox* box = open.workbench.variants()->followed();
    REQUIRE(box->isVisible());
    REQUIRE_FALSE(box->lines().isEmpty());
    std::vector<arrange::PositionIndex> marked;
    for (LaneFace const& face : open.workbench.grid()->faces())
        for (LaneLabel const& label : face.labels)
            if (label.standing == Standing::Followed) marked.push_back(label.chord.position);
    REQUIRE(static_cast<qsizetype>(marked.size()) == box->lines().size());
    CHECK(open.workbench.grid()->readableItem(marked.front()).name.contains("followed"));
    open.session.select(marked.front());
    CHECK(box->lines().size() == static_cast<qsizetype>(marked.size()) - 1);
    QTest::mouseClick(box->letFollowButton(), Qt::LeftButton);
    CHECK_FALSE(box->isVisible());
}

TEST_CASE("Only this one: the other chords have again what they had, and undo brings it back",
          "[ui]")
{
    Open open;
    auto const before = open.session.proposal().solution.best.candidates;
    REQUIRE(chooseWhatIsFollowed(open.session));
    auto const followed = open.session.proposal().solution.best.candidates;
    arrange::PositionIndex const selected = *open.session.selected();
    FollowedBox* box = open.workbench.variants()->followed();
    QTest::mouseClick(box->onlyThisButton(), Qt::LeftButton);
    auto const now = open.session.proposal().solution.best.candidates;
    int moved = 0;
    for (arrange::PositionIndex const i : now.indices())
        if (followed[i] != before[i] && i != selected) {
            CHECK(now[i] == before[i]);
            ++moved;
        }
    CHECK(moved > 0);
    CHECK(now[selected] == followed[selected]);
    open.session.undoStack().undo();
    CHECK(open.session.proposal().solution.best.candidates == followed);
}

TEST_CASE("A left hand is copied, pasted, swapped and used at every chord like it", "[ui]")
{
    Open open;
    Actions const& actions = open.workbench.actions();
    auto const pattern = [&](arrange::PositionIndex position) {
        return open.session.arrangement().positions[position].voicing.pattern;
    };
    CHECK_FALSE(actions.pasteShape->isEnabled());
    open.session.chooseRanked(2);
    actions.copyShape->trigger();
    std::string const copied = pattern(0);
    open.session.select(5); // bar 5, the same chord
    REQUIRE(actions.pasteShape->isEnabled());
    actions.pasteShape->trigger();
    CHECK(pattern(5) == copied);
    open.session.undoStack().undo();
    open.session.select(4); // bar 4: D
    std::string const there = pattern(4);
    actions.swapShapes->trigger();
    CHECK(pattern(4) == copied);
    CHECK(pattern(0) == there);
    open.session.undoStack().undo();
    CHECK(pattern(4) == there);
    open.session.select(0);
    actions.everyChord->trigger();
    int same = 0;
    for (auto const& one : open.session.arrangement().positions)
        if (one.locked && one.voicing.pattern == copied) ++same;
    CHECK(same >= 2);
    CHECK(open.workbench.messages()->words().contains("kept here"));
}

TEST_CASE("Panes hide, move and come back as they were left", "[ui]")
{
    Open open;
    Actions const& actions = open.workbench.actions();
    int const full = open.workbench.grid()->height();
    actions.showBank->trigger();
    CHECK_FALSE(open.workbench.bank()->isVisible());
    QApplication::processEvents();
    CHECK(open.workbench.grid()->height() > full);
    actions.shapesLeft->trigger();
    QApplication::processEvents();
    CHECK(open.workbench.variants()->mapTo(&open.workbench, QPoint()).x() <
          open.workbench.grid()->mapTo(&open.workbench, QPoint()).x());
    QByteArray const panes = open.workbench.panes();

    Session second{coreEngine(), scenario::brief()};
    Workbench other{second, scenario::tables()};
    other.restorePanes(panes);
    other.show();
    CHECK_FALSE(other.bank()->isVisible());
    CHECK(other.actions().shapesLeft->isChecked());
    other.restorePanes(QByteArray("no panes"));
    CHECK_FALSE(other.bank()->isVisible());

    actions.alone->trigger();
    CHECK_FALSE(open.workbench.variants()->isVisible());
    CHECK(open.workbench.grid()->isVisible());
    actions.stop->trigger(); // Esc
    CHECK(open.workbench.variants()->isVisible());
}

TEST_CASE("A bar whose notes do not add up is marked over its lane and read out", "[ui]")
{
    Open open;
    auto const marked = [&] {
        int odd = 0;
        for (LaneFace const& face : open.workbench.grid()->faces())
            for (LaneBarFace const& bar : face.bars)
                if (bar.odd && bar.number.contains(QStringLiteral("too short"))) ++odd;
        return odd;
    };
    CHECK(marked() == 0);
    tune::Tune tune = scenario::jig();
    tune.bars[3].notes.pop_back(); // a quaver less
    tune.bars[3].length = tune.bars[3].length - music::Length{music::Rational(1, 8)};
    REQUIRE(open.session.open(tune));
    QApplication::processEvents();
    CHECK(marked() == 1);
    bool read = false;
    for (int i = 0; i < open.workbench.grid()->readableCount(); ++i)
        read = read || open.workbench.grid()->readableItem(i).name.contains("too short by 1/8");
    CHECK(read);
}

TEST_CASE("A menu of the header opens on what holds now and takes a typed number", "[ui]")
{
    Open open;
    open.workbench.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&open.workbench));
    QMenu* levels = open.workbench.findChild<Header*>()->levelMenu();
    QTest::keyClick(open.workbench.grid(), Qt::Key_4, Qt::AltModifier);
    REQUIRE(QTest::qWaitFor([levels] { return levels->activeAction() != nullptr; }, 2000));
    CHECK(levels->activeAction()->isChecked());
    QTest::keyClick(levels, Qt::Key_5);
    CHECK(open.session.brief().level.number == 5);
    CHECK_FALSE(levels->isVisible());
}

TEST_CASE("A choice paints only the lanes that look different afterwards", "[ui]")
{
    Open open;
    QApplication::processEvents();
    (void)open.workbench.grid()->grab();
    auto const before = open.workbench.grid()->faces();
    int const painted = open.workbench.grid()->lanesPainted();
    open.session.chooseRanked(1);
    (void)open.workbench.grid()->grab();
    auto const& after = open.workbench.grid()->faces();
    REQUIRE(before.size() == after.size());
    int different = 0;
    for (std::size_t i = 0; i < after.size(); ++i) different += before[i] == after[i] ? 0 : 1;
    CHECK(different >= 1);
    CHECK(different < static_cast<int>(after.size()));
    CHECK(open.workbench.grid()->lanesPainted() - painted == different);
    int const chosen = open.workbench.grid()->lanesPainted();
    open.session.select(2);
    (void)open.workbench.grid()->grab();
    CHECK(open.workbench.grid()->lanesPainted() == chosen);
}
