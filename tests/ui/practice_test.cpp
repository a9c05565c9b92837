// Practising in the window: passages by key, tempo typed and turned, faster by itself.

#include "openwindow.h"
#include "ui/button.h"
#include "ui/practicecard.h"
#include "ui/session.h"
#include "ui/stringbank.h"
#include "ui/transport.h"
#include "ui/tunegrid.h"
#include "ui/workbench.h"

#include <QApplication>
#include <QCheckBox>
#include <QSpinBox>
#include <QTest>
#include <QWheelEvent>
#include <catch2/catch.hpp>

#include <algorithm>

using namespace ui;

namespace {

struct Open : scenario::OpenWindow {
    std::optional<Audition> heard;
    std::optional<Audition> changed;

    Open()
    {
        QObject::connect(&workbench, &Workbench::playRequested,
                         [this](Audition const& audition) { heard = audition; });
        QObject::connect(&workbench, &Workbench::hearingChanged,
                         [this](Audition const& audition) { changed = audition; });
        workbench.activateWindow();
    }

    Transport* transport() const { return workbench.transport(); }
    QSpinBox* field(char const* name) const
    {
        auto* found = transport()->findChild<QSpinBox*>(QString::fromLatin1(name));
        REQUIRE(found);
        return found;
    }
    QCheckBox* box(QString const& words) const
    {
        for (QCheckBox* box : transport()->practiceCard()->findChildren<QCheckBox*>())
            if (box->text().remove(QLatin1Char('&')).contains(words)) return box;
        FAIL("no such box");
        return nullptr;
    }
    void type(QSpinBox* into, QString const& digits) const
    {
        into->setFocus();
        into->selectAll();
        QTest::keyClicks(into, digits);
        QTest::keyClick(into, Qt::Key_Return);
    }
    void play() const
    {
        QTest::keyClick(workbench.grid(), Qt::Key_Space);
        const_cast<Workbench&>(workbench).playbackStarted();
    }
};

} // namespace

TEST_CASE("While a tune is heard the bank shows what plays and where the left hand goes next",
          "[ui][practice]")
{
    Open open;
    open.workbench.actions().playTune->trigger();
    open.workbench.playbackStarted();
    auto const& arrangement = open.session.arrangement();
    auto const played = arrange::playedPositions(arrangement);
    auto const leftAt = [&](arrange::PlayedPositionIndex at) {
        auto fingers = fingersAt(arrangement, played[at].position);
        std::erase_if(fingers, [](FingerDisc const& f) { return f.hand == harp::Side::Right; });
        return fingers;
    };
    REQUIRE(leftAt(0) != leftAt(1));
    StringBank const* bank = open.workbench.bank();
    open.workbench.positionPlaying(0);
    CHECK(bank->fingers() == fingersAt(arrangement, played[0].position));
    CHECK(bank->ahead() == leftAt(1));
    QString const words = bank->readableItem(leftAt(1).front().string).name;
    CHECK(words.contains("next: left hand"));

    arrange::PlayedPositionIndex const last = played.beyond() - 1;
    open.workbench.positionPlaying(last);
    CHECK(bank->ahead().empty());
    open.workbench.positionPlaying(last + 1); // no such thing
    open.workbench.playbackStopped();
    CHECK(bank->ahead().empty());
    open.transport()->toggleLoop();
    open.workbench.actions().playTune->trigger();
    open.workbench.playbackStarted();
    open.workbench.positionPlaying(last);
    CHECK(bank->ahead() == leftAt(0));
}

TEST_CASE("P takes the phrase, Shift+P the part, and Escape gives the whole tune back",
          "[ui][practice]")
{
    Open open;
    auto const& bars = open.session.arrangement().tune.bars;
    open.session.select(0);
    QTest::keyClick(open.workbench.grid(), Qt::Key_P);
    REQUIRE(open.workbench.passage());
    CHECK(open.workbench.passage() == phraseAround(open.session.arrangement().tune, 0));
    CHECK(bars[open.workbench.passage()->lastBar].number == 4);
    QTest::keyClick(open.workbench.grid(), Qt::Key_P, Qt::ShiftModifier);
    CHECK(open.workbench.passage() == partAround(open.session.arrangement().tune, 0));
    CHECK(open.workbench.passage()->lastBar > 3);
    QTest::keyClick(open.workbench.grid(), Qt::Key_Escape);
    CHECK_FALSE(open.workbench.passage());
}

TEST_CASE("A tempo is typed in per cent or in beats, and Enter goes back to the music",
          "[ui][practice]")
{
    Open open;
    open.type(open.field("percent"), QStringLiteral("60"));
    CHECK(open.transport()->tempoScale() == Approx(0.6));
    CHECK(open.workbench.grid()->hasFocus());
    double const own = open.session.arrangement().tempo.beatsPerMinute;
    int const wanted = qRound(own * 0.8);
    open.type(open.field("beats"), QString::number(wanted));
    CHECK(open.transport()->tempoScale() == Approx(wanted / own));
    open.play();
    REQUIRE(open.heard);
    CHECK(open.heard->hearing.tempoScale ==
          Approx(wanted / own)); // exact, not a rounded per cent
}

TEST_CASE("The wheel and the arrow keys turn the tempo, also while it plays", "[ui][practice]")
{
    Open open;
    open.play();
    QSpinBox* percent = open.field("percent");
    QPointF const middle = percent->rect().center();
    QWheelEvent down(middle, percent->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton,
                     Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(percent, &down);
    CHECK(open.transport()->tempoPercent() == 99);
    REQUIRE(open.changed);
    CHECK(open.changed->hearing.tempoScale == Approx(0.99));
    percent->setFocus();
    QTest::keyClick(percent, Qt::Key_Down);
    CHECK(open.changed->hearing.tempoScale == Approx(0.98));
    QTest::keyClick(open.workbench.grid(), Qt::Key_Down, Qt::ControlModifier);
    CHECK(open.transport()->tempoPercent() == 93);
}

TEST_CASE(
    "Faster by itself plays again and again, shows each tempo, and goes on from one by hand",
    "[ui][practice]")
{
    Open open;
    open.transport()->openPractice();
    QTest::mouseClick(open.box(QStringLiteral("Faster")), Qt::LeftButton, {}, {8, 8});
    open.transport()->practiceCard()->close();
    CHECK(open.transport()->loops());
    open.play();
    REQUIRE(open.heard);
    CHECK(open.heard->loop);
    REQUIRE(open.heard->tempos.size() == 17); // 60 to 95 by 5, twice each, then 100
    CHECK(open.heard->tempos.front() == Approx(0.6));
    CHECK(open.heard->tempos.back() == Approx(1));
    CHECK(open.transport()->tempoPercent() == 60);
    open.workbench.roundPlaying(2);
    CHECK(open.transport()->tempoPercent() == 65);
    CHECK_FALSE(open.changed); // what is shown is no wish
    open.type(open.field("percent"), QStringLiteral("80"));
    REQUIRE(open.changed);
    REQUIRE(open.changed->tempos.size() == 2 + 9); // rounds so far, 80 to 95 twice each, 100
    CHECK(open.changed->tempos[2] == Approx(0.8));
    CHECK(open.changed->tempos[4] == Approx(0.85));
    // A hand that is muted leaves the steps where they are.
    open.transport()->toggleLeft();
    CHECK(open.changed->tempos.size() == 11);
    CHECK_FALSE(open.changed->hearing.left);
}

TEST_CASE("The bar before and a click are asked for by key and heard", "[ui][practice]")
{
    Open open;
    QTest::keyClick(open.workbench.grid(), Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
    QTest::keyClick(open.workbench.grid(), Qt::Key_M);
    CHECK(open.box(QStringLiteral("bar before"))->isChecked());
    CHECK(open.workbench.actions().click->isChecked());
    open.play();
    REQUIRE(open.heard);
    CHECK(open.heard->hearing.barBefore);
    CHECK(open.heard->clicks);
}

namespace {

// Another tune, of a kind that goes in four.
tune::Tune inFour(std::string const& kind)
{
    tune::Tune tune = scenario::jig();
    tune.title = "The Tarred Rope";
    tune.rhythm = kind;
    tune.meter = {4, 4};
    return tune;
}

} // namespace

TEST_CASE("A jig is played as written until a lilt is asked for, a hornpipe swings",
          "[ui][practice]")
{
    Open open;
    open.play();
    REQUIRE(open.heard);
    CHECK(open.heard->hearing.lilt.amount == 0);
    CHECK(open.heard->hearing.lilt.way.of == perform::LiltWay::Of::Threes);
    REQUIRE(open.session.open(inFour("hornpipe")));
    open.play();
    CHECK(open.heard->hearing.lilt.amount == Approx(0.6));
    CHECK(open.heard->hearing.lilt.way.of == perform::LiltWay::Of::Pairs);
}

TEST_CASE("An air slows at its end, a dance goes on in time until it is asked to slow",
          "[ui][practice]")
{
    Open open;
    open.play();
    REQUIRE(open.heard);
    CHECK(open.heard->hearing.slowing.to == 1); // a jig
    REQUIRE(open.session.open(inFour("air")));
    open.play();
    CHECK(open.heard->hearing.slowing.to == 0.5);
    CHECK(open.heard->hearing.slowing.beats == 4);
}

TEST_CASE("The sheet says rit. where the tune slows as it is set for practice",
          "[ui][practice][slowing]")
{
    Open open;
    auto const told = [&open] {
        auto const pages = open.workbench.pages();
        if (!pages) return false;
        return std::ranges::any_of(pages->pages.at(0).marks, [](sheet::Mark const& mark) {
            auto const* words = std::get_if<sheet::Words>(&mark.what);
            return words && words->text.starts_with("rit.");
        });
    };
    if (!open.workbench.font()) return;
    CHECK_FALSE(told()); // a jig
    REQUIRE(open.session.open(inFour("air")));
    CHECK(told());
    auto const boxes = open.transport()->practiceCard()->findChildren<QSpinBox*>();
    auto const found = std::ranges::find(boxes, QStringLiteral("Slowing at the end"),
                                         &QSpinBox::accessibleName);
    REQUIRE(found != boxes.end());
    QSpinBox* const amount = *found;
    amount->setValue(10); // too little to be told of
    CHECK_FALSE(told());
    amount->setValue(60);
    CHECK(told());
    amount->setValue(0);
    CHECK_FALSE(told());
    amount->setValue(100);
    REQUIRE(open.session.open(inFour("reel")));
    CHECK_FALSE(told());
}

TEST_CASE("V plays a shape that is looked at between the bars around it, and keeps nothing",
          "[ui][compare]")
{
    Open open;
    open.session.select(3); // bar 3
    auto const before = open.session.brief().locks.size();
    arrange::CandidateIndex const other = open.session.variants()[1].candidate;
    open.session.show(other);
    QTest::keyClick(open.workbench.grid(), Qt::Key_V);
    REQUIRE(open.heard);
    CHECK(open.heard->hearing.firstPlayedBar == 1);
    CHECK(open.heard->hearing.lastPlayedBar == 3);
    CHECK(open.heard->arrangement.positions[3].voicing ==
          open.session.proposal().lattice.candidates[3][other].voicing);
    CHECK(open.session.brief().locks.size() == before);
    CHECK_FALSE(open.session.undoStack().canUndo());
}

TEST_CASE("X flips between what is kept and what is looked at while the same bars go on",
          "[ui][compare]")
{
    Open open;
    open.session.select(3);
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    CHECK_FALSE(open.heard); // nothing to compare yet
    auto const kept = open.session.arrangement().positions[3].voicing;
    open.session.show(open.session.variants()[1].candidate);
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    REQUIRE(open.heard);
    auto const looked = open.heard->arrangement.positions[3].voicing;
    CHECK_FALSE(looked == kept);
    open.workbench.playbackStarted();
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    REQUIRE(open.changed);
    CHECK(open.changed->arrangement.positions[3].voicing == kept);
    CHECK(open.changed->hearing.firstPlayedBar == open.heard->hearing.firstPlayedBar);
    CHECK(open.changed->hearing.lastPlayedBar == open.heard->hearing.lastPlayedBar);
    Button const* told = nullptr; // what is heard is said among the controls, and has room there
    for (Button const* button : open.transport()->findChildren<Button*>())
        if (button->text() == QStringLiteral("Hearing A")) told = button;
    REQUIRE(told);
    CHECK(told->isVisible());
    QApplication::processEvents();
    CHECK(told->width() >= told->sizeHint().width());
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    CHECK(open.changed->arrangement.positions[3].voicing == looked);
    CHECK_FALSE(open.session.undoStack().canUndo());
}

TEST_CASE("A setting remembered as A is compared with a later one, and can be taken again",
          "[ui][compare]")
{
    Open open;
    open.session.select(3);
    QTest::keyClick(open.workbench.grid(), Qt::Key_X, Qt::ShiftModifier);
    auto const a = open.session.arrangement().positions[3].voicing;
    REQUIRE(open.session.chooseRanked(1));
    auto const b = open.session.arrangement().positions[3].voicing;
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    REQUIRE(open.heard);
    CHECK(open.heard->arrangement.positions[3].voicing == b);
    open.workbench.playbackStarted();
    QTest::keyClick(open.workbench.grid(), Qt::Key_X);
    REQUIRE(open.changed);
    CHECK(open.changed->arrangement.positions[3].voicing == a);
    open.workbench.actions().takeA->trigger();
    CHECK(open.session.arrangement().positions[3].voicing == a);
    open.session.undoStack().undo();
    CHECK(open.session.arrangement().positions[3].voicing == b);
}

TEST_CASE("A passage that waits is heard once, and Space plays the next, one step faster",
          "[ui][practice]")
{
    Open open;
    QTest::keyClick(open.workbench.grid(), Qt::Key_P);
    open.workbench.actions().loop->trigger();
    open.workbench.actions().stepsUp->trigger();
    open.box("Wait for me")->setChecked(true);
    open.play();
    REQUIRE(open.heard);
    CHECK_FALSE(open.heard->loop);
    CHECK(open.heard->tempos == std::vector<double>{0.6});
    open.workbench.playbackStopped(); // by itself, at the end
    open.play();
    CHECK(open.heard->tempos == std::vector<double>{0.6}); // each twice
    open.workbench.playbackStopped();
    open.play();
    CHECK(open.heard->tempos == std::vector<double>{0.65});
    open.workbench.actions().stop->trigger(); // by her: from the beginning again
    open.workbench.playbackStopped();
    open.play();
    CHECK(open.heard->tempos == std::vector<double>{0.6});
}

TEST_CASE("Balance and the tune alone are asked for in the card and heard", "[ui][practice]")
{
    Open open;
    open.box("tune alone")->setChecked(true);
    for (QSpinBox* box : open.transport()->practiceCard()->findChildren<QSpinBox*>())
        if (box->minimum() == -100) open.type(box, QStringLiteral("40"));
    open.play();
    REQUIRE(open.heard);
    CHECK_FALSE(open.heard->hearing.added);
    CHECK(open.heard->hearing.balance == 0.4);
}

TEST_CASE("Y begins to listen, and only then can it wait for the right strings",
          "[ui][practice]")
{
    Open open;
    QCheckBox* const only = open.box("Go on only");
    CHECK_FALSE(only->isEnabled());
    QTest::keyClick(open.workbench.grid(), Qt::Key_Y);
    CHECK(open.transport()->practice().listens);
    CHECK(open.workbench.actions().playAlong->isChecked());
    CHECK(only->isEnabled());
}
