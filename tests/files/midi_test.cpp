#include "core/files/midi/write.h"
#include "core/perform/schedule.h"
#include "tests/files/smfreader.h"
#include "tests/perform/pieces.h"
#include "tests/places.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>

using namespace pieces;
using smfreader::metas;
using smfreader::Note;

namespace {

enum Meta { Name = 0x03, Tempo = 0x51, Meter = 0x58, Key = 0x59 };

smfreader::File written(arrange::Arrangement const& arrangement)
{
    return smfreader::read(files::midiFile(arrangement));
}

struct WrittenMeter {
    std::int64_t tick = 0;
    int beats = 0;
    int powerOfTwo = 0;
    friend bool operator==(WrittenMeter const&, WrittenMeter const&) = default;
};

std::vector<WrittenMeter> meters(smfreader::File const& file)
{
    std::vector<WrittenMeter> out;
    for (auto const& event : metas(file.tracks.at(0), Meter))
        out.push_back({event.tick, event.byte(0), event.byte(1)});
    return out;
}

// A jig of a quaver's pick-up and two bars, repeated: the second bar is short by the pick-up.
arrange::Arrangement jigWithPickUp()
{
    auto pickUp = barOf({6, 8}, wholes(1, 8), {d5});
    pickUp.upbeat = wholes(5, 8);
    auto last = barOf({6, 8}, wholes(1, 8), {c5, d5, e5, c5, d5});
    last.repeatCloses = true;
    tune::Tune tune;
    tune.bars = {pickUp, barOf({6, 8}, wholes(1, 8), {c5, d5, e5, c5, d5, e5}), last};
    return arranged(tune, {wholes(3, 8), 120}, {{}, {}, {}});
}

} // namespace

TEST_CASE("A MIDI file has a track for the signatures and one for each hand on the harp",
          "[midi]")
{
    auto const file = written(twoBars());
    CHECK(file.format == 1);
    REQUIRE(file.tracks.size() == 3);
    std::array const names{"Two bars", "Right hand", "Left hand"};
    for (std::size_t i = 0; i < 3; ++i) {
        REQUIRE(metas(file.tracks[i], Name).size() == 1);
        CHECK(metas(file.tracks[i], Name)[0].data == names[i]);
    }
    for (std::size_t i : {1U, 2U}) {
        auto const program = std::ranges::find_if(
            file.tracks[i], [](auto const& e) { return e.status >> 4 == 0xC; });
        REQUIRE(program != file.tracks[i].end());
        CHECK(program->byte(0) == 46); // General MIDI 1: 47 Orchestral Harp, counted from 1
        CHECK(program->tick == 0);
    }
}

TEST_CASE("Notes of a MIDI file lie on the exact ticks of the arrangement", "[midi]")
{
    auto const file = written(twoBars());
    int const crotchet = file.division;
    auto const left = smfreader::notes(file.tracks[2]);
    REQUIRE(left.size() == 5);
    std::vector<std::pair<int, std::int64_t>> keys;
    for (Note const& note : left) keys.emplace_back(note.key, note.from / crotchet);
    CHECK(keys == std::vector<std::pair<int, std::int64_t>>{
                      {48, 0}, {55, 0}, {60, 0}, {48, 4}, {55, 6}});
    CHECK(left[4].to == 8 * crotchet);
    auto const right = smfreader::notes(file.tracks[1]);
    REQUIRE(right.size() == 8);
    CHECK(right[6].key == 79);
    CHECK(right[6].from == 6 * crotchet);
    CHECK(right[6].to == 7 * crotchet);
}

TEST_CASE("Tuplets of three, five and seven fall on whole ticks", "[midi]")
{
    auto const [actual, each] = GENERATE(
        table<int, Length>({{3, wholes(1, 12)}, {5, wholes(1, 20)}, {7, wholes(1, 28)}}));
    tune::Tune tune;
    tune.bars = {barOf({1, 4}, each, std::vector(static_cast<std::size_t>(actual), c5))};
    auto const file = written(arranged(tune, {wholes(1, 4), 60}, {{}}));
    auto const notes = smfreader::notes(file.tracks[1]);
    REQUIRE(notes.size() == static_cast<std::size_t>(actual));
    CHECK(file.division % actual == 0);
    for (int i = 0; i < actual; ++i)
        CHECK(notes[static_cast<std::size_t>(i)].from * actual ==
              std::int64_t{i} * file.division);
}

TEST_CASE("Tempo, meter and key are written as the standard has them", "[midi]")
{
    auto arrangement = twoBars();
    for (tune::Bar& bar : arrangement.tune.bars)
        bar.key = {{music::Letter::E, -1}, music::Mode::Ionian};
    arrangement.tune.bars[1].key = {{music::Letter::E, 0}, music::Mode::Aeolian};
    auto const file = written(arrangement);
    auto const tempo = metas(file.tracks[0], Tempo);
    REQUIRE(tempo.size() == 1);
    CHECK(tempo[0].data == std::string("\x0F\x42\x40")); // 1,000,000 microseconds a crotchet
    CHECK(meters(file) == std::vector<WrittenMeter>{{0, 4, 2}});
    auto const keys = metas(file.tracks[0], Key);
    REQUIRE(keys.size() == 2);
    CHECK(keys[0].data == std::string("\xFD\x00", 2));
    CHECK(keys[1].data == std::string("\x01\x01"));
    CHECK(keys[1].tick == 4 * file.division);
}

TEST_CASE("The tempo of a jig is written in crotchets", "[midi]")
{
    // Dotted crotchet 120 is 180 crotchets a minute: 333,333 microseconds each.
    auto const tempo = metas(written(jigWithPickUp()).tracks[0], Tempo);
    REQUIRE(tempo.size() == 1);
    CHECK((tempo[0].byte(0) << 16 | tempo[0].byte(1) << 8 | tempo[0].byte(2)) == 333333);
}

TEST_CASE("A pick-up has a bar of its own length so that bar lines fall where they should",
          "[midi]")
{
    auto const file = written(jigWithPickUp());
    std::int64_t const quaver = file.division / 2;
    // The pick-up of the second time through fills the short bar before it: nothing to write.
    CHECK(meters(file) == std::vector<WrittenMeter>{{0, 1, 3}, {quaver, 6, 3}});
}

TEST_CASE("After a short bar that no pick-up fills the meter is written again", "[midi]")
{
    tune::Tune tune;
    tune.bars = {barOf({3, 4}, wholes(1, 4), {c5, d5, e5}),
                 barOf({3, 4}, wholes(1, 4), {c5, d5}),
                 barOf({3, 4}, wholes(1, 4), {c5, d5, e5})};
    auto const file = written(arranged(tune, {wholes(1, 4), 60}, {{}, {}, {}}));
    CHECK(meters(file) == std::vector<WrittenMeter>{{0, 3, 2}, {5 * file.division, 3, 2}});
}

TEST_CASE("A change of meter is written where it happens", "[midi]")
{
    tune::Tune tune;
    tune.bars = {barOf({3, 4}, wholes(1, 4), {c5, d5, e5}),
                 barOf({2, 4}, wholes(1, 4), {c5, d5}),
                 barOf({3, 4}, wholes(1, 4), {c5, d5, e5})};
    auto const file = written(arranged(tune, {wholes(1, 4), 60}, {{}, {}, {}}));
    std::int64_t const crotchet = file.division;
    CHECK(meters(file) ==
          std::vector<WrittenMeter>{{0, 3, 2}, {3 * crotchet, 2, 2}, {5 * crotchet, 3, 2}});
}

TEST_CASE("Another program's library reads the same notes from the MIDI file", "[midi]")
{
    // Referee: the npm package midi-file, pinned in packaging/package-lock.json.
    namespace fs = std::filesystem;
    if (!fs::exists(places::nodeModules() + "/midi-file") ||
        std::system("node -e 0 2>/dev/null") != 0) {
        WARN("SKIPPED: node or the package midi-file is missing: not compared with another reader");
        return;
    }
    auto const bytes = files::midiFile(twoBars());
    fs::path const path = fs::temp_directory_path() / "sallow-referee.mid";
    std::ofstream(path, std::ios::binary) << bytes;
    std::string const program =
        "const m = "
        "require(process.argv[1]).parseMidi(require('fs').readFileSync(process.argv[2]));"
        "console.log(JSON.stringify(m));";
    std::string const call =
        "node -e \"" + program + "\" " + places::nodeModules() + "/midi-file " + path.string();
    std::string out;
    FILE* const pipe = popen(call.c_str(), "r");
    REQUIRE(pipe);
    std::array<char, 4096> part{};
    while (std::size_t const got = std::fread(part.data(), 1, part.size(), pipe))
        out.append(part.data(), got);
    REQUIRE(pclose(pipe) == 0);
    fs::remove(path);

    auto const json = nlohmann::json::parse(out);
    CHECK(json["header"]["format"] == 1);
    CHECK(json["header"]["numTracks"] == 3);
    auto const own = smfreader::read(bytes);
    CHECK(json["header"]["ticksPerBeat"] == own.division);
    for (std::size_t t : {1U, 2U}) {
        std::vector<std::pair<std::int64_t, int>> theirs;
        std::int64_t tick = 0;
        for (auto const& event : json["tracks"][t]) {
            tick += event["deltaTime"].get<std::int64_t>();
            if (event["type"] == "noteOn") theirs.emplace_back(tick, event["noteNumber"]);
        }
        std::vector<std::pair<std::int64_t, int>> ours;
        for (Note const& note : smfreader::notes(own.tracks[t]))
            ours.emplace_back(note.from, note.key);
        CHECK(theirs == ours);
    }
}

namespace {

// Seconds at which the notes of a track begin, by its tempos, microseconds a crotchet.
std::vector<double> onsets(smfreader::File const& file, std::size_t track)
{
    std::vector<double> out;
    for (Note const& note : smfreader::notes(file.tracks.at(track))) {
        double seconds = 0;
        std::int64_t at = 0;
        double crotchet = 0.5; // where no tempo is written
        auto const goOn = [&](std::int64_t to) {
            seconds += static_cast<double>(to - at) / file.division * crotchet;
            at = to;
        };
        for (auto const& tempo : metas(file.tracks.at(0), Tempo)) {
            if (tempo.tick >= note.from) break;
            goOn(tempo.tick);
            crotchet = (tempo.byte(0) << 16 | tempo.byte(1) << 8 | tempo.byte(2)) / 1e6;
        }
        goOn(note.from);
        out.push_back(seconds);
    }
    std::ranges::sort(out);
    return out;
}

// The notes of a hand in the sound, rolls on their beat as the file has them.
std::vector<double> heardOnsets(arrange::Arrangement const& arrangement,
                                perform::Slowing slowing, harp::Side hand)
{
    perform::Hearing hearing;
    hearing.slowing = slowing;
    hearing.rollGap = 0;
    std::vector<double> out;
    for (perform::Event const& event : perform::scheduled(arrangement, hearing).events)
        if (event.kind == perform::Event::Kind::Pluck && event.hand == hand)
            out.push_back(event.at);
    return out;
}

// A slow waltz of a pick-up and four bars; its last bars have triplets and a dotted rhythm.
arrange::Arrangement waltzWithTriplets()
{
    auto pickUp = barOf({3, 4}, wholes(1, 4), {d5});
    pickUp.upbeat = wholes(1, 2);
    tune::Tune tune;
    tune.bars = {pickUp, barOf({3, 4}, wholes(1, 4), {c5, d5, e5}),
                 barOf({3, 4}, wholes(1, 12), {c5, d5, e5, c5, d5, e5, g5, e5, d5}),
                 barOf({3, 4}, wholes(3, 8), {e5, d5}), barOf({3, 4}, wholes(3, 4), {c5})};
    harp::StringIndex const c3 = stringOf(music::Letter::C, 3);
    std::vector<arrange::VoicedNote> const bass{voiced({}, wholes(1, 4), c3),
                                                voiced(wholes(1, 4), wholes(1, 4), c3 + 4),
                                                voiced(wholes(1, 2), wholes(1, 4), c3 + 7)};
    return arranged(tune, {wholes(1, 4), 40}, {{}, bass, bass, bass, bass});
}

} // namespace

TEST_CASE("A MIDI file that slows has its notes when they are heard", "[midi][slowing]")
{
    auto const slowing = GENERATE(perform::Slowing{0.5, 4}, perform::Slowing{0.7, 3},
                                  perform::Slowing{0.9, 2}, perform::Slowing{0.2, 16});
    auto const piece =
        GENERATE(waltzWithTriplets(), twoBars({wholes(1, 4), 53}), jigWithPickUp());
    CAPTURE(slowing.to, slowing.beats);
    auto const file = smfreader::read(files::midiFile(piece, slowing));
    for (auto const& [track, hand] :
         {std::pair{1U, harp::Side::Right}, std::pair{2U, harp::Side::Left}}) {
        auto const written = onsets(file, track);
        auto const heard = heardOnsets(piece, slowing, hand);
        REQUIRE(written.size() == heard.size());
        for (std::size_t i = 0; i < written.size(); ++i)
            CHECK(written[i] == Approx(heard[i]).margin(0.001));
    }
    auto const tempos = metas(file.tracks[0], Tempo);
    CHECK(tempos.size() > 4);
    CHECK(std::ranges::is_sorted(tempos, {}, &smfreader::Event::data)); // ever slower
}

TEST_CASE("Beats of a MIDI file that slows are within 10 ms of those that are heard",
          "[midi][slowing]")
{
    // Clicks on every demisemiquaver, also where no note begins.
    perform::Slowing const slowing{0.5, 4};
    auto const piece = waltzWithTriplets();
    perform::SlowedTime const slowed(piece, slowing);
    auto const file = smfreader::read(files::midiFile(piece, slowing));
    double const end = piece.playing.total.wholes.toDouble();
    for (int i = 0; i < end * 32; ++i) {
        smfreader::File one = file;
        std::int64_t const tick = std::int64_t{i} * file.division / 8;
        one.tracks[1] = {{tick, 0x90, 0, std::string("\x40\x50")},
                         {tick + 1, 0x80, 0, std::string("\x40\x40")}};
        double const heard = (i / 32.0 + slowed.later(i / 32.0)) * 4 * 60 / 40;
        CHECK(onsets(one, 1).at(0) == Approx(heard).margin(0.01));
    }
}

TEST_CASE("A MIDI file without a slowing has one tempo", "[midi][slowing]")
{
    CHECK(metas(written(twoBars()).tracks[0], Tempo).size() == 1);
    CHECK(files::midiFile(twoBars()) ==
          files::midiFile(twoBars(), perform::partOf({0.5, 4}, 0)));
}
