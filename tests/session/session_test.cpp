// Whole sessions of a harper with the real program, by real events: from nothing to a page, by
// typing and by a MIDI harp.

#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/tune/chordedits.h"
#include "tests/devices/pluckedharp.h"
#include "tests/session/realwindow.h"
#include "tests/session/recording.h"
#include "tests/sound/application.h"
#include "tests/sound/spectrum.h"

#include <catch2/catch.hpp>

#include <memory>
#include <vector>

namespace {

QString const title = "The Kiln Door";

bool canSit()
{
    if (sitting::isInstalled()) return true;
    WARN("SKIPPED: no Xvfb or no xdotool: nobody sat down at the real program");
    return false;
}

QStringList chordsKept(QJsonObject const& work, QString const& origin)
{
    QStringList out;
    for (QJsonValue const& chord : work["chords"].toArray())
        if (chord["origin"].toString() == origin)
            out << QString::number(chord["bar"].toInt()) + ' ' + chord["chord"].toString();
    return out;
}

QString textOf(QString const& pdf)
{
    QProcess reader;
    reader.start("pdftotext", {"-layout", pdf, "-"});
    reader.waitForFinished();
    return QString::fromUtf8(reader.readAllStandardOutput());
}

// What was saved, read as any program would that knows the form.
proposal::Brief saved(QString const& path)
{
    auto const tables = files::readTables(places::shared());
    REQUIRE(tables);
    auto const text = files::readTextFile(path.toStdString());
    REQUIRE(text);
    auto work = files::readDocument(*text, *tables, path.toStdString());
    INFO((work ? std::string() : base::sentence(work.error())));
    REQUIRE(work);
    return std::move(work->brief);
}

std::string chordIn(tune::Tune const& tune, tune::BarIndex bar)
{
    auto const here = chordHere(tune, {bar, {}});
    return here ? plain(here->chord) : std::string();
}

std::vector<std::string> chordsSet(tune::Tune const& tune)
{
    std::vector<std::string> out;
    for (tune::Bar const& bar : tune.bars)
        for (tune::ChordMark const& mark : bar.chords)
            if (originOf(mark) == tune::ChordOrigin::Set) out.push_back(plain(mark.chord));
    return out;
}

// Chords are suggested, two are changed, a shape is taken, then it is heard, printed and saved.
void goOn(sitting::Program& sallow)
{
    sallow.press({"shift+c"});
    REQUIRE(sallow.goTo("Chords for the whole tune"));
    sallow.press({"Return"});
    REQUIRE(sallow.goes("Chords for the whole tune"));
    REQUIRE(sallow.goTo(title + ".* Sallow$"));

    for (auto const& [steps, chord] :
         {std::pair{QStringList{"Home", "Right"}, "Em"}, {{"Right", "Right"}, "Bm"}}) {
        sallow.press(steps);
        sallow.press({"c"});
        REQUIRE(sallow.goTo("Chord in"));
        sallow.type(chord);
        sallow.press({"Return"});
        REQUIRE(sallow.goes("Chord in"));
        REQUIRE(sallow.goTo(title + ".* Sallow$"));
        REQUIRE(sitting::waitFor(
            [&] { return chordsKept(sallow.kept(), "set").filter(chord).size() == 1; }));
    }
    sallow.press({"2"}); // the second shape for what is chosen
    CHECK(sitting::waitFor([&] { return sallow.kept()["locks"].toArray().size() == 1; }));
}

void print(sitting::Program& sallow)
{
    sallow.press({"ctrl+p"});
    REQUIRE(sallow.goTo("Print Preview"));
    sallow.press({"Return"});
    REQUIRE(sallow.goTo("^Print$"));
    sallow.press({"Return"});
    QString const page = sallow.at(title + ".pdf");
    REQUIRE(sallow.goes("Print Preview"));
    REQUIRE(sitting::waitFor([&] { return QFile::exists(page); }));
    REQUIRE(sallow.goTo(title + ".* Sallow$"));
    QFile file(page);
    REQUIRE(file.open(QIODevice::ReadOnly));
    CHECK(file.readAll().count("/Type /Page\n") == 1);
    if (QStandardPaths::findExecutable("pdftotext").isEmpty()) {
        WARN("SKIPPED: no pdftotext: what was printed was not read");
        return;
    }
    QString const text = textOf(page);
    CAPTURE(text.toStdString());
    CHECK(text.contains(title));
    for (char const* word : {"Em", "Set levers"}) CHECK(text.contains(word));
}

void save(sitting::Program& sallow)
{
    sallow.press({"ctrl+s"});
    REQUIRE(sallow.goTo("Save the arrangement"));
    sallow.press({"Return"}); // under its title, among her own files
    REQUIRE(sallow.goes("Save the arrangement"));
    REQUIRE(sitting::waitFor([&] { return QFile::exists(sallow.at(title + ".sallow")); }));
    REQUIRE(sallow.goTo(title + ".* Sallow$"));
}

// Her tune is heard: what the sound server plays has the pitch classes of its key and hardly
// others.
void listen(sitting::Program& sallow, DummyServer const* server, std::vector<int> const& key)
{
    std::optional<QString> port;
    bool const there = server && server->waitFor([&] { return (port = sitting::soundPort()); });
    if (!there || QStandardPaths::findExecutable("jack_rec").isEmpty()) {
        WARN("SKIPPED: no JACK server, no recorder or no sound font: nothing was heard");
        return;
    }
    constexpr int seconds = 6;
    QString const file = sallow.at("heard.wav");
    QProcess recorder;
    sitting::beginRecording(recorder, *port, seconds, file);
    sallow.press({"ctrl+space"});
    recorder.waitForFinished(sitting::patience);
    sallow.press({"Escape"});
    auto const samples = sitting::recorded(file);
    REQUIRE(samples.size() >= 48000);
    CHECK(hearing::level(samples) > 0.001);
    std::vector<double> const shares = sitting::pitchClasses(samples);
    double in = 0;
    for (int const pitchClass : key) in += shares[static_cast<std::size_t>(pitchClass)];
    CAPTURE(shares);
    CHECK(in > 0.9);
}

} // namespace

TEST_CASE("A tune of eight bars is typed, chorded, arranged, heard, printed and saved by keys",
          "[sitting]")
{
    hearing::application();
    if (!canSit()) return;
    sitting::Screen const screen;
    REQUIRE_FALSE(screen.display().isEmpty());
    std::unique_ptr<DummyServer> server;
    if (DummyServer::isInstalled())
        server = std::make_unique<DummyServer>("sallow-test-sitting");
    sitting::Program sallow(screen, {{"SALLOW_SOUND_DRIVER", "jack"}});
    REQUIRE(sallow.goTo("Sallow"));

    // New tune: title, kind, key; the time signature follows the kind, and there are eight
    // bars.
    sallow.press({"ctrl+n"});
    REQUIRE(sallow.goTo("New tune"));
    sallow.type(title);
    sallow.press({"alt+k"});
    sallow.type("reel");
    sallow.press({"alt+e"});
    sallow.type("D");
    sallow.press({"Return"});
    REQUIRE(sallow.goTo(title + ".* Sallow$"));

    // Letters in the octave nearest to the note before, 4 for a minim, a tie and a triplet.
    sallow.type("defdedba"
                "babdedef"
                "gfefgabg"
                "4fe-"
                "1edefedba"
                "babdefed"
                "dcba(bcdcb"
                "8d");
    QString const typed =
        "defdedBA|BABdedef|gfefgabg|f4e4-|edefedBA|BABdefed|dcBA(3:2:3BcdcB|d8|]";
    sitting::waitFor([&] { return sallow.music() == typed; });
    CHECK(sallow.music().toStdString() == typed.toStdString());
    CHECK(chordsKept(sallow.kept(), "found").isEmpty());

    sallow.press({"Escape"}); // done with the notes: chords are found for them
    CHECK(sitting::waitFor([&] { return !chordsKept(sallow.kept(), "found").isEmpty(); }));
    goOn(sallow);
    listen(sallow, server.get(), {2, 4, 6, 7, 9, 11, 1}); // D: two sharps
    print(sallow);
    save(sallow);
    proposal::Brief const work = saved(sallow.at(title + ".sallow"));
    CHECK(work.tune.title == title.toStdString());
    CHECK(work.tune.rhythm == "reel");
    CHECK(work.tune.meter == music::Meter{4, 4});
    CHECK(work.tune.bars.size() == 8);
    CHECK(chordIn(work.tune, 1) == "Em");
    CHECK(chordsSet(work.tune) == std::vector<std::string>{"Em", "Bm"});
    CHECK(work.locks.size() == 1);
    CHECK(sallow.leave());
}

TEST_CASE(
    "A tune of eight bars comes from a MIDI harp, and is chorded, heard, printed and saved",
    "[sitting]")
{
    hearing::application();
    if (!canSit()) return;
    if (!DummyServer::isInstalled()) {
        WARN("SKIPPED: no JACK server: nothing came from a MIDI harp");
        return;
    }
    sitting::Screen const screen;
    REQUIRE_FALSE(screen.display().isEmpty());
    DummyServer const server("sallow-test-sitting-midi");
    MidiHarp harp(server);
    if (!harp.isThere()) {
        WARN("SKIPPED: the JACK server did not start: nothing came from a MIDI harp");
        return;
    }
    sitting::Program sallow(screen,
                            {{"SALLOW_SOUND_DRIVER", "jack"}, {"SALLOW_MIDI_DRIVER", "jack"}});
    REQUIRE(sallow.goTo("Sallow"));
    sallow.press({"ctrl+n"});
    REQUIRE(sallow.goTo("New tune"));
    sallow.type(title); // a jig in G, as the dialog has it
    sallow.press({"Return"});
    REQUIRE(sallow.goTo(title + ".* Sallow$"));

    SECTION("string by string")
    {
        sallow.press({"3"}); // dotted crotchets
        QString expected;
        int bar = 0;
        // The instrument is found by itself; until then, and under load, it is plucked again.
        for (auto const& [first, second] : {std::pair{67, 71},
                                            {74, 71},
                                            {72, 69},
                                            {74, 74},
                                            {67, 71},
                                            {76, 74},
                                            {72, 69},
                                            {67, 67}}) {
            for (int const midi : {first, second}) {
                static QMap<int, QString> const names{{67, "G3"}, {69, "A3"}, {71, "B3"},
                                                      {72, "c3"}, {74, "d3"}, {76, "e3"}};
                expected += names[midi];
                REQUIRE(sitting::waitFor([&] {
                    if (sallow.music().startsWith(expected)) return true;
                    static QElapsedTimer sincePlucked;
                    if (!sincePlucked.isValid() || bar != expected.size() ||
                        sincePlucked.hasExpired(8000)) {
                        harp.pluck(midi);
                        sincePlucked.start();
                        bar = static_cast<int>(expected.size());
                    }
                    return false;
                }));
            }
            expected += '|';
        }
        CHECK((sallow.music() + '|').startsWith("G3B3|d3B3|c3A3|d3d3|G3B3|e3d3|c3A3|G3G3|"));
        sallow.press({"Escape"});
        CHECK(sitting::waitFor([&] { return !chordsKept(sallow.kept(), "found").isEmpty(); }));
        goOn(sallow);
        listen(sallow, &server, {7, 9, 11, 0, 2, 4, 6}); // G: one sharp
        print(sallow);
        save(sallow);
        proposal::Brief const work = saved(sallow.at(title + ".sallow"));
        CHECK(work.tune.rhythm == "jig");
        CHECK(work.tune.bars.size() == 8);
        CHECK(chordsSet(work.tune) == std::vector<std::string>{"Em", "Bm"});
        CHECK(sallow.leave());
    }
    SECTION("in time with the clicks")
    {
        // A jig begins at 66 beats a minute: two in a bar, one bar counted in.
        double const beat = 60.0 / 66;
        std::vector<int> const plucked{67, 71, 74, 71, 72, 69, 67, 67};
        QString const asPlayed = "G3B3|d3B3|c3A3|G3G3|";
        bool right = false;
        // A machine that is busy plucks, or hears, late: then it is played again, as she would.
        for (int attempt = 0; attempt < 5 && !right; ++attempt) {
            sallow.press({"Home", "ctrl+F2"});
            QThread::msleep(500);
            QElapsedTimer since;
            since.start();
            sallow.press({"Return"});
            for (std::size_t i = 0; i < plucked.size(); ++i) {
                double const due = (2 + static_cast<double>(i)) * beat;
                while (static_cast<double>(since.elapsed()) / 1000 < due) QThread::msleep(1);
                harp.pluck(plucked[i]);
            }
            QThread::msleep(400);
            sallow.press({"Return"}); // stop
            QThread::msleep(1000);
            sallow.press({"Return"}); // keep
            right = sitting::waitFor([&] { return sallow.music().startsWith(asPlayed); }, 4000);
            if (!right) sallow.press({"ctrl+z"});
        }
        CHECK(right);
        sallow.press({"Escape"});
        CHECK(sitting::waitFor([&] { return !chordsKept(sallow.kept(), "found").isEmpty(); }));
    }
}
