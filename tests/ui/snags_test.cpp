// Snags as they are shown and chosen: by the mouse and by keys.

#include "core/files/abc/write.h"
#include "core/files/work/document.h"
#include "scenario.h"
#include "ui/button.h"
#include "ui/session.h"
#include "ui/snagcard.h"
#include "ui/tunegrid.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QLabel>
#include <QRadioButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <catch2/catch.hpp>

using namespace ui;
using tune::Way;

namespace {

constexpr int longestWait = 60000; // milliseconds: whole arrangements are made on a busy machine

// The jig with an F natural right after an F sharp in bars 4 and 12: one string, and no time for
// its lever.
tune::Tune withSnags()
{
    tune::Tune tune = scenario::jig();
    tune.bars[3].notes[4].pitches = {{music::Letter::F, 0, 4}};
    tune.bars[11].notes = tune.bars[3].notes;
    return tune;
}

proposal::Brief asWritten()
{
    proposal::Brief brief = scenario::brief();
    brief.key = proposal::AsWritten{};
    return brief;
}

struct Open {
    QApplication& application = scenario::application();
    Session session;
    Workbench workbench{session, scenario::tables()};
    explicit Open(Engine engine = coreEngine(scenario::tables().levels))
        : session(std::move(engine), asWritten())
    {
        workbench.resize(1200, 900);
        workbench.show();
        REQUIRE(QTest::qWaitForWindowExposed(&workbench));
        REQUIRE(session.open(withSnags()));
        QApplication::processEvents();
        REQUIRE(session.proposal().snags.size() == 2);
        REQUIRE(session.proposal().snags[0].ways.size() > 1);
    }
    std::vector<LaneSnag> marks() const
    {
        std::vector<LaneSnag> all;
        for (LaneFace const& face : workbench.grid()->faces())
            all.insert(all.end(), face.snags.begin(), face.snags.end());
        return all;
    }
    SnagCard* card() const { return workbench.findChild<SnagCard*>(); }
    SnagCard* click(std::size_t mark) const
    {
        LaneSnag const at = marks()[mark];
        QScrollBar* bar = workbench.grid()->verticalScrollBar();
        bar->setValue(qRound(at.y) - workbench.grid()->viewport()->height() / 2);
        QTest::mouseClick(workbench.grid()->viewport(), Qt::LeftButton, {},
                          {qRound(at.x), qRound(at.y) - bar->value()});
        REQUIRE(card()->isVisible());
        return card();
    }
    void press(char const* name) const
    {
        auto* button = card()->findChild<Button*>(QString::fromLatin1(name));
        REQUIRE(button);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    // Marks a way that is not taken; answers which.
    Way markAnother() const
    {
        auto const& snag = session.proposal().snags[0];
        std::size_t another = 0;
        while (snag.ways[another].way != Way::LeaveOut) ++another;
        auto* choice =
            card()->findChild<QRadioButton*>(QStringLiteral("way%1").arg(another));
        REQUIRE(choice);
        QTest::mouseClick(choice, Qt::LeftButton, {}, {8, choice->height() / 2});
        CHECK(card()->marked() == static_cast<int>(another));
        return snag.ways[another].way;
    }
    proposal::Snag const& snag(std::size_t i) const { return session.proposal().snags[i]; }
};

} // namespace

TEST_CASE("A snag is marked in its bar, and a click tells the ways round it with their place",
          "[ui]")
{
    Open open;
    REQUIRE(open.marks().size() == 2);
    CHECK(open.marks()[0].bar == 3);
    CHECK(open.marks()[0].open);
    SnagCard* card = open.click(0);
    auto const selected = open.session.selected();
    REQUIRE(selected);
    CHECK(open.session.arrangement().positions[*selected].position.bar == 3);
    QStringList words;
    for (QLabel const* label : card->findChildren<QLabel*>()) words << label->text();
    CHECK(words.contains(QStringLiteral("Bar 4 · F4")));
    CHECK(words.contains(QStringLiteral("best · now")));
    CHECK(card->findChildren<QRadioButton*>().size() ==
          static_cast<qsizetype>(open.snag(0).ways.size()));
    CHECK(card->findChild<Button*>(QStringLiteral("alike"))->text() ==
          QStringLiteral("For all 2 alike"));
    QTest::keyClick(card, Qt::Key_Escape);
    CHECK_FALSE(card->isVisible());
    CHECK(open.session.undoStack().count() == 0);
}

TEST_CASE("Each way round a snag is heard in its bar, and nothing is kept", "[ui]")
{
    Open open;
    std::vector<Audition> heard;
    QObject::connect(&open.workbench, &Workbench::playRequested,
                     [&heard](Audition const& audition) { heard.push_back(audition); });
    SnagCard* card = open.click(0);
    QTest::keyClick(card, Qt::Key_Space); // as it is now
    REQUIRE(heard.size() == 1);
    CHECK(heard[0].hearing.firstPlayedBar == 3);
    CHECK(heard[0].hearing.lastPlayedBar == 3);
    Way const wanted = open.markAnother();
    QTest::mouseClick(card->findChild<Button*>(QStringLiteral("hear%1").arg(card->marked())),
                      Qt::LeftButton);
    REQUIRE(QTest::qWaitFor([&] { return heard.size() == 2; }, longestWait));
    CHECK(wanted == Way::LeaveOut);
    tune::Note const& note = heard[1].arrangement.tune.bars[3].notes.back();
    CHECK(heard[0].arrangement.tune.bars[3].notes.size() ==
          heard[1].arrangement.tune.bars[3].notes.size());
    CHECK(note.pitches.size() == 1); // the one after it
    CHECK(std::ranges::any_of(heard[1].arrangement.tune.bars[3].notes,
                              [](tune::Note const& n) { return n.pitches.empty(); }));
    CHECK(card->isVisible());
    CHECK(open.session.undoStack().count() == 0);
    CHECK_FALSE(open.snag(0).decided);
}

TEST_CASE("A way is taken for one snag or for all alike, undone, and let change again", "[ui]")
{
    Open open;
    Way const before = open.snag(0).way;
    open.click(0);
    Way const wanted = open.markAnother();
    open.press("this");
    CHECK_FALSE(open.card()->isVisible());
    CHECK(open.snag(0).way == wanted);
    CHECK(open.snag(0).decided);
    CHECK(open.snag(1).way == before);
    CHECK_FALSE(open.marks()[0].open);
    CHECK(open.marks()[1].open);
    open.workbench.actions().undo->trigger();
    CHECK(open.snag(0).way == before);
    CHECK_FALSE(open.snag(0).decided);

    open.click(1);
    open.markAnother();
    open.press("alike");
    CHECK(open.snag(0).way == wanted);
    CHECK(open.snag(1).way == wanted);
    open.click(0);
    open.press("free");
    CHECK(open.snag(0).way == before);
    CHECK(open.snag(1).way == before);
    open.workbench.actions().undo->trigger();
    CHECK(open.snag(1).way == wanted);
}

TEST_CASE("Keys alone open a snag of the selected bar and choose: arrows, Enter, Shift+Enter",
          "[ui]")
{
    Open open;
    Way const before = open.snag(0).way;
    open.session.select(4); // bar 4: bar 2 has two chords
    QTest::keyClick(open.workbench.grid(), Qt::Key_S);
    REQUIRE(open.card()->isVisible());
    int const at = open.card()->marked();
    QTest::keyClick(open.card(), Qt::Key_Down);
    QTest::keyClick(open.card(), Qt::Key_Down);
    QTest::keyClick(open.card(), Qt::Key_Down);
    QTest::keyClick(open.card(), Qt::Key_Up);
    REQUIRE(open.card()->marked() == at + 2);
    Way const next = open.snag(0).ways[static_cast<std::size_t>(at + 2)].way;
    QTest::keyClick(open.card(), Qt::Key_Return, Qt::ShiftModifier);
    CHECK(open.snag(0).way == next);
    CHECK_FALSE(open.snag(1).decided);
    CHECK(open.snag(1).way == before);
    open.session.undoStack().undo();
    QTest::keyClick(open.workbench.grid(), Qt::Key_S);
    for (int i = 0; i < 2; ++i) QTest::keyClick(open.card(), Qt::Key_Down);
    QTest::keyClick(open.card(), Qt::Key_Return);
    CHECK(open.snag(0).way == next);
    CHECK(open.snag(1).way == next);
}

TEST_CASE("Saved work keeps what was decided about a snag", "[ui]")
{
    Open open;
    open.click(0);
    Way const wanted = open.markAnother();
    open.press("alike");
    std::string const saved = files::documentText({files::abcOfTune(open.session.brief().tune), open.session.brief()}, scenario::tables());
    auto const read = files::readDocument(saved, scenario::tables(), "work.sallow");
    REQUIRE(read);
    Session other{coreEngine(), scenario::brief()};
    REQUIRE(other.open(read->brief));
    REQUIRE(other.proposal().snags.size() == 2);
    CHECK(other.proposal().snags[1].way == wanted);
    CHECK(other.proposal().snags[1].decided);
}

TEST_CASE("What helps in the whole tune is looked for beside the window, offered, and taken only "
          "when it is asked for",
          "[ui]")
{
    Engine engine = coreEngine(scenario::tables().levels);
    std::atomic_bool go = false;
    std::atomic_int searches = 0;
    engine.wholeTuneWays = [&](proposal::Proposal const& p, std::function<bool()> const& wanted) {
        ++searches;
        while (!go && wanted()) QThread::msleep(2);
        proposal::WholeTuneWay slower;
        slower.way = Way::Slower;
        slower.brief = p.brief;
        slower.brief.quartersPerMinute = 60;
        slower.sentence = "At 40 dotted crotchets a minute: no snag is left.";
        return std::vector{slower};
    };
    Open open(std::move(engine));
    SnagCard* card = open.click(0);
    auto* looking = card->findChild<QLabel*>(QStringLiteral("wholetune"));
    REQUIRE(looking); // and the window is not held up
    CHECK_FALSE(card->findChild<Button*>(QStringLiteral("whole0")));
    go = true;
    REQUIRE(QTest::qWaitFor(
        [&] { return card->findChild<Button*>(QStringLiteral("whole0")) != nullptr; },
        longestWait));
    CHECK(open.session.undoStack().count() == 0);
    QTest::keyClick(card, Qt::Key_Escape);
    open.click(1); // what was found is still there
    CHECK(searches == 1);
    open.press("whole0");
    CHECK(open.session.brief().quartersPerMinute == 60);
    open.session.undoStack().undo();
    CHECK_FALSE(open.session.brief().quartersPerMinute);

    go = false;
    open.click(0); // for another tempo it is looked for again
    QTest::qWait(20);
    open.session.undoStack().redo(); // and given up when the tune changes
    CHECK(open.session.brief().quartersPerMinute == 60);
}

TEST_CASE("The card of a snag fits on the screen with every way in sight", "[ui]")
{
    Open open;
    SnagCard* card = open.click(0);
    QRect const screen = QGuiApplication::primaryScreen()->availableGeometry();
    CHECK(screen.contains(card->geometry()));
    for (QWidget const* part : card->findChildren<QWidget*>())
        if (part->isVisible() && qobject_cast<QRadioButton const*>(part))
            CHECK(part->width() >= part->minimumSizeHint().width());
    CHECK(card->height() >= card->sizeHint().height());
}
