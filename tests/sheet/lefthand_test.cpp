#include "core/notation/lefthand.h"
#include "core/notation/levercues.h"
#include "core/notation/melody.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

using example::wholes;

namespace {

arrange::Arrangement oneBar(std::string const& notes, std::string const& chord,
                            music::Meter meter)
{
    return example::arrangementOf(example::tuneOf(
        {example::withChord(example::bar(notes, meter, example::gMajor), chord)}));
}

} // namespace

TEST_CASE("The left hand is written at the pitch its strings sound", "[lefthand]")
{
    auto const arrangement = oneBar("G4:3/4", "D", example::sixEight);
    notation::StaffBar const bar = notation::leftBar(arrangement, 0);
    // 1-5-8 on D: D3 A3 D4; the last, four quavers, is spelt over the beat.
    REQUIRE(bar.notes.size() == 4);
    CHECK(music::plain(bar.notes[0].pitches.at(0)) == "D3");
    CHECK(music::plain(bar.notes[1].pitches.at(0)) == "A3"); // its lever is up
    CHECK(music::plain(bar.notes[2].pitches.at(0)) == "D4");
    CHECK(bar.notes[2].tied);
    CHECK(bar.notes[3].value == notation::NoteValue{2, 1});
    CHECK(bar.notes[0].fingers == std::vector<int>{4});
    CHECK(bar.notes[3].fingers.empty()); // a tie is not plucked again
}

TEST_CASE("Where the left hand waits it has rests", "[lefthand]")
{
    auto arrangement = oneBar("G4:1/1", "G", example::fourFour);
    auto& notes = arrangement.positions[0].voicing.notes;
    notes[2].held = wholes(1, 4);
    notation::StaffBar const bar = notation::leftBar(arrangement, 0);
    REQUIRE(bar.notes.size() == 4);
    CHECK(bar.notes[3].isRest());
    CHECK(bar.notes[3].at == wholes(1, 2));
    CHECK(bar.notes[3].value == notation::NoteValue{1, 0});

    arrangement.positions.clear();
    notation::StaffBar const silent = notation::leftBar(arrangement, 0);
    REQUIRE(silent.notes.size() == 1);
    CHECK(silent.notes[0].fillsBar);
}

TEST_CASE("Notes plucked together share a stem with the lowest first", "[lefthand]")
{
    auto arrangement = oneBar("G4:1/1", "G", example::fourFour);
    for (auto& note : arrangement.positions[0].voicing.notes) {
        note.at = {};
        note.held = wholes(1, 1);
    }
    arrangement.positions[0].voicing.rolled = true;
    notation::StaffBar const bar = notation::leftBar(arrangement, 0);
    REQUIRE(bar.notes.size() == 1);
    CHECK(bar.notes[0].pitches.size() == 3);
    CHECK(bar.notes[0].rolled);
    CHECK(bar.notes[0].fingers == std::vector<int>{4, 2, 1});
    CHECK_FALSE(bar.notes[0].bracketed);
    // A straight bracket says: together [trade-6].
    arrangement.positions[0].voicing.rolled = false;
    CHECK(notation::leftBar(arrangement, 0).notes[0].bracketed);
}

TEST_CASE("Of two voicings at one place the left hand of a bar has the first pass's",
          "[lefthand]")
{
    auto arrangement = oneBar("G4:1/1", "G", example::fourFour);
    auto second = arrangement.positions[0];
    second.position.played[0].pass = 2;
    second.voicing.pattern = "1-5-10";
    arrangement.positions.push_back(second);
    CHECK(notation::printedPositions(arrangement, 0) == std::vector<arrange::PositionIndex>{0});
}

TEST_CASE("A lever change is told by harp octave, letter and what sounds from now on",
          "[lefthand]")
{
    auto arrangement = oneBar("G4:1/1", "G", example::fourFour);
    // F4 lies in harp octave 3 [trade-1.2: 7 - 4 for F G A B]; its lever goes down: F natural.
    harp::StringIndex const f4 = *harp::stringFor(arrangement.harp, *music::pitchFrom("F4"));
    harp::Flip flip;
    flip.at = {music::Rational(1, 2)};
    flip.string = f4;
    flip.to = harp::Lever::Down;
    arrangement.levers.flips = {flip};
    auto const cues = notation::leverCues(arrangement, 0);
    REQUIRE(cues.size() == 1);
    CHECK(cues[0].text == "3F♮");
    CHECK(cues[0].at == wholes(1, 2));

    arrangement.playing.bars.push_back({0, 2, music::Moment{music::Rational(1)}});
    CHECK(notation::leverCues(arrangement, 0)[0].text == "3F♮ (1st time)");
}

TEST_CASE("A melody length that no sign shows is tied from several", "[lefthand]")
{
    auto const tune =
        example::tuneOf({example::bar("G4:5/8 A4:3/8", example::fourFour, example::gMajor)});
    notation::StaffBar const bar = notation::melodyBar(tune, 0, {{0, 0, {2}}, {0, 1, {1}}});
    REQUIRE(bar.notes.size() == 3);
    CHECK(bar.notes[0].tied);
    CHECK_FALSE(bar.notes[1].tied);
    CHECK(bar.notes[1].fingers.empty());
    CHECK(bar.notes[2].fingers == std::vector<int>{1});
}

TEST_CASE("Triplet quavers are printed as quavers", "[lefthand]")
{
    auto bar = example::bar("G4:1/12 A4:1/12 B4:1/12 D5:1/4", {2, 4, false}, example::gMajor);
    bar.tuplets = {{0, 2, 3, 2}};
    notation::StaffBar const out = notation::melodyBar(example::tuneOf({bar}), 0, {});
    REQUIRE(out.notes.size() == 4);
    for (notation::StaffNoteIndex i = 0; i < 3; ++i)
        CHECK(out.notes[i].value == notation::NoteValue{3, 0});
    CHECK(out.tuplets == std::vector<notation::StaffTuplet>{{0, 2, 3, 2}});
}
