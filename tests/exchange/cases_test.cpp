// Every outside case, and a sample of the tune books: what is read is written as ABC and as a
// lead sheet in MusicXML, and reads back the same.

#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/midi/read.h"
#include "core/files/musicxml/read.h"
#include "core/files/musicxml/write.h"
#include "core/files/textfile.h"
#include "tests/exchange/same.h"
#include "tests/places.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace fs = std::filesystem;

namespace {

fs::path const data = fs::path(places::outside()) / "data";

bool present(char const* name)
{
    if (fs::exists(data / name)) return true;
    WARN("SKIPPED: absent: " << name);
    return false;
}

std::vector<fs::path> filesIn(fs::path const& folder)
{
    std::vector<fs::path> out;
    for (auto const& entry : fs::directory_iterator(folder)) out.push_back(entry.path());
    std::sort(out.begin(), out.end());
    return out;
}

// The tune alone as an arrangement: no left hand, as written.
arrange::Arrangement bare(tune::Tune tune)
{
    proposal::Brief const brief = scenario::briefFor(scenario::eightBars);
    arrange::Arrangement out{std::move(tune), 0, brief.harp, brief.hand, {}, {}, {}, {}, {}, {}};
    out.tempo = tune::tempoOf(out.tune);
    out.playing = tune::played(out.tune);
    out.levers.setup = harp::LeverSetting(out.harp.count(), harp::Lever::Down);
    return out;
}

// Empty where both files have kept the tune, else what they have not.
std::string lost(tune::Tune const& tune)
{
    std::string const abc = files::abcOfTune(tune);
    auto const entries = files::abcTunes(abc);
    if (!entries) return "ABC: no tune";
    auto const again = files::readAbc(abc, entries->front(), "abc");
    if (!again) return "ABC: " + base::sentence(again.error());
    if (auto const other = same::difference(tune, *again, {true, false, false}); !other.empty())
        return "ABC: " + other;
    tune::Tune timed = tune;
    timed.tempo = tune::tempoOf(tune);
    auto const score = files::readMusicXml(files::musicXml(bare(tune), notation::Kind::Lead), "");
    if (!score) return "score: " + base::sentence(score.error());
    auto const other =
        same::difference(same::sounding(timed), same::sounding(*score), {true, true, false});
    return other.empty() ? "" : "score: " + other;
}

} // namespace

TEST_CASE("Every outside case of ABC is kept by both files", "[cases][data]")
{
    if (!present("abc-conformance.jsonl")) return;
    std::ifstream file(data / "abc-conformance.jsonl");
    for (std::string line; std::getline(file, line);) {
        auto const row = nlohmann::json::parse(line);
        if (!row.contains("abc")) continue;
        CAPTURE(row["id"], row["feature"]);
        std::string const text = row["abc"];
        CHECK(lost(*files::readAbc(text, files::abcTunes(text)->front(), "")) == "");
    }
}

TEST_CASE("Every outside score and MIDI file is kept by both files", "[cases][data]")
{
    if (!present("musicxml-cases")) return;
    for (fs::path const& path : filesIn(data / "musicxml-cases")) {
        if (path.extension() == ".json" || path.extension() == ".txt") continue;
        auto const tune = files::readMusicXml(*files::readTextFile(path), "");
        if (!tune) continue;
        CAPTURE(path.filename().string());
        CHECK(lost(*tune) == "");
    }
    for (fs::path const& path : filesIn(data / "midi")) {
        if (path.extension() != ".mid") continue;
        CAPTURE(path.filename().string());
        CHECK(lost(*files::readMidi(*files::readTextFile(path), "")) == "");
    }
}

TEST_CASE("A sample of the folk tunes and tune books is kept by both files", "[cases][data]")
{
    constexpr int every = 37;
    int place = 0;
    for (char const* const folder : {"nottingham-dev", "nottingham-dev/original", "tunebooks-dev"}) {
        if (!present(folder)) continue;
        for (fs::path const& path : filesIn(data / folder)) {
            if (path.extension() != ".abc") continue;
            std::string const text = *files::readTextFile(path);
            auto const entries = files::abcTunes(text);
            REQUIRE(entries);
            for (files::AbcEntry const& entry : *entries) {
                if (place++ % every != 0) continue;
                CAPTURE(path.filename().string(), entry.number, entry.title);
                if (auto const tune = files::readAbc(text, entry, "")) CHECK(lost(*tune) == "");
            }
        }
    }
}
