// Notes played in time, in the window: shown before they are kept, kept as one step of undo,
// played again or thrown away. What a MIDI instrument sends is tried in tests/playalong.
#include "core/files/abc/onebar.h"
#include "core/tune/edit/whole.h"
#include "tests/editing/window.h"
#include "ui/melodyeditor.h"
#include "ui/newtunedialog.h"
#include "ui/notetake.h"
#include "ui/takebar.h"

#include <catch2/catch.hpp>

#include <QDialogButtonBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTest>

using namespace ui;

namespace {

struct Window : editing::Window {
    NoteTake take{workbench, session, notes};
    QSignalSpy clicks{&take, &NoteTake::clicksWanted};
    QSignalSpy stops{&take, &NoteTake::stopWanted};

    explicit Window(int bars = 4)
    {
        tune::NewTune wish;
        wish.title = "The Kiln Door";
        wish.key = {{music::Letter::G, 0}, music::Mode::Ionian};
        wish.meter = {4, 4, false};
        wish.kind = tune::Kind::Reel;
        wish.bars = bars;
        show(tune::newTune(wish), proposal::AsWritten{});
        QTest::keyClick(&workbench, Qt::Key_F2, Qt::ControlModifier);
        REQUIRE(take.bar()->isVisible());
    }
    QStringList bars(tune::Tune const& tune) const
    {
        QStringList out;
        for (tune::Bar const& bar : tune.bars)
            out << QString::fromStdString(files::abcOfBar(bar)).remove(QLatin1Char(' '));
        return out;
    }
    QStringList kept() const { return bars(session.brief().tune); }
    double crotchet() const { return 60 / quartersPerMinute(take.bar()->tempo()); }
    // A note on each beat, as it arrives from an instrument.
    std::vector<tune::HeardNote> beats(std::vector<int> const& midi, int from = 0) const
    {
        std::vector<tune::HeardNote> out;
        for (std::size_t i = 0; i < midi.size(); ++i)
            out.push_back({crotchet() * (from + static_cast<int>(i)), std::nullopt, midi[i]});
        return out;
    }
    void play(std::vector<tune::HeardNote> const& notesPlayed)
    {
        QTest::keyClick(take.bar(), Qt::Key_Return);
        REQUIRE(take.bar()->stage() == TakeBar::Stage::Playing);
        take.ended(notesPlayed);
    }
};

} // namespace

TEST_CASE("What is played is shown first, and becomes the tune when it is kept", "[notetake]")
{
    Window window;
    QStringList const before = window.kept();
    CHECK(window.take.bar()->hasFocus());
    window.play(window.beats({67, 69, 71, 72, 74, 71, 67, 67}));
    REQUIRE(window.take.bar()->stage() == TakeBar::Stage::Played);
    QStringList const played{"G2A2B2c2", "d2B2G2G2"};
    CHECK(window.bars(window.notes.pane()->typing().tune) == played);
    CHECK(window.kept() == before);
    CHECK(window.take.bar()->words().contains("8 notes"));
    QTest::keyClick(window.take.bar(), Qt::Key_Return);
    CHECK(window.kept() == played); // a tune of rests loses those that were not reached
    CHECK(window.take.bar()->isHidden());
    CHECK(window.notes.pane()->isVisible());
    CHECK(window.session.undoStack().count() == 1);
    window.session.undoStack().undo();
    CHECK(window.kept() == before);
}

TEST_CASE("It is played again, or thrown away, and nothing of it stays", "[notetake]")
{
    Window window;
    QStringList const before = window.kept();
    window.play(window.beats({67, 69, 71, 72}));
    QTest::keyClick(window.take.bar(), Qt::Key_R);
    CHECK(window.take.bar()->stage() == TakeBar::Stage::Ready);
    CHECK(window.bars(window.notes.pane()->typing().tune) == before);
    window.play(window.beats({74, 74, 74, 74}));
    QTest::keyClick(window.take.bar(), Qt::Key_Escape);
    CHECK(window.take.bar()->isHidden());
    CHECK(window.bars(window.notes.pane()->typing().tune) == before);
    CHECK(window.kept() == before);
    CHECK(window.session.undoStack().count() == 0);
}

TEST_CASE("Closing the pane while it is played stops the clicks", "[notetake]")
{
    Window window;
    QTest::keyClick(window.take.bar(), Qt::Key_Space);
    REQUIRE(window.clicks.count() == 1);
    window.notes.openPane(false);
    CHECK(window.stops.count() == 1);
    CHECK_FALSE(window.take.shown());
    CHECK(window.notes.pane()->writesWhatIsPlayed()); // note by note, as before
}

TEST_CASE("Where nothing arrives it says what to do", "[notetake]")
{
    Window window;
    window.play({});
    CHECK(window.take.bar()->stage() == TakeBar::Stage::Ready);
    CHECK(window.take.bar()->words().contains("Harp sound and MIDI"));
}

TEST_CASE("Played from a bar in the middle on, with a pick-up, the others stay", "[notetake]")
{
    Window window;
    window.play(window.beats({67, 69, 71, 72, 67, 69, 71, 72, 67, 69, 71, 72}));
    QTest::keyClick(window.take.bar(), Qt::Key_Return);
    REQUIRE(window.kept().size() == 3);
    window.notes.pane()->setBar(1);
    QTest::keyClick(&window.workbench, Qt::Key_F2, Qt::ControlModifier);
    CHECK(window.take.bar()->words().contains("bar 2"));
    window.play(window.beats({76, 74, 74, 74, 74}, -1));
    QTest::keyClick(window.take.bar(), Qt::Key_Return);
    CHECK(window.kept() == QStringList{"G2A2B2e2", "d2d2d2d2", "G2A2B2c2"});
}

TEST_CASE("A bar is counted in, two where it is shorter than a second and a half", "[notetake]")
{
    double countIn = 0;
    auto const slow = takeClicks({4, 4, false}, 2.4, 2, countIn);
    CHECK(countIn == Approx(2.4));
    CHECK(slow.clicks.size() == 12);
    CHECK(slow.clicks[4].accented);
    CHECK(slow.clicks[4].at == Approx(2.4));
    CHECK(slow.counted == Approx(7.2));
    takeClicks({6, 8, false}, 1.6, 2, countIn); // 1.2 s a bar
    CHECK(countIn == Approx(2.4));
}

TEST_CASE("It stops by itself after two bars of silence", "[notetake]")
{
    Window window;
    QTest::keyClick(window.take.bar(), Qt::Key_Return);
    for (int beat = 0; beat < 40; ++beat) window.take.beat(beat % 4 == 0);
    CHECK(window.stops.count() == 0); // she has not begun yet
    window.take.noteHeard();
    for (int beat = 0; beat < 8; ++beat) window.take.beat(beat % 4 == 0);
    CHECK(window.stops.count() == 0);
    window.take.beat(true);
    CHECK(window.stops.count() == 1);
}

TEST_CASE("A new tune may be begun by playing, at a tempo of its own", "[notetake]")
{
    scenario::application();
    NewTuneDialog dialog;
    CHECK_FALSE(dialog.tempo());
    auto const spins = dialog.findChildren<QSpinBox*>();
    for (QSpinBox* spin : spins)
        if (!spin->specialValueText().isEmpty()) spin->setValue(66);
    REQUIRE(dialog.tempo());
    CHECK(dialog.tempo()->beat == music::Length{music::Rational(3, 8)}); // of a jig
    CHECK(dialog.tempo()->beatsPerMinute == 66);
    for (QPushButton* button : dialog.findChildren<QPushButton*>())
        if (button->text().remove('&').startsWith("Play it in"))
            QTest::mouseClick(button, Qt::LeftButton);
    CHECK(dialog.result() == QDialog::Accepted);
    CHECK(dialog.playsIn());
}
