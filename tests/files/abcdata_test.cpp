#include "core/files/abc/read.h"
#include "core/files/check.h"
#include "core/files/textfile.h"
#include "core/tune/playing.h"
#include "tests/places.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <map>

// The reader against material that lies beside the project; without it the tests say so and
// pass.

using namespace files;
using nlohmann::json;
namespace fs = std::filesystem;

namespace {

fs::path const data = fs::path(places::outside()) / "data";

bool present(fs::path const& path)
{
    if (fs::exists(path)) return true;
    WARN("SKIPPED: absent: " << path.filename().string());
    return false;
}

std::vector<fs::path> abcFilesIn(fs::path const& folder)
{
    std::vector<fs::path> paths;
    for (auto const& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".abc") paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    return paths;
}

std::string fromBase64(std::string const& text)
{
    constexpr std::string_view digits =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    unsigned bits = 0;
    int count = 0;
    for (char c : text) {
        std::size_t const digit = digits.find(c);
        if (digit == std::string_view::npos) continue;
        bits = bits << 6 | static_cast<unsigned>(digit);
        if ((count += 6) < 8) continue;
        count -= 8;
        out += static_cast<char>(bits >> count & 0xFF);
    }
    return out;
}

// Played notes in the form of the cases' "played": single pitches, no rests.
json playedJson(tune::Tune const& tune)
{
    json list = json::array();
    for (tune::PlayedNote const& note : tune::played(tune).notes)
        list.push_back(
            {midi(note.pitch), note.held.wholes.numerator(), note.held.wholes.denominator()});
    return list;
}

json gracesJson(tune::Tune const& tune)
{
    json list = json::array();
    int index = 0;
    for (tune::Bar const& bar : tune.bars)
        for (tune::Note const& note : bar.notes) {
            json keys = json::array();
            for (music::Pitch const& pitch : note.graces) keys.push_back(midi(pitch));
            if (!keys.empty()) list.push_back({index, keys});
            ++index;
        }
    return list;
}

// The invariants of tune.h, and what playing.h makes of the tune.
void checkPromises(tune::Tune const& tune)
{
    REQUIRE(!tune.bars.empty());
    bool inOrder = true;
    for (tune::Bar const& bar : tune.bars) {
        music::Length at;
        for (tune::Note const& note : bar.notes) {
            inOrder = inOrder && note.at == at && note.length.wholes > music::Rational(0);
            at = at + note.length;
        }
        inOrder = inOrder && at == bar.length && !bar.notes.empty();
        for (tune::Tuplet const& tuplet : bar.tuplets)
            inOrder = inOrder && tuplet.first >= 0 && tuplet.first <= tuplet.last &&
                      tuplet.last < static_cast<int>(bar.notes.size());
    }
    CHECK(inOrder);
    tune::Playing const playing = tune::played(tune);
    CHECK(playing.bars.size() >= 1);
    CHECK_FALSE(playing.notes.empty());
    bool inBars = true;
    for (tune::ChordSpan const& span : tune::chordSpans(tune)) {
        tune::Bar const& bar = tune.bars.at(span.bar);
        inBars = inBars && span.length.wholes > music::Rational(0) &&
                 span.at + span.length <= bar.length;
    }
    CHECK(inBars);
}

struct Count {
    std::size_t tunes = 0;
    std::size_t read = 0;
    std::size_t withChords = 0;
    std::size_t remarks = 0;
    std::map<std::string, std::size_t> refusals;
};

// Reads every tune of a file and holds each to the promises of tune.h.
void readAll(fs::path const& path, Count& count)
{
    auto const text = readTextFile(path);
    REQUIRE(text);
    auto const entries = abcTunes(*text, path.filename().string());
    REQUIRE(entries);
    for (AbcEntry const& entry : *entries) {
        ++count.tunes;
        auto const tune = readAbc(*text, entry, path.filename().string());
        if (!tune) {
            ++count.refusals[base::sentence(tune.error())];
            continue;
        }
        ++count.read;
        count.withChords += hasChords(*tune) ? 1 : 0;
        count.remarks += tune->said.size();
        CAPTURE(path.filename().string(), entry.number, tune->title);
        checkPromises(*tune);
    }
}

// Reads all files of a folder and says what came of it.
Count readFolder(std::string const& folder)
{
    Count count;
    for (fs::path const& path : abcFilesIn(data / folder)) readAll(path, count);
    WARN(folder << ": " << count.read << " of " << count.tunes << " tunes read, "
                << count.withChords << " with chords, " << count.remarks << " remarks");
    for (auto const& [sentence, times] : count.refusals) WARN(sentence << " (" << times << ")");
    return count;
}

} // namespace

TEST_CASE("Every case of the outside ABC conformance list that a reader must pass is passed",
          "[abc][data]")
{
    // shared/data/abc-conformance.jsonl: one feature of ABC 2.1 a line, with the expected
    // notes.
    fs::path const path = data / "abc-conformance.jsonl";
    if (!present(path)) return;
    std::ifstream file(path);
    std::string line;
    int cases = 0;
    while (std::getline(file, line)) {
        json const row = json::parse(line);
        ++cases;
        CAPTURE(row["id"], row["feature"], row["level"]);
        std::string const text = row.contains("abc_base64") ? fromBase64(row["abc_base64"])
                                                            : row["abc"].get<std::string>();
        auto const entries = abcTunes(text);
        REQUIRE(entries);
        auto const tune = readAbc(text, entries->front(), "case");
        REQUIRE(tune);
        json const read = json::parse(checkLine(*tune));
        CHECK(read["notes"] == row["expect"]);
        if (row.contains("title")) CHECK(read["title"] == row["title"]);
        if (row.contains("chords")) CHECK(read["chords"] == row["chords"]);
        if (row.contains("grace")) CHECK(gracesJson(*tune) == row["grace"]);
        if (row.contains("played")) CHECK(playedJson(*tune) == row["played"]);
        if (row.contains("tunes")) CHECK(entries->size() == row["tunes"].get<std::size_t>());
        if (row.contains("meter")) {
            CHECK(tune->meter.beats == row["meter"][0]);
            CHECK(tune->meter.unit == row["meter"][1]);
        }
        if (row.contains("tempo")) {
            REQUIRE(tune->tempo);
            CHECK(tune->tempo->beatsPerMinute == row["tempo"]["bpm"].get<double>());
            CHECK(tune->tempo->beat.wholes ==
                  music::Rational(row["tempo"]["beat"][0], row["tempo"]["beat"][1]));
        }
    }
    CHECK(cases >= 72);
}

TEST_CASE("Every folk tune of the outside collection reads", "[abc][data]")
{
    // shared/data/README.md: 511 tunes cleaned by machine, 513 as first typed.
    if (!present(data / "nottingham-dev")) return;
    Count const cleaned = readFolder("nottingham-dev");
    CHECK(cleaned.read == 511);
    CHECK(cleaned.withChords == 507);
    CHECK(readFolder("nottingham-dev/original").read == 513);
}

TEST_CASE("The old printed tune books read but for two keys that are none", "[abc][data]")
{
    // shared/data/README.md: 1,923 tunes, 25 of them with chords; two have the misprint K:Bn.
    if (!present(data / "tunebooks-dev")) return;
    Count const count = readFolder("tunebooks-dev");
    CHECK(count.read >= 1921);
    CHECK(count.withChords == 25);
}

TEST_CASE("Damaged and hostile ABC files are read with remarks or refused with a reason",
          "[abc][data]")
{
    // shared/data/broken/manifest.json: no crash, no hang, no great appetite for memory.
    fs::path const folder = data / "broken";
    if (!present(folder)) return;
    int files = 0;
    for (fs::path const& path : abcFilesIn(folder)) {
        CAPTURE(path.filename().string());
        ++files;
        auto const text = readTextFile(path);
        REQUIRE(text);
        auto const entries = abcTunes(*text, "file");
        if (!entries) {
            CHECK(entries.error().place == "file");
            continue;
        }
        for (AbcEntry const& entry : *entries) {
            auto const tune = readAbc(*text, entry, "file");
            if (tune)
                checkPromises(*tune);
            else
                CHECK(tune.error().place.starts_with("file, line "));
        }
    }
    CHECK(files >= 44);
}
