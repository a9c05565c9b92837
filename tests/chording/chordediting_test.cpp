#include "core/tune/chordedits.h"
#include "core/tune/playing.h"
#include "tests/ui/scenario.h"
#include "ui/chordediting.h"
#include "ui/engine.h"
#include "ui/session.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QMenuBar>
#include <QTest>
#include <QTimer>

using namespace ui;
using music::Length;

namespace {

harmony::Learned const& learned() { return scenario::tables().harmony; }

struct Open {
    Session session{coreEngine(scenario::tables().levels), scenario::brief()};
    explicit Open(proposal::KeyWish key = proposal::AsWritten{})
    {
        scenario::application();
        proposal::Brief brief = scenario::brief();
        brief.key = key;
        REQUIRE(session.open(std::move(brief)));
        session.select(2);
    }
    std::string selectedChord() const
    {
        arrange::PositionIndex const at = *session.selected();
        return plain(session.arrangement().positions[at].position.chord);
    }
};

} // namespace

TEST_CASE("A typed chord takes its place in the tune, and undo takes it back", "[chording]")
{
    Open open;
    std::string const before = open.selectedChord();
    tune::Tune const tune = open.session.brief().tune;
    auto const beats = chordBeats(open.session, learned());
    REQUIRE_FALSE(beats.empty());
    std::size_t const beat = selectedBeat(open.session, beats);
    REQUIRE(beats[beat].chord);
    CHECK(plain(*beats[beat].chord) == before);
    CHECK(beats[beat].likely.size() == 5);

    ChordEditor editor("bar 2", beats, beat, 1, nullptr);
    CHECK(editor.line()->text().toStdString() == before);
    editor.line()->selectAll();
    QTest::keyClicks(editor.line(), "em7");
    CHECK(editor.said().contains("E G B D"));
    QTest::keyClick(editor.line(), Qt::Key_Return);
    REQUIRE(editor.result() == QDialog::Accepted);
    REQUIRE(editChord(open.session, beats, editor.wish()));
    CHECK(open.selectedChord() == "Em7");
    open.session.undoStack().undo();
    CHECK(open.session.brief().tune == tune);
    open.session.undoStack().redo();
    CHECK(open.selectedChord() == "Em7");
}

TEST_CASE("What is no chord cannot be set, and is said", "[chording]")
{
    Open open;
    auto const beats = chordBeats(open.session, learned());
    ChordEditor editor("bar 2", beats, 0, 3, nullptr);
    editor.line()->clear();
    QTest::keyClicks(editor.line(), "Hx");
    CHECK_FALSE(editor.said().isEmpty());
    QTest::keyClick(editor.line(), Qt::Key_Return);
    CHECK(editor.result() != QDialog::Accepted);
    CHECK(editor.everywhere()->isVisibleTo(&editor));
}

TEST_CASE("In another key the chord is typed as it sounds and kept as it is written",
          "[chording]")
{
    Open open(music::Key{{music::Letter::D, 0}, music::Mode::Ionian});
    auto const beats = chordBeats(open.session, learned());
    ChordWish wish;
    wish.beat = selectedBeat(open.session, beats);
    wish.chord = *music::chordFrom("A7");
    REQUIRE(editChord(open.session, beats, wish));
    CHECK(open.selectedChord() == "A7");
    music::Interval const moved = open.session.proposal().moved;
    bool found = false;
    for (tune::ChordSpan const& span : tune::chordSpans(open.session.brief().tune))
        found = found || plain(transposed(span.chord, moved)) == "A7";
    CHECK(found);
}

TEST_CASE("Choosing among the likely chords writes it into the line", "[chording]")
{
    Open open;
    auto const beats = chordBeats(open.session, learned());
    ChordEditor editor("bar 2", beats, 0, 1, nullptr);
    editor.likely()->setCurrentRow(1);
    CHECK(editor.line()->text().toStdString() == plain(beats[0].likely[1].chord));
}

TEST_CASE("The ways for the whole tune differ, and one is taken as one step", "[chording]")
{
    Open open;
    auto const rows = chordWayRows(open.session, learned(), false);
    REQUIRE(rows.size() == 5);
    CHECK(rows[0].chords != rows[4].chords);
    tune::Tune const before = open.session.brief().tune;
    REQUIRE(takeChordWay(open.session, learned(), harmony::Way::Drone, false));
    for (auto const& position : open.session.arrangement().positions)
        CHECK(position.position.chord.suffix == "5");
    open.session.undoStack().undo();
    CHECK(open.session.brief().tune == before);
}

TEST_CASE("Chords of the file are kept at first only where that leaves something to choose",
          "[chording]")
{
    Open open;
    auto const rowsOf = [&open](bool keep) {
        return chordWayRows(open.session, learned(), keep);
    };
    ChordWays const full(rowsOf, "", true, nullptr); // a chord in every bar
    CHECK_FALSE(full.keepsWritten());
    CHECK(full.list()->item(4)->text().contains("differ"));

    tune::Tune holed = open.session.brief().tune;
    for (tune::BarIndex i = 1; i < holed.bars.size(); i += 2) holed.bars[i].chords.clear();
    REQUIRE(open.session.open(holed));
    ChordWays const some(rowsOf, "", true, nullptr);
    CHECK(some.keepsWritten());
}

TEST_CASE("The menu of chords opens the editor, and Enter sets what was typed", "[chording]")
{
    Open open;
    QMainWindow window;
    window.menuBar()->addMenu("&File");
    ChordMenu menu(window, open.session, learned());
    CHECK(menu.chord()->isEnabled());
    bool seen = false;
    QTimer::singleShot(0, [&seen] {
        auto* editor = qobject_cast<ChordEditor*>(QApplication::activeModalWidget());
        if (!editor) return;
        seen = true;
        editor->line()->setText("C/E");
        QTest::keyClick(editor->line(), Qt::Key_Return);
    });
    menu.chord()->trigger();
    CHECK(seen);
    CHECK(open.selectedChord() == "C/E");
    menu.takeOut()->trigger();
    CHECK(open.selectedChord() != "C/E");
}
