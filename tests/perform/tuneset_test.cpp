// A set played through: what is flipped between its tunes, in sound and as a MIDI file.
#include "core/files/midi/smfread.h"
#include "core/files/midi/write.h"
#include "core/perform/tuneset.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

using namespace perform;

namespace {

// Four bars of crotchets at sixty a minute: sixteen seconds.
arrange::Arrangement tuneIn(music::Key key, std::string const& notes, std::string const& title)
{
    tune::Bars bars(4, example::bar(notes, example::fourFour, key));
    arrange::Arrangement out = example::arrangementOf(example::tuneOf(bars, title));
    out.tempo = {example::wholes(1, 4), 60};
    out.tune.tempo = out.tempo;
    example::fingerTune(out);
    return out;
}

constexpr music::Key dMajor{{music::Letter::D, 0}, music::Mode::Ionian};

PlayedSet gThenD()
{
    return setOf("", {tuneIn(example::gMajor, "G4:1/4 B4:1/4 D5:1/4 B4:1/4", "Osier Ferry"),
                      tuneIn(dMajor, "D4:1/4 F#4:1/4 A4:1/4 D5:1/4", "Willow Weir")});
}

} // namespace

TEST_CASE("From G to D every C up to the tune's highest string is flipped up", "[set]")
{
    // D major has one sharp more than G, C sharp: the circle of fifths, any primer. A harp of
    // 34 strings from C2 has C2 C3 C4 below D5, in harp octaves 6C 5C 4C 3C with C5.
    PlayedSet const set = gThenD();
    CHECK(set.title == "Osier Ferry / Willow Weir");
    CHECK(set.tunes[0].changes.empty());
    CHECK(changesBySide(set.tunes[1].arrangement.harp, set.tunes[1].changes) ==
          "6C 5C 4C 3C up");
    CHECK(changeLine(set.tunes[1]) == "Flip 6C 5C 4C 3C up (about 3 s)");
    CHECK(set.tunes[1].pause == Approx(4 * levers::secondsALever));
}

TEST_CASE("A lever that a tune leaves flipped is counted for the next tune", "[set]")
{
    auto first = tuneIn(example::gMajor, "G4:1/4 B4:1/4 D5:1/4 B4:1/4", "A");
    harp::StringIndex const c4 = *harp::stringFor(first.harp, {music::Letter::C, 0, 4});
    first.levers.flips.push_back({music::Moment{}, {}, {}, c4, harp::Lever::Up, {}, 0, 0});
    PlayedSet const set =
        setOf("Two", {first, tuneIn(dMajor, "D4:1/4 F#4:1/4 A4:1/4 D5:1/4", "B")});
    CHECK(changesBySide(first.harp, set.tunes[1].changes) == "6C 5C 3C up");
}

TEST_CASE("The sound of a set pauses for the levers and flips them within the pause", "[set]")
{
    PlayedSet const set = gThenD();
    std::vector<Course> courses;
    for (TuneOfSet const& tune : set.tunes)
        courses.push_back(onceOnly(scheduled(tune.arrangement, {})));
    Course const course = courseOf(set, courses);
    REQUIRE(course.rounds.size() == 1);
    Schedule const& all = *course.rounds.front();
    CHECK(all.counted == Approx(16 + 3 + 16));
    std::size_t inPause = 0;
    std::size_t damped = 0;
    for (Tuned const& tuned : all.tuned)
        if (tuned.at > 16 && tuned.at < 19) ++inPause;
    for (Event const& event : all.events) {
        if (event.at > 16 && event.at < 19) {
            CHECK(event.kind == Event::Kind::Damp);
            ++damped;
        }
    }
    CHECK(inPause == 4);
    CHECK(damped == 4);
    auto const second =
        std::find_if(all.events.begin(), all.events.end(), [](Event const& event) {
            return event.kind == Event::Kind::Pluck && event.at > 16;
        });
    REQUIRE(second != all.events.end());
    CHECK(second->at == Approx(19));
    CHECK(second->midi == 62); // D4 in MIDI's numbers: MIDI 1.0, middle C is 60
    CHECK(std::is_sorted(all.events.begin(), all.events.end(),
                         [](Event const& a, Event const& b) { return a.at < b.at; }));
}

TEST_CASE("A tune of a set that needs no flip follows without a gap", "[set]")
{
    auto const tune = tuneIn(example::gMajor, "G4:1/4 B4:1/4 D5:1/4 B4:1/4", "A");
    PlayedSet const set = setOf("Twice", {tune, tune});
    CHECK(changeLine(set.tunes[1]) == "Leave the levers as they are");
    Course const one = onceOnly(scheduled(tune, {}));
    CHECK(courseOf(set, {one, one}).rounds.front()->counted == Approx(32));
}

TEST_CASE("The MIDI file of a set has both tunes, markers and the pause between them", "[set]")
{
    std::string const bytes = files::midiFile(gThenD());
    auto const read = files::readSmf(bytes, "set.mid");
    REQUIRE(read);
    REQUIRE(read->tracks.size() == 3);
    std::vector<std::pair<std::int64_t, std::string>> markers;
    for (files::SmfText const& text : read->tracks[0].texts)
        if (text.type == 6) markers.emplace_back(text.at, text.text);
    // At sixty crotchets a minute a crotchet is a second: 16 and 3 more.
    std::int64_t const second = 19 * read->ticksACrotchet;
    REQUIRE(markers.size() == 2);
    CHECK(markers[0] == std::pair(std::int64_t{0}, std::string("Osier Ferry")));
    CHECK(markers[1] == std::pair(second, std::string("Willow Weir")));
    auto const& right = read->tracks[1].notes;
    REQUIRE(right.size() == 32);
    CHECK(right[16].from == second);
    CHECK(right[15].to == 16 * read->ticksACrotchet);
}
