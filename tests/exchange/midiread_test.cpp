#include "core/files/check.h"
#include "core/files/midi/read.h"
#include "core/files/midi/smf.h"
#include "core/files/midi/smfread.h"
#include "core/files/midi/write.h"
#include "core/files/textfile.h"
#include "tests/exchange/samples.h"
#include "tests/places.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>

using base::FaultCode;
using music::Rational;
namespace fs = std::filesystem;

namespace {

fs::path const data = fs::path(places::outside()) / "data";

tune::Tune tuneIn(std::string const& bytes)
{
    auto tune = files::readMidi(bytes, "file");
    if (!tune) FAIL(base::sentence(tune.error()));
    return *std::move(tune);
}

// What sounds, as key, beginning and length.
using Heard = std::set<std::tuple<int, Rational, Rational>>;

Heard heard(tune::Playing const& playing)
{
    Heard out;
    for (tune::PlayedNote const& note : playing.notes)
        out.emplace(midi(note.pitch), note.at.wholes, note.held.wholes);
    return out;
}

} // namespace

TEST_CASE("An arrangement written as MIDI reads back as the tune it plays", "[midi][read]")
{
    auto const proposal = scenario::proposed(scenario::briefFor(scenario::eightBars));
    arrange::Arrangement const& arrangement = proposal.arrangement;
    tune::Tune const back = tuneIn(files::midiFile(arrangement));
    CHECK(back.title == arrangement.tune.title);
    CHECK(back.key == arrangement.tune.key);
    CHECK(text(back.meter) == text(arrangement.tune.meter));
    CHECK(quartersPerMinute(tempoOf(back)) ==
          Approx(quartersPerMinute(arrangement.tempo)).margin(0.1));
    CHECK(heard(tune::played(back)) == heard(arrangement.playing));
}

TEST_CASE("Notes played freely are put on the grid, thirds as triplets", "[midi][read]")
{
    files::SmfTrack track;
    track.key(0, 1, false);
    // Crotchets of 480 ticks: a late crotchet, three thirds of the next, a short last note.
    track.note(11, 470, 0, 67, 80);
    track.note(480, 640, 0, 71, 80);
    track.note(644, 800, 0, 74, 80);
    track.note(797, 960, 0, 66, 80);
    track.note(960, 1400, 0, 67, 80);
    tune::Tune const tune = tuneIn(files::smf(480, {track}));
    std::vector<std::pair<std::string, Rational>> notes;
    for (tune::Note const& note : tune.bars[0].notes)
        notes.emplace_back(note.pitches.empty() ? "rest" : music::plain(note.pitches[0]),
                           note.length.wholes);
    using Named = std::pair<std::string, Rational>;
    CHECK(notes == std::vector<Named>{{"G4", {1, 4}},
                                      {"B4", {1, 12}},
                                      {"D5", {1, 12}},
                                      {"F#4", {1, 12}},
                                      {"G4", {1, 4}},
                                      {"rest", {1, 4}}});
    CHECK(tune.bars[0].tuplets == std::vector<tune::Tuplet>{{1, 3, 3, 2}});
    CHECK_FALSE(tune.said.empty());
}

TEST_CASE("The outside MIDI files have the notes that are expected of them",
          "[midi][read][data]")
{
    // shared/data/midi/expected.json: written byte by byte, read back with another library.
    fs::path const folder = data / "midi";
    if (!fs::exists(folder)) {
        WARN("SKIPPED: absent: midi");
        return;
    }
    std::ifstream file(folder / "expected.json");
    for (auto const& row : nlohmann::json::parse(file)) {
        std::string const name = row["file"];
        CAPTURE(name);
        std::string const bytes = *files::readTextFile(folder / name);
        auto const contents = files::readSmf(bytes, name);
        REQUIRE(contents);
        std::multiset<std::tuple<int, int, std::int64_t, std::int64_t, int>> ours;
        std::multiset<std::tuple<int, int, std::int64_t, std::int64_t, int>> theirs;
        int track = 0;
        for (auto const& one : contents->tracks) {
            for (files::SmfNote const& note : one.notes)
                ours.emplace(track, note.channel, note.from, note.to - note.from, note.key);
            ++track;
        }
        for (auto const& note : row["notes"])
            theirs.emplace(note["track"], note["channel"], note["tick"], note["ticks"],
                           note["midi"]);
        CHECK(ours == theirs);
        auto const tune = files::readMidi(bytes, name);
        REQUIRE(tune);
        CHECK_FALSE(files::checkLine(*tune).empty());
    }
}

TEST_CASE("Damaged and hostile MIDI files are read with remarks or refused with a reason",
          "[midi][read][data]")
{
    samples::eachBroken({".mid"}, 13, [](fs::path const& path) {
        auto const tune = files::readMidi(*files::readTextFile(path), "file");
        if (!tune) CHECK(tune.error().place.starts_with("file"));
    });
}

TEST_CASE("What is no MIDI file, or has no division or notes, is refused", "[midi][read]")
{
    auto const code = [](std::string const& bytes) {
        auto const read = files::readMidi(bytes, "file");
        REQUIRE_FALSE(read);
        return read.error().code;
    };
    CHECK(code("X:1\nK:C\nCDE|\n") == FaultCode::Malformed);
    CHECK(code(std::string("MThd\0\0\0\6\0\0", 10)) == FaultCode::Malformed);
    CHECK(code(std::string("MThd\0\0\0\6\0\0\0\1\0\0", 14)) == FaultCode::BadScoreValue);
    CHECK(code(files::smf(480, {files::SmfTrack{}})) == FaultCode::NoNotes);
}

TEST_CASE("Notes that are never switched off end with their track, and it is said", "[midi][read]")
{
    // Byte by byte after Standard MIDI Files 1.0: C4 on at 0 and never off, E4 for a crotchet, and
    // the end of the track a minim after the beginning.
    std::string const events("\x00\x90\x3c\x50\x00\x90\x40\x50\x60\x80\x40\x00\x60\xff\x2f\x00", 16);
    std::string const file =
        std::string("MThd\0\0\0\6\0\0\0\1\0\x60MTrk\0\0\0\x10", 22) + events;
    tune::Tune const tune = tuneIn(file);
    CHECK(std::any_of(tune.said.begin(), tune.said.end(), [](tune::Remark const& remark) {
        return remark.what == "notes are never switched off";
    }));
    CHECK(tune::hasNotes(tune));
}
