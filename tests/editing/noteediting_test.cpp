#include "core/files/abc/onebar.h"
#include "core/tune/edit/whole.h"
#include "tests/editing/window.h"
#include "ui/melodyeditor.h"
#include "ui/melodylane.h"
#include "ui/newtunedialog.h"
#include "ui/stringbank.h"
#include "ui/tunedialog.h"
#include "ui/tunegrid.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QMenu>
#include <QSpinBox>
#include <QTest>
#include <QTimer>

using namespace ui;

namespace {

struct Window : editing::Window {
    explicit Window(proposal::KeyWish key = proposal::AsWritten{}, tune::Tune tune = blank())
    {
        show(std::move(tune), key);
        QTest::keyClick(&workbench, Qt::Key_F2);
    }
    static tune::Tune blank()
    {
        tune::NewTune wish;
        wish.title = "The Kiln Door";
        wish.key = {{music::Letter::G, 0}, music::Mode::Ionian};
        wish.bars = 4;
        return tune::newTune(wish);
    }
    MelodyLane* lane() const { return notes.pane()->lane(); }
    std::string bar(tune::BarIndex index) const
    {
        return files::abcOfBar(session.brief().tune.bars[index]);
    }
    QAction* action(QString const& words) const
    {
        for (QAction* each : notes.menu()->actions())
            if (each->text().remove('&').startsWith(words)) return each;
        return nullptr;
    }
};

} // namespace

TEST_CASE("Letters typed on the pane become notes of the tune, each a step of undo",
          "[editing]")
{
    Window window;
    REQUIRE(window.notes.pane()->isVisible());
    REQUIRE(QApplication::focusWidget() == window.lane());
    QTest::keyClicks(window.lane(), "gab2c1d");
    CHECK(window.bar(0) == "GABc2d");
    CHECK(window.session.undoStack().count() == 5);
    // The caret is in the next bar, and the grid with it.
    CHECK(window.notes.pane()->typing().at == tune::NoteAt{1, 0});
    arrange::PositionIndex const selected = *window.session.selected();
    CHECK(window.session.arrangement().positions[selected].position.bar == 1);
    // What is heard follows at once.
    CHECK(window.session.arrangement().playing.notes.size() == 5);
    window.session.undoStack().undo();
    CHECK(window.bar(0) == "GABc2z");
    for (int i = 0; i < 4; ++i) window.session.undoStack().undo();
    CHECK(window.session.brief().tune == Window::blank());
    window.session.undoStack().redo();
    CHECK(window.bar(0) == "Gz5");
}

TEST_CASE("In a low window the lane keeps its room, grid and strings give way to it",
          "[editing]")
{
    Window window;
    window.workbench.resize(900, 600);
    QApplication::processEvents();
    QWidget* const pane = window.notes.pane();
    CHECK(window.lane()->height() >= window.lane()->minimumSizeHint().height());
    CHECK(pane->height() >= pane->minimumSizeHint().height());
    auto* const bank = window.workbench.findChild<StringBank*>();
    CHECK(bank->height() >= 100);
    QTest::keyClick(window.lane(), Qt::Key_Escape);
    QApplication::processEvents();
    CHECK(bank->height() >= bank->minimumSizeHint().height());
}

TEST_CASE("Keys of the pane are not those of the menus", "[editing]")
{
    Window window;
    std::size_t const locks = window.session.brief().locks.size();
    QTest::keyClicks(window.lane(), "ab");
    QTest::keyClick(window.lane(), Qt::Key_Backspace);
    QTest::keyClick(window.lane(), Qt::Key_Up);
    CHECK(window.session.brief().locks.size() == locks);
    CHECK(window.bar(0).starts_with("A"));
    QTest::keyClick(window.lane(), Qt::Key_Escape);
    CHECK_FALSE(window.notes.pane()->isVisible());
    CHECK_FALSE(window.notes.changeNotes()->isChecked());
    window.notes.openPane();
    window.workbench.setView(Workbench::View::Sheet);
    CHECK_FALSE(window.notes.pane()->isVisible());
    window.notes.openPane();
    CHECK(window.workbench.grid()->isVisible());
}

TEST_CASE("A string that is clicked is written, until that is switched off", "[editing]")
{
    Window window;
    harp::Harp const& harp = window.session.arrangement().harp;
    harp::StringIndex string = 0;
    while (diatonicStep(harp.string(string).open) < 35) ++string; // C5
    emit window.workbench.bank()->stringPlucked(string);
    music::Pitch const put = window.session.brief().tune.bars[0].notes[0].pitches.at(0);
    CHECK(put.letter == music::Letter::C);
    CHECK(put.octave == 5);
    CHECK(window.bar(0).ends_with("z5"));
}

TEST_CASE("In another key notes are typed as they sound and kept as they are written",
          "[editing]")
{
    Window window(music::Key{{music::Letter::D, 0}, music::Mode::Ionian});
    music::Interval const moved = window.session.proposal().moved;
    REQUIRE(moved.semitones != 0);
    QTest::keyClicks(window.lane(), "d");
    music::Pitch const written = window.session.brief().tune.bars[0].notes[0].pitches.at(0);
    CHECK(written.letter == music::Letter::G);
    CHECK(transposed(written, moved).letter == music::Letter::D);
}

TEST_CASE("A key that fits best stays as it is while notes are typed", "[editing]")
{
    Window window(proposal::BestKey{}, scenario::jig());
    music::Interval const moved = window.session.proposal().moved;
    QTest::keyClicks(window.lane(), "b");
    CHECK_FALSE(std::holds_alternative<proposal::BestKey>(window.session.brief().key));
    CHECK(window.session.proposal().moved == moved);
    window.session.undoStack().undo();
    CHECK(std::holds_alternative<proposal::BestKey>(window.session.brief().key));
}

TEST_CASE("The bar is changed as a line of ABC, and a fault is said with its column",
          "[editing]")
{
    Window window;
    QLineEdit* line = window.notes.pane()->line();
    CHECK(line->text() == "z6");
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, "G2A (3Bcd e");
    QTest::keyClick(line, Qt::Key_Return);
    CHECK(window.bar(0) == "G2A (3:2:3Bcd e");
    line->selectAll();
    QTest::keyClicks(line, "GAB|c3");
    QTest::keyClick(line, Qt::Key_Return);
    CHECK(window.notes.pane()->said().contains("column 5"));
    CHECK(line->text() == "GAB|c3"); // what was typed is not lost
    CHECK(window.bar(0) == "G2A (3:2:3Bcd e");
}

TEST_CASE("Bars, repeats and time bars are set from the menu, kept shapes go with them",
          "[editing]")
{
    Window window(proposal::AsWritten{}, scenario::jig());
    int const bars = window.session.brief().tune.bars.size();
    window.action("A bar after")->trigger();
    CHECK(window.session.brief().tune.bars.size() == bars + 1);
    window.action("Take this bar out")->trigger();
    CHECK(window.session.brief().tune.bars.size() == bars);
    window.session.undoStack().undo();
    window.session.undoStack().undo();
    CHECK(window.session.brief().tune == scenario::jig());
    window.action("An octave higher")->trigger();
    CHECK(window.session.brief().tune != scenario::jig());
    window.session.undoStack().undo();

    Window plain;
    plain.action("Repeat this part")->trigger();
    CHECK(plain.session.brief().tune.bars.back().repeatCloses);
    QTest::keyClicks(plain.lane(), "|||");
    plain.action("1st-time")->trigger();
    CHECK(plain.session.brief().tune.bars.size() == 5);
    CHECK(plain.session.brief().tune.bars[3].endings == std::vector{1});
    CHECK(plain.session.arrangement().playing.bars.size() == 8);
}

TEST_CASE("A double click on a note of the tune opens the pane at its bar", "[editing]")
{
    Window window(proposal::AsWritten{}, scenario::jig());
    window.notes.openPane(false);
    QApplication::processEvents();
    TuneGrid* grid = window.workbench.grid();
    REQUIRE_FALSE(grid->grid().lanes.empty());
    auto const& plucks = grid->grid().lanes.front().plucks;
    auto const note = std::find_if(plucks.begin(), plucks.end(), [](PluckDot const& pluck) {
        return pluck.fromTune && pluck.hand == harp::Side::Right;
    });
    REQUIRE(note != plucks.end());
    QTest::mouseDClick(grid->viewport(), Qt::LeftButton, {},
                       QPoint(int(note->x), int(note->y)));
    CHECK(window.notes.pane()->isVisible());
}

TEST_CASE("A new tune takes its time signature from its kind until one is chosen", "[editing]")
{
    scenario::application();
    NewTuneDialog dialog;
    auto* kind = dialog.findChildren<QComboBox*>().at(0);
    kind->setCurrentText("slip jig");
    CHECK(dialog.wish().meter == music::Meter{9, 8, false});
    CHECK(dialog.wish().kind == tune::Kind::SlipJig);
    dialog.findChild<QSpinBox*>()->setValue(16);
    CHECK(dialog.wish().bars == 16);
    CHECK(dialog.said().isEmpty());
    CHECK_FALSE(dialog.wish().title.empty());
}

TEST_CASE("Another time signature draws the bar lines anew, unless it is not wished", "[editing]")
{
    scenario::application();
    tune::Tune const tune = scenario::jig();
    TuneDialog dialog(tune);
    auto const fields = dialog.findChildren<QComboBox*>();
    auto const found = std::find_if(fields.begin(), fields.end(), [](QComboBox const* field) {
        return field->currentText() == QStringLiteral("6/8");
    });
    REQUIRE(found != fields.end());
    QComboBox* const meter = *found;
    auto const boxes = dialog.findChildren<QCheckBox*>();
    auto const anew = std::find_if(boxes.begin(), boxes.end(), [](QCheckBox const* box) {
        return box->text().contains(QStringLiteral("bar lines"));
    });
    REQUIRE(anew != boxes.end());
    CHECK_FALSE((*anew)->isEnabled()); // nothing is to be moved yet
    meter->setCurrentText(QStringLiteral("12/8"));
    REQUIRE((*anew)->isEnabled());
    CHECK(dialog.wished().bars.size() == tune.bars.size() / 2);
    CHECK(dialog.wished().meter == music::Meter{12, 8, false});
    QTest::mouseClick(*anew, Qt::LeftButton, {}, {8, (*anew)->height() / 2});
    CHECK(dialog.wished().bars.size() == tune.bars.size());
}
