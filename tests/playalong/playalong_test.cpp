// Playing along from the instrument to what is told afterwards: a MIDI harp is a client of a
// JACK server without hardware, and the window is joined with it as the program joins them.

#include "app/playback.h"
#include "app/preferences.h"
#include "core/files/abc/onebar.h"
#include "core/tune/edit/whole.h"
#include "tests/devices/pluckedharp.h"
#include "tests/ui/scenario.h"
#include "ui/engine.h"
#include "ui/melodyeditor.h"
#include "ui/melodylane.h"
#include "ui/noteediting.h"
#include "ui/notetake.h"
#include "ui/playedalong.h"
#include "ui/practicecard.h"
#include "ui/session.h"
#include "ui/takebar.h"
#include "ui/transport.h"
#include "ui/workbench.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QElapsedTimer>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <memory>

namespace {

struct Open {
    QApplication& application = scenario::application();
    QTemporaryDir folder;
    app::Preferences preferences{folder.filePath("preferences.ini")};
    ui::Session session{ui::coreEngine(), scenario::brief()};
    ui::Workbench workbench{session, scenario::tables()};
    std::unique_ptr<app::Playback> hearing;
    std::optional<ui::Audition> heard;

    Open()
    {
        ui::HarpSound sound = preferences.harpSound();
        sound.midiIn = "lapharp:harp";
        preferences.keepHarpSound(sound);
        hearing = std::make_unique<app::Playback>(workbench, preferences,
                                                  scenario::tables().temperaments);
        QObject::connect(&workbench, &ui::Workbench::playRequested,
                         [this](ui::Audition const& audition) { heard = audition; });
        workbench.resize(1200, 900);
        workbench.show();
        REQUIRE(session.open(scenario::jig()));
        workbench.transport()->practiceCard()->toggleListens();
        workbench.transport()->toggleRight(); // hers
    }

    // The tune's notes of the bars that were asked for, as the right hand has them.
    std::vector<perform::Event> hers() const
    {
        perform::Hearing both = heard->hearing;
        both.left = both.right = true;
        std::vector<perform::Event> out;
        for (perform::Event const& event : perform::scheduled(heard->arrangement, both).events)
            if (event.kind == perform::Event::Kind::Pluck && event.hand == harp::Side::Right)
                out.push_back(event);
        return out;
    }

    QString told()
    {
        ui::PlayedDialog* dialog = nullptr;
        bool const shown = QTest::qWaitFor(
            [&] {
                dialog = workbench.findChild<ui::PlayedDialog*>();
                return dialog && dialog->isVisible();
            },
            patienceMs);
        if (!shown) return {};
        QString words;
        for (QLabel* label : dialog->findChildren<QLabel*>()) words += label->text() + '\n';
        return words;
    }
};

// Four bars in G with nothing in them, to be written or played into.
proposal::Brief emptyTune()
{
    tune::NewTune wish;
    wish.title = "The Kiln Door";
    wish.key = {{music::Letter::G, 0}, music::Mode::Ionian};
    wish.bars = 4;
    proposal::Brief brief = scenario::brief();
    brief.key = proposal::AsWritten{};
    brief.tune = tune::newTune(wish);
    return brief;
}

} // namespace

TEST_CASE("A MIDI harp that plays along is judged by what arrives from it", "[playalong]")
{
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: nothing was played along");
        return;
    }
    DummyServer const server("sallow-test-along");
    qputenv("SALLOW_MIDI_DRIVER", "jack");
    MidiHarp harp(server);
    if (!harp.isThere()) {
        WARN("SKIPPED: the JACK server did not start: nothing was played along");
        qunsetenv("SALLOW_MIDI_DRIVER");
        return;
    }
    Open open;
    // Until the instrument is heard: a string that it plucks lights.
    int lit = 0;
    QObject::connect(&open.workbench, &ui::Workbench::stringPluckRequested, [&lit] { ++lit; });
    REQUIRE(QTest::qWaitFor(
        [&] {
            harp.pluck(67);
            QTest::qWait(50);
            return lit > 0;
        },
        patienceMs));

    open.session.select(0);
    SECTION("in time: one note is another, one is left out")
    {
        open.workbench.actions().hearBar->trigger();
        REQUIRE(open.heard);
        auto const notes = open.hers();
        REQUIRE(notes.size() >= 4);
        for (std::size_t i = 0; i < notes.size(); ++i) {
            if (i == 2) continue;
            int const midi = notes[i].midi + (i == 1 ? 2 : 0);
            QTimer::singleShot(static_cast<int>(1000 * notes[i].at), Qt::PreciseTimer,
                               &open.workbench, [&harp, midi] { harp.pluck(midi); });
        }
        QString const words = open.told();
        CAPTURE(words.toStdString());
        CHECK(words.contains(QString("%1 of %2 notes were in their place")
                                 .arg(notes.size() - 2)
                                 .arg(notes.size())));
    }
    SECTION("it waits for the right strings")
    {
        auto* card = open.workbench.transport()->practiceCard();
        ui::Practice practice = open.workbench.transport()->practice();
        practice.rightString = true;
        card->setPractice(practice);
        open.workbench.actions().hearBar->trigger();
        REQUIRE(open.heard);
        auto const notes = open.hers();
        harp.pluck(notes[0].midi + 2); // another string: it does not go on
        QTest::qWait(100);
        for (std::size_t i = 0; i < notes.size(); ++i) {
            CHECK_FALSE(open.workbench.findChild<ui::PlayedDialog*>());
            harp.pluck(notes[i].midi);
            QTest::qWait(60);
        }
        CHECK_FALSE(open.told().isEmpty());
    }
    SECTION("step entry: keys of the instrument are written as notes, one after another")
    {
        ui::NoteEditing notes(open.workbench, open.session);
        proposal::Brief brief = emptyTune();
        REQUIRE(open.session.open(std::move(brief)));
        QTest::keyClick(&open.workbench, Qt::Key_F2);
        REQUIRE(notes.pane()->isVisible());
        auto const bar = [&] { return files::abcOfBar(open.session.brief().tune.bars[0]); };
        QTest::keyClick(notes.pane()->lane(), Qt::Key_2); // crotchets
        for (int const midi : {67, 69, 71}) {
            std::string const before = bar();
            harp.pluck(midi);
            REQUIRE(QTest::qWaitFor([&] { return bar() != before; }, patienceMs));
        }
        CHECK(bar() == "G2A2B2");
    }
    SECTION("a new tune played in: counted in, put on the beat, shown and kept")
    {
        ui::NoteEditing notes(open.workbench, open.session);
        ui::NoteTake take(open.workbench, open.session, notes);
        open.hearing->recording().serve(take);
        proposal::Brief brief = emptyTune();
        brief.tune.tempo = tune::Tempo{music::Length{music::Rational(3, 8)}, 66};
        REQUIRE(open.session.open(std::move(brief)));
        take.begin();
        REQUIRE(take.bar()->isVisible());
        // G A B d2 B | A G E G3: when each is plucked, in quavers from the first beat.
        std::vector<std::pair<int, int>> const plucks{
            {0, 67}, {1, 69}, {2, 71}, {3, 74}, {5, 71}, {6, 69}, {7, 67}, {8, 64}, {9, 67}};
        double const quaver = 60.0 / 66 / 3;
        double countIn = 0;
        QElapsedTimer since;
        QObject::connect(&take, &ui::NoteTake::clicksWanted, &take,
                         [&](perform::Course const&, double seconds) {
                             countIn = seconds;
                             since.start();
                         });
        QStringList const asPlayed{"GABd2B", "AGEG3"};
        QStringList shown;
        // A machine that is busy plucks, or hears, late: then it is played again, as a harper
        // would.
        for (int attempt = 0; attempt < 4; ++attempt) {
            QTest::keyClick(take.bar(), Qt::Key_Return);
            for (auto const& [at, midi] : plucks) {
                double const due = countIn + at * quaver;
                while (static_cast<double>(since.elapsed()) / 1000 < due) QTest::qWait(1);
                harp.pluck(midi);
            }
            QTest::qWait(300);
            QTest::keyClick(take.bar(), Qt::Key_Return); // stop
            REQUIRE(QTest::qWaitFor(
                [&] { return take.bar()->stage() != ui::TakeBar::Stage::Playing; },
                patienceMs));
            shown.clear();
            if (take.shown())
                for (tune::Bar const& each : take.shown()->bars)
                    shown << QString::fromStdString(files::abcOfBar(each)).remove(' ');
            if (shown == asPlayed || attempt == 3) break;
            QTest::keyClick(take.bar(), Qt::Key_R);
        }
        CHECK(shown == asPlayed);
        CHECK_FALSE(tune::hasNotes(open.session.brief().tune));
        QTest::keyClick(take.bar(), Qt::Key_Return); // keep
        CHECK(files::abcOfBar(open.session.brief().tune.bars[0]) == "GABd2B");
        CHECK(open.session.undoStack().count() == 1);
    }
    qunsetenv("SALLOW_MIDI_DRIVER");
}
