// Several chords chosen together, and left hands taken from one place to another.

#include "core/pattern/own.h"
#include "openwindow.h"
#include "ui/actions.h"
#include "ui/header.h"
#include "ui/lefthandcopy.h"
#include "ui/messagebar.h"
#include "ui/session.h"
#include "ui/tunegrid.h"
#include "ui/variantpanel.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QTest>
#include <catch2/catch.hpp>

#include <set>

using namespace ui;

namespace {

struct Open : scenario::OpenWindow {
    using OpenWindow::OpenWindow;
    Actions const& actions() const { return workbench.actions(); }
    std::string pattern(arrange::PositionIndex position) const
    {
        return session.arrangement().positions[position].voicing.pattern;
    }
    bool locked(arrange::PositionIndex position) const
    {
        return session.proposal().lattice.locks[position].has_value();
    }
    tune::BarIndex barOf(arrange::PositionIndex position) const
    {
        return session.arrangement().positions[position].position.bar;
    }
    void click(arrange::PositionIndex position, Qt::KeyboardModifiers with = {}) const
    {
        for (LaneBar const& bar : workbench.grid()->grid().bars)
            for (LaneChord const& chord : bar.chords)
                if (chord.position == position)
                    QTest::mouseClick(workbench.grid()->viewport(), Qt::LeftButton, with,
                                      {qRound(chord.stretch.x + chord.stretch.width / 2),
                                       qRound(chord.stretch.bottom() - 6)});
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}) const
    {
        QTest::keyClick(workbench.grid(), key, with);
    }
};

} // namespace

TEST_CASE("Chords clicked with Ctrl are chosen together, and one key changes them all", "[ui]")
{
    Open open;
    open.click(0);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{0});
    open.click(3, Qt::ControlModifier);
    open.click(5, Qt::ControlModifier);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{0, 3, 5});
    CHECK(open.session.selected() == 5);
    int const steps = open.session.undoStack().count();
    std::string const second = open.session.proposal()
                                   .lattice.candidates[5][open.session.variants()[1].candidate]
                                   .voicing.pattern;
    open.key(Qt::Key_2);
    int same = 0;
    for (auto const position : std::vector<arrange::PositionIndex>{0, 3, 5})
        if (open.locked(position) && open.pattern(position) == second) ++same;
    CHECK(open.pattern(5) == second);
    CHECK(same >= 2);
    CHECK(open.session.undoStack().count() == steps + 1);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{0, 3, 5});

    open.actions().unlock->trigger();
    for (auto const position : std::vector<arrange::PositionIndex>{0, 3, 5})
        CHECK_FALSE(open.locked(position));
    std::vector<std::string> const standing{open.pattern(0), open.pattern(3), open.pattern(5)};
    open.actions().lock->trigger(); // each its own
    for (auto const position : std::vector<arrange::PositionIndex>{0, 3, 5})
        CHECK(open.locked(position));
    CHECK(std::vector{open.pattern(0), open.pattern(3), open.pattern(5)} == standing);

    open.click(3, Qt::ControlModifier);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{0, 5});
    open.click(2);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{2});
}

TEST_CASE("Alt and an arrow key choose the next chord as well, and let it go on the way back",
          "[ui]")
{
    Open open;
    open.click(1);
    open.key(Qt::Key_Right, Qt::AltModifier);
    open.key(Qt::Key_Right, Qt::AltModifier);
    CHECK(open.session.chosen().size() == 3);
    open.key(Qt::Key_Left, Qt::AltModifier);
    CHECK(open.session.chosen() == std::vector<arrange::PositionIndex>{1, 2});
    open.key(Qt::Key_Right);
    CHECK(open.session.chosen().size() == 1);
}

TEST_CASE("Resting, and a pattern of one's own, are for all that are chosen", "[ui]")
{
    Open open;
    open.click(1);
    open.click(4, Qt::ControlModifier);
    open.actions().leaveEmpty->trigger();
    auto const rests = [&](arrange::PositionIndex position) {
        return open.session.arrangement().positions[position].voicing.notes.empty();
    };
    CHECK(rests(1));
    CHECK(rests(4));
    open.session.undoStack().undo();
    CHECK_FALSE((rests(1) && rests(4)));
    QString why;
    QObject::connect(&open.session, &Session::refused, [&](base::Fault const& fault) {
        why = QString::fromStdString(base::sentence(fault));
    });
    auto const own = pattern::ownPatternFrom("1 5 8 10 8");
    REQUIRE(own);
    open.session.chooseTogether({0, 4});
    bool const used = open.session.usePattern(*own);
    INFO(why.toStdString());
    REQUIRE(used);
    CHECK(open.pattern(0) == open.pattern(4));
    std::string const both = open.pattern(0);
    open.session.undoStack().undo(); // in one step
    CHECK_FALSE((open.locked(0) || open.locked(4)));
    CHECK(open.session.undoStack().canRedo());
    open.session.undoStack().redo();
    CHECK(open.pattern(4) == both);
}

TEST_CASE("A passage's left hand is copied to another part, and swapped with one", "[ui]")
{
    Open open;
    TuneGrid* grid = open.workbench.grid();
    // Something of one's own in the first two bars.
    open.click(0);
    open.key(Qt::Key_3);
    auto const& bars = grid->grid().bars;
    auto const middleOf = [&](tune::BarIndex bar) {
        Box const& box = bars[bar].box;
        return QPoint{qRound(box.x + box.width / 2), qRound(box.y + box.height / 2)};
    };
    tune::BarIndex const firstBar = open.barOf(0);
    QTest::mousePress(grid->viewport(), Qt::LeftButton, {}, middleOf(firstBar));
    QTest::mouseMove(grid->viewport(), middleOf(firstBar + 1));
    QTest::mouseRelease(grid->viewport(), Qt::LeftButton, {}, middleOf(firstBar + 1));
    REQUIRE(grid->passage() == Passage{firstBar, firstBar + 1});
    open.actions().copyShape->trigger();
    CHECK(open.workbench.messages()->words().contains("copied"));
    auto const copied =
        copiedFrom(open.session.arrangement(),
                   positionsIn(open.session.arrangement(), *grid->passage(), 1));
    REQUIRE(copied.shapes.size() >= 2);

    // The first position four bars on.
    arrange::PositionIndex target = 0;
    while (open.barOf(target) < firstBar + 4) ++target;
    auto const laying = laidFrom(open.session.proposal(), target, copied, std::nullopt);
    open.click(target); // lets the passage go
    open.actions().pasteShape->trigger();
    REQUIRE_FALSE(laying.shapes.empty());
    for (ShapeAt const& shape : laying.shapes) {
        CHECK(open.locked(shape.position));
        CHECK(open.barOf(shape.position) >= firstBar + 4);
    }
    CHECK(open.pattern(target) == open.pattern(0));
    open.session.undoStack().undo();
    std::string const there = open.pattern(target);
    std::string const here = open.pattern(0);
    open.actions().swapShapes->trigger();
    auto const swap = open.session.proposal().lattice.locks;
    if (swap[0] && swap[target]) {
        CHECK(open.pattern(0) == there);
        CHECK(open.pattern(target) == here);
    }
    open.session.undoStack().undo();

    // Over itself nothing is swapped.
    open.click(0);
    open.click(1);
    auto const before = open.session.undoStack().count();
    open.actions().swapShapes->trigger();
    CHECK(open.session.undoStack().count() == before);
    CHECK(open.workbench.messages()->words().contains("overlap"));
}

TEST_CASE("A copy fills a longer passage again and again", "[ui]")
{
    Open open;
    auto const& arrangement = open.session.arrangement();
    tune::BarIndex const first = open.barOf(0);
    auto const copied = copiedFrom(arrangement, positionsIn(arrangement, {first, first}, 1));
    auto const laying = laidFrom(open.session.proposal(), 0, copied, Passage{first, first + 3});
    std::set<int> bars;
    for (ShapeAt const& shape : laying.shapes) bars.insert(open.barOf(shape.position));
    CHECK(bars.size() + static_cast<std::size_t>(laying.unplayable + laying.nowhere) >= 4);
    CHECK(bars.size() >= 2);
    for (int const bar : bars) CHECK((bar >= first && bar <= first + 3));
}

TEST_CASE("A left hand goes from one time through to another", "[ui]")
{
    Open open;
    REQUIRE(open.session.setPasses(proposal::Passes::Varied));
    auto const& positions = open.session.arrangement().positions;
    // A bar with a left hand of its own the second time.
    std::optional<arrange::PositionIndex> second;
    for (arrange::PositionIndex const p : positions.indices())
        if (!second && passOf(open.session.arrangement(), p) == 2) second = p;
    REQUIRE(second);
    tune::BarIndex const bar = open.barOf(*second);
    auto const once = positionsIn(open.session.arrangement(), {bar, bar}, 1);
    auto const twice = positionsIn(open.session.arrangement(), {bar, bar}, 2);
    REQUIRE(once.size() == twice.size());
    CHECK(once.front() != twice.front());
    CHECK(twice.front() == *second);
    open.session.select(once.front());
    open.session.chooseRanked(3);
    open.actions().copyShape->trigger();
    open.session.select(twice.front());
    open.actions().pasteShape->trigger();
    CHECK(open.pattern(twice.front()) == open.pattern(once.front()));
}

TEST_CASE("Bars like one are found, gone to and chosen together", "[ui]")
{
    tune::Tune jig = scenario::jig();
    jig.bars[4].notes = jig.bars[0].notes; // over the same chord
    Open open(jig);
    tune::Tune const& tune = open.session.arrangement().tune;
    tune::BarIndex const bar = 0;
    LikeBars const like = barsLike(tune, bar);
    CHECK(like.sameNotes);
    CHECK(like.bars == std::vector{tune::BarIndex(4)});
    LikeBars const chords = barsLike(tune, 2); // E minor under other notes
    CHECK_FALSE(chords.sameNotes);
    CHECK(chords.bars == std::vector<tune::BarIndex>{8, 12});
    CHECK(barsLike(tune, 14).bars.empty());
    arrange::PositionIndex position = 0;
    while (open.barOf(position) != bar) ++position;
    open.click(position);
    open.key(Qt::Key_J);
    CHECK(open.barOf(*open.session.selected()) == like.bars.front());
    open.click(position);
    open.actions().chooseLike->trigger();
    std::set<int> chosen;
    for (arrange::PositionIndex const one : open.session.chosen())
        chosen.insert(open.barOf(one));
    std::set<int> expected(like.bars.begin(), like.bars.end());
    expected.insert(bar);
    CHECK(chosen == expected);
    CHECK(open.workbench.messages()->words().contains("same tune and chords"));

    open.actions().chooseAll->trigger();
    CHECK(open.session.chosen().size() == open.session.arrangement().positions.values().size());
}

TEST_CASE("A pattern that the book gives for other times can be typed and used", "[ui]")
{
    Open open;
    auto const typed = pattern::ownPatternFrom("1 5 8 5"); // given for 4/4, and this is a jig
    REQUIRE(typed);
    open.session.select(0);
    REQUIRE(open.session.usePattern(*typed));
    CHECK(open.pattern(0) == "1-5-8-5");
}
