#include "core/hands/righthand.h"

#include "tests/harp/harps.h"
#include "tests/levers/lines.h"

#include <catch2/catch.hpp>

#include <string>

namespace {

arrange::Arrangement arrangementOf(tune::Tune const& tune)
{
    auto const harp = example::floor34();
    arrange::Arrangement out{.tune = tune,
                             .transposedSemitones = 0,
                             .harp = harp,
                             .hand = example::mediumHand(),
                             .level = {},
                             .levers = {*harp::settingFor(harp, tune.key), {}},
                             .tempo = tune::tempoOf(tune),
                             .playing = tune::played(tune),
                             .positions = {},
                             .rightFingers = {}};
    return out;
}

std::vector<arrange::NoteFingers> fingersOf(tune::Tune const& tune)
{
    return hands::rightHand(arrangementOf(tune)).fingers;
}

// "4-3-2-1", the notes of a chord joined by "+" from the lowest.
std::string fingering(std::string const& notes)
{
    std::string out;
    for (auto const& note : fingersOf(lines::tune(notes, lines::major("C")))) {
        if (!out.empty()) out += '-';
        for (std::size_t i = 0; i < note.fingers.size(); ++i)
            out += (i == 0 ? "" : "+") + std::to_string(note.fingers[i]);
    }
    return out;
}

std::string quavers(std::string const& names)
{
    std::istringstream words(names);
    std::string out;
    for (std::string word; words >> word;) out += word + ":1/8 ";
    return out + "|";
}

} // namespace

TEST_CASE("Up to four notes in one direction are placed together", "[hands]")
{
    // Rising 4-3-2-1, falling 1-2-3-4 [trade-3.3].
    CHECK(fingering(quavers("C5 D5 E5 F5")) == "4-3-2-1");
    CHECK(fingering(quavers("F5 E5 D5 C5")) == "1-2-3-4");
    CHECK(fingering(quavers("C5 D5 E5 F5 E5 D5 C5")) == "4-3-2-1-2-3-4");
    CHECK(fingering(quavers("F5 E5 D5 C5 D5 E5 F5")) == "1-2-3-4-3-2-1");
}

TEST_CASE("A scale of eight crosses once", "[hands]")
{
    // 4-3-2-1-4u-3-2-1 up, 1-2-3-4-1o-2-3-4 down [trade-3.3]: common practice, no source.
    CHECK(fingering(quavers("C5 D5 E5 F5 G5 A5 B5 C6")) == "4-3-2-1-4-3-2-1");
    CHECK(fingering(quavers("C6 B5 A5 G5 F5 E5 D5 C5")) == "1-2-3-4-1-2-3-4");
}

TEST_CASE("A string plucked again changes finger", "[hands]")
{
    // 2-1 or 3-2-1 [trade-3.3].
    CHECK(fingering(quavers("C5 C5")) == "2-1");
    CHECK(fingering(quavers("C5 C5 C5")) == "3-2-1");
}

TEST_CASE("A single note goes to finger 2", "[hands]")
{
    CHECK(fingering("C5:1/1 |") == "2"); // [trade-3.2]
}

TEST_CASE("Two notes to and fro keep their fingers", "[hands]")
{
    CHECK(fingering(quavers("G5 B5 G5 B5 G5 B5")) == "2-1-2-1-2-1");
}

TEST_CASE("An interval takes the pair of fingers that custom gives it", "[hands]")
{
    // Second to fourth 2+1, fifth and sixth 3+1, wider 4+1 [trade-3.2].
    CHECK(fingering("C5+D5:1/1 |") == "2+1");
    CHECK(fingering("C5+E5:1/1 |") == "2+1");
    CHECK(fingering("C5+F5:1/1 |") == "2+1");
    CHECK(fingering("C5+G5:1/1 |") == "3+1");
    CHECK(fingering("C5+A5:1/1 |") == "3+1");
    CHECK(fingering("C5+B5:1/1 |") == "4+1");
    CHECK(fingering("C5+C6:1/1 |") == "4+1");
}

TEST_CASE("A triad takes three fingers and a full chord four", "[hands]")
{
    // Common practice, no source.
    CHECK(fingering("C5+E5+G5:1/1 |") == "3+2+1");
    CHECK(fingering("C5+E5+G5+C6:1/1 |") == "4+3+2+1");
    CHECK(fingering(quavers("C5 E5 G5 E5 C5")) == "3-2-1-2-3");
    CHECK(fingering(quavers("C5 E5 G5 C6 G5 E5 C5")) == "4-3-2-1-2-3-4");
}

TEST_CASE("Chords have the thumb highest whatever they hold", "[hands]")
{
    auto const tune = lines::tune("C4+E4+G4+C5+E5:1/2 C4+C6:1/2 |", lines::major("C"));
    for (auto const& note : fingersOf(tune)) {
        CHECK(std::is_sorted(note.fingers.rbegin(), note.fingers.rend()));
        CHECK(note.fingers.back() == 1);
    }
}

TEST_CASE("A tied note is fingered where it begins and not again", "[hands]")
{
    auto const tune = lines::tune("C5:1/4 D5:1/4- | D5:1/4 D5:1/4 |", lines::major("C"));
    auto const fingers = fingersOf(tune);
    REQUIRE(fingers.size() == 3);
    CHECK(fingers[1].bar == 0);
    CHECK(fingers[2].bar == 1);
    CHECK(fingers[2].note == 1);
}

TEST_CASE("Rests and bars without notes need no finger", "[hands]")
{
    auto const tune = lines::tune("z:1/1 | C5:1/2 z:1/2 |", lines::major("C"));
    auto const fingers = fingersOf(tune);
    REQUIRE(fingers.size() == 1);
    CHECK(fingers[0].bar == 1);
}

namespace {

// Fingers of each group, "~" before one that is linked to the group before.
std::string groups(std::string const& notes)
{
    std::string out;
    auto const right = hands::rightHand(arrangementOf(lines::tune(notes, lines::major("C"))));
    for (arrange::PlacingGroup const& group : right.groups) {
        out += out.empty() ? "" : group.linked ? " ~" : " ";
        for (arrange::GroupNote const& note : group.notes) out += std::to_string(note.finger);
    }
    return out;
}

} // namespace

TEST_CASE("What is placed together is one group, and a crossing links two", "[hands]")
{
    // Up to four in one direction are placed together; more are crossed, a finger staying on
    // until the next group is placed [trade-3.3].
    CHECK(groups(quavers("C5 D5 E5 F5")) == "4321");
    CHECK(groups(quavers("C5 D5 E5 F5 E5 D5 C5")) == "4321234");
    CHECK(groups(quavers("C5 D5 E5 F5 G5 A5 B5 C6")) == "4321 ~4321");
    CHECK(groups("C5+E5+G5:1/2 z:1/2 | F5+A5+C6:1/1 |") == "321 321");
}
