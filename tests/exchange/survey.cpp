#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/files/musicxml/write.h"
#include "core/files/musicxml/read.h"
#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/proposal/proposal.h"
#include "core/tune/playing.h"
#include "tests/exchange/same.h"
#include "tests/exchange/scorelines.h"
#include "tests/places.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <string>

// Not a test: writes every tune of the ABC files given, reads it back and counts what came of
// it. The tests do the same with a sample.
//   survey_exchange FOLDER-TO-WRITE-TO FILE.abc...
//   survey_exchange read FILE.musicxml...

namespace {

namespace fs = std::filesystem;

// Default harp, hand and style, best key, level 3.
proposal::Brief briefFor(tune::Tune tune)
{
    static files::Tables const tables = *files::readTables(places::shared());
    return {std::move(tune),
            *files::harpFrom(tables, "floor34", "Eb"),
            *files::handFrom(tables, "medium"),
            *files::levelFrom(tables, 3),
            tables.book,
            tables.styles.front()};
}

// The tune alone as an arrangement: no left hand, as written.
arrange::Arrangement bare(tune::Tune tune)
{
    proposal::Brief const brief = briefFor(tune);
    arrange::Arrangement out{
        std::move(tune), 0, brief.harp, brief.hand, {}, {}, {}, {}, {}, {}};
    out.tempo = tune::tempoOf(out.tune);
    out.playing = tune::played(out.tune);
    out.levers.setup = harp::LeverSetting(out.harp.count(), harp::Lever::Down);
    return out;
}

struct Tally {
    int tunes = 0, arranged = 0, written = 0, readBack = 0;
    int equal = 0, abcEqual = 0, rightEqual = 0, leftEqual = 0;
};

bool sameAbc(std::string const& what, std::string const& abc, tune::Tune const& tune,
             same::Besides const& besides)
{
    auto const entries = files::abcTunes(abc);
    auto const back = entries ? files::readAbc(abc, entries->front(), "abc")
                              : base::Result<tune::Tune>(entries.error());
    std::string const difference =
        back ? same::difference(tune, *back, besides) : base::sentence(back.error());
    if (!difference.empty()) std::printf("%s: %s\n", what.c_str(), difference.c_str());
    return difference.empty();
}

void surveyTune(tune::Tune const& tune, std::string const& name, fs::path const& folder,
                Tally& tally)
{
    ++tally.tunes;
    auto const proposal = proposal::propose(briefFor(tune));
    arrange::Arrangement const arrangement = proposal ? proposal->arrangement : bare(tune);
    tally.arranged += proposal ? 1 : 0;
    auto const kind = proposal ? notation::Kind::Arrangement : notation::Kind::Lead;
    std::string const score = files::musicXml(arrangement, kind);
    std::ofstream(folder / (name + ".musicxml"), std::ios::binary) << score;
    // To be compared with what scorenotes.js makes of the score.
    if (proposal)
        std::ofstream(folder / (name + ".musicxml.expected"), std::ios::binary)
            << scoreLines(arrangement, divisionsOf(score));
    ++tally.written;
    std::string const abc = files::abcOfTune(tune);
    tally.abcEqual += sameAbc(name + " abc", abc, tune, {}) ? 1 : 0;
    std::string const hands = files::abcOfArrangement(arrangement);
    std::ofstream(folder / (name + ".abc"), std::ios::binary) << hands;
    tune::Tune timed = arrangement.tune;
    timed.tempo = arrangement.tempo;
    tally.rightEqual += sameAbc(name + " hands", hands, timed, {true, true, true}) ? 1 : 0;
    auto const back = files::readMusicXml(score, name);
    if (!back) {
        std::printf("%s: %s\n", name.c_str(), base::sentence(back.error()).c_str());
        return;
    }
    ++tally.readBack;
    std::string const difference =
        same::difference(arrangement.tune, *back, {true, true, false});
    if (difference.empty())
        ++tally.equal;
    else
        std::printf("%s: %s\n", name.c_str(), difference.c_str());
}

void readScores(int count, char** files)
{
    for (int i = 0; i < count; ++i) {
        auto const bytes = files::readTextFile(files[i]);
        std::string const name = fs::path(files[i]).filename().string();
        if (!bytes) {
            std::printf("%s\n", base::sentence(bytes.error()).c_str());
            continue;
        }
        auto const tune = files::readMusicXml(*bytes, name);
        if (!tune) {
            std::printf("REFUSED %s\n", base::sentence(tune.error()).c_str());
            continue;
        }
        std::printf("read %s: \"%s\" %zu bars %s %s\n", name.c_str(), tune->title.c_str(),
                    tune->bars.size(), music::plain(tune->key).c_str(),
                    music::text(tune->meter).c_str());
        for (tune::Remark const& remark : tune->said)
            std::printf("    line %d: %s; %s\n", remark.place.line, remark.what.c_str(),
                        remark.did.c_str());
    }
}

} // namespace

int main(int count, char** arguments)
{
    if (count < 3) return 2;
    if (std::string(arguments[1]) == "read") {
        readScores(count - 2, arguments + 2);
        return 0;
    }
    fs::path const folder = arguments[1];
    fs::create_directories(folder);
    Tally tally;
    for (int i = 2; i < count; ++i) {
        auto const text = files::readTextFile(arguments[i]);
        if (!text) continue;
        auto const entries = files::abcTunes(*text);
        if (!entries) continue;
        for (files::AbcEntry const& entry : *entries) {
            auto const tune = files::readAbc(*text, entry, "tune");
            if (tune)
                surveyTune(*tune,
                           fs::path(arguments[i]).stem().string() + '-' +
                               std::to_string(entry.number) + '-' + std::to_string(entry.line),
                           folder, tally);
        }
    }
    std::printf(
        "%d tunes, %d arranged, %d scores written, %d read back, %d equal, %d ABC of the "
        "tune equal, %d ABC of both hands equal\n",
        tally.tunes, tally.arranged, tally.written, tally.readBack, tally.equal, tally.abcEqual,
        tally.rightEqual);
    return 0;
}
