#include "core/harmony/follownotes.h"
#include "core/tune/chordedits.h"
#include "core/tune/edit/whole.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;

namespace {

// The jig as its second half was before the notes became what they are.
tune::Tune withOtherNotes(tune::Tune tune)
{
    auto& bar = tune.bars[6];
    for (tune::Note& note : bar.notes)
        for (music::Pitch& pitch : note.pitches) pitch.octave += 1;
    return tune;
}

tune::Tune inWay(tune::Tune tune, Way way)
{
    ChordWishes wishes;
    wishes.way = way;
    return withFoundChords(scenes::learned(), std::move(tune), wishes);
}

} // namespace

TEST_CASE("A tune that was typed gets chords when it has notes, and none while it rests",
          "[chords]")
{
    tune::NewTune wish;
    wish.bars = 4;
    tune::Tune const empty = tune::newTune(wish);
    CHECK_FALSE(chordsAfterNotes(scenes::learned(), empty, empty));
    auto const found = chordsAfterNotes(scenes::learned(), empty, scenes::jig());
    REQUIRE(found);
    CHECK(*found == withFoundChords(scenes::learned(), scenes::jig()));
}

TEST_CASE("Chords that were found follow the notes in the way in which they stand", "[chords]")
{
    Way const way = GENERATE(Way::Usual, Way::Richer, Way::Open, Way::Drone);
    tune::Tune const after = inWay(scenes::jig(), way);
    auto const before = inWay(withOtherNotes(scenes::jig()), way);
    tune::Tune edited = after; // the notes are those of the jig, the chords those of before
    for (tune::BarIndex const i : edited.bars.indices())
        edited.bars[i].chords = before.bars[i].chords;
    auto const found = chordsAfterNotes(scenes::learned(), before, edited);
    REQUIRE(found);
    CHECK(*found == after);
}

TEST_CASE("A chord that was set stays when the notes change, and the rest follow", "[chords]")
{
    auto const em = *music::chordFrom("Em7");
    tune::Tune const before =
        inWay(withChord(inWay(scenes::jig(), Way::Usual), {3, {}}, em), Way::Usual);
    auto const found = chordsAfterNotes(scenes::learned(), before, withOtherNotes(before));
    REQUIRE(found);
    CHECK(chordHere(*found, {3, {}})->chord == em);
    CHECK(chordHere(*found, {3, {}})->origin == tune::ChordOrigin::Set);
}

TEST_CASE("Chords of the file, and found ones that were put otherwise, are left alone",
          "[chords]")
{
    tune::Tune written = inWay(scenes::jig(), Way::Usual);
    for (tune::Bar& bar : written.bars)
        for (tune::ChordMark& mark : bar.chords) mark.written = plain(mark.chord);
    CHECK_FALSE(chordsAfterNotes(scenes::learned(), written, withOtherNotes(written)));
    tune::Tune odd = inWay(scenes::jig(), Way::Usual);
    odd.bars[4].chords = {
        tune::chordMark({}, *music::chordFrom("F"), tune::ChordOrigin::Found)};
    CHECK_FALSE(chordsAfterNotes(scenes::learned(), odd, withOtherNotes(odd)));
    // Nothing was changed: nothing follows.
    tune::Tune const same = inWay(scenes::jig(), Way::Usual);
    CHECK_FALSE(chordsAfterNotes(scenes::learned(), same, same));
}
