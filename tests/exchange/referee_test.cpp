#include "core/files/midi/write.h"
#include "core/files/musicxml/write.h"
#include "tests/exchange/outside.h"
#include "tests/exchange/scorelines.h"
#include "tests/places.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <sstream>

// Other programs' libraries read what we write: npm packages pinned in
// packaging/package-lock.json.

namespace {

bool canLoad(std::string const& package)
{
    bool const there =
        outside::run("node -e \"require('" + places::nodeModules() + "/" + package + "')\"").status ==
        0;
    if (!there) WARN("SKIPPED: node or the package " << package << " is missing: not compared");
    return there;
}

std::string contents(std::string const& path)
{
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string notesReadBy(std::string const& score)
{
    outside::TemporaryFile const file(score, ".musicxml");
    auto const answer =
        outside::run("node " + places::tests() + "/exchange/scorenotes.js " + places::nodeModules() + " " + file.path());
    INFO(answer.text);
    REQUIRE(answer.status == 0);
    std::string const lines = contents(file.path() + ".notes");
    std::filesystem::remove(file.path() + ".notes");
    return lines;
}

void checkScore(arrange::Arrangement const& arrangement)
{
    std::string const score = files::musicXml(arrangement, notation::Kind::Arrangement);
    CHECK(notesReadBy(score) == scoreLines(arrangement, divisionsOf(score)));
}

std::vector<std::string> linesOf(std::string const& text)
{
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    std::sort(lines.begin(), lines.end());
    return lines;
}

std::vector<std::string> eventsReadBy(std::string const& bytes)
{
    outside::TemporaryFile const file(bytes, ".mid");
    auto const answer =
        outside::run("node " + places::tests() + "/exchange/midinotes.js " + places::nodeModules() + " " + file.path());
    INFO(answer.text);
    REQUIRE(answer.status == 0);
    std::string const lines = contents(file.path() + ".events");
    std::filesystem::remove(file.path() + ".events");
    return linesOf(lines);
}

// Every note of both hands in ticks, worked out from the arrangement. A string plucked again
// ends its last note.
std::vector<std::string> noteLines(arrange::Arrangement const& arrangement, int division)
{
    std::vector<arrange::HandNote> const notes = arrange::handNotes(arrangement);
    auto const tick = [division](music::Moment at) {
        return std::llround(at.wholes.toDouble() * 4 * division);
    };
    std::vector<std::string> lines;
    for (arrange::HandNote const& note : notes) {
        long long end = tick(note.at + note.held);
        for (arrange::HandNote const& later : notes)
            if (later.hand == note.hand && midi(later.pitch) == midi(note.pitch) &&
                later.at > note.at)
                end = std::min(end, tick(later.at));
        std::string const track = note.hand == harp::Side::Right ? "1" : "2";
        std::string const key = ' ' + std::to_string(midi(note.pitch));
        lines.push_back(track + " on " + std::to_string(tick(note.at)) + key);
        lines.push_back(track + " off " + std::to_string(end) + key);
    }
    std::sort(lines.begin(), lines.end());
    return lines;
}

void checkMidi(arrange::Arrangement const& arrangement)
{
    std::string const bytes = files::midiFile(arrangement);
    int const division = static_cast<unsigned char>(bytes.at(12)) << 8 |
                         static_cast<unsigned char>(bytes.at(13));
    std::vector<std::string> notes;
    std::vector<std::string> others;
    for (std::string const& line : eventsReadBy(bytes))
        (line[0] == '1' || line[0] == '2' ? notes : others).push_back(line);
    CHECK(notes == noteLines(arrangement, division));
    long long const tempo = std::llround(60e6 / tune::quartersPerMinute(arrangement.tempo));
    CHECK(std::count(others.begin(), others.end(), "tempo 0 " + std::to_string(tempo)) == 1);
    CHECK(std::any_of(others.begin(), others.end(), [&](std::string const& line) {
        return line.starts_with("meter ") &&
               line.ends_with(' ' + music::text(arrangement.tune.meter));
    }));
}

} // namespace

TEST_CASE("Another program's library reads the same notes, voices and lengths from MusicXML",
          "[musicxml][referee]")
{
    if (!canLoad("musicxml-io")) return;
    checkScore(example::arrangementOf(example::jig()));
    checkScore(
        example::arrangementOf(scenario::tuneOf("X:1\nT:t\nM:4/4\nL:1/8\nK:Ador\n{e}A2 (3Bcd "
                                                "e4-|e5 z[Ac]2|(5:4:5c/d/e/f/g/ a3 x3|\n")));
    auto const tunes = nottingham::tunesWithChords();
    constexpr std::size_t every = 100; // the whole collection is tried by hand
    for (std::size_t i = 0; tunes && i < tunes->size(); i += every) {
        CAPTURE((*tunes)[i].name);
        auto const proposal = proposal::propose(scenario::briefFor((*tunes)[i].tune));
        if (proposal) checkScore(proposal->arrangement);
    }
}

TEST_CASE("Another program's library reads the same notes, tempo and meter from MIDI",
          "[midi][referee]")
{
    if (!canLoad("midi-file")) return;
    checkMidi(scenario::proposed(scenario::briefFor(scenario::eightBars)).arrangement);
    auto const tunes = nottingham::tunesWithChords();
    constexpr std::size_t every = 100;
    for (std::size_t i = 0; tunes && i < tunes->size(); i += every) {
        CAPTURE((*tunes)[i].name);
        auto const proposal = proposal::propose(scenario::briefFor((*tunes)[i].tune));
        if (proposal) checkMidi(proposal->arrangement);
    }
}
