#include "core/tune/changes.h"
#include "core/tune/playing.h"

#include "tests/levers/lines.h"

#include <catch2/catch.hpp>

using tune::Change;

namespace {

music::Pitch pitch(char const* name) { return *music::pitchFrom(name); }

} // namespace

TEST_CASE("A note moved by an octave keeps its place and length", "[tune]")
{
    auto const before = lines::tune("C5:1/4 C#5:1/4 D5:1/2 |", lines::major("G"));
    auto const after = tune::changed(before, {{{0, 1, 0, false}, Change::OctaveLower}});
    CHECK(after.bars[0].notes[1].pitches == std::vector{pitch("C#4")});
    CHECK(after.bars[0].notes[1].at == before.bars[0].notes[1].at);
    CHECK(after.bars[0].notes[1].length == before.bars[0].notes[1].length);
    CHECK(tune::changed(after, {{{0, 1, 0, false}, Change::OctaveHigher}}) == before);
}

TEST_CASE("A note that is left out leaves a rest, one of a chord leaves the others", "[tune]")
{
    auto const before = lines::tune("C5:1/4 C#5+E5:1/4 D5:1/2 |", lines::major("G"));
    auto const after = tune::changed(before, {{{0, 1, 0, false}, Change::LeftOut},
                                              {{0, 0, 0, false}, Change::LeftOut}});
    CHECK(after.bars[0].notes[0].pitches.empty());
    CHECK(after.bars[0].notes[1].pitches == std::vector{pitch("E5")});
    CHECK(after.bars[0].length == before.bars[0].length);
}

TEST_CASE("A note that is moved onto another of its chord is plucked once", "[tune]")
{
    auto const before = lines::tune("D5+D6:1/4 F#4+G5:1/4 D5:1/2 |", lines::major("G"));
    auto const after = tune::changed(before, {{{0, 0, 1, false}, Change::OctaveLower}});
    CHECK(after.bars[0].notes[0].pitches == std::vector{pitch("D5")});
    CHECK(after.bars[0].notes[1] == before.bars[0].notes[1]);
    // However it is spelt: G flat is the key of F sharp.
    auto const flat = tune::changed(before, {{{0, 1, 1, false}, Change::SemitoneLower},
                                             {{0, 1, 1, false}, Change::OctaveLower}});
    CHECK(flat.bars[0].notes[1].pitches == std::vector{pitch("F#4")});
}

TEST_CASE("A dropped accidental leaves the note as the key in force has it", "[tune]")
{
    auto before = lines::tune("C#5:1/4 F5:1/4 D5:1/2 |", lines::major("G"));
    auto const after = tune::changed(before, {{{0, 0, 0, false}, Change::AsKeySays},
                                              {{0, 1, 0, false}, Change::AsKeySays}});
    CHECK(after.bars[0].notes[0].pitches == std::vector{pitch("C5")});
    CHECK(after.bars[0].notes[1].pitches == std::vector{pitch("F#5")});
}

TEST_CASE("A tied note is changed to its end", "[tune]")
{
    auto const before =
        lines::tune("G4:1/4 C#5:3/4- | C#5:1/4 D5:3/4 |", lines::major("G"));
    auto const after = tune::changed(before, {{{0, 1, 0, false}, Change::OctaveLower}});
    CHECK(after.bars[1].notes[0].pitches == std::vector{pitch("C#4")});
    CHECK(tune::played(after).notes.size() == 3);
    auto const without = tune::changed(before, {{{0, 1, 0, false}, Change::LeftOut}});
    CHECK(without.bars[1].notes[0].pitches.empty());
    CHECK_FALSE(without.bars[0].notes[1].tied);
}

TEST_CASE("A change says what it does, with its bar", "[tune]")
{
    auto tune = lines::tune("G4:1/1 | C#5:1/2 D5:1/2 |", lines::major("G"));
    tune.bars[1].notes[1].graces = {pitch("E5")};
    CHECK(tune::changeSentence(tune, {{1, 0, 0, false}, Change::LeftOut}) ==
          "The C♯5 in bar 2 is left out.");
    CHECK(tune::changeSentence(tune, {{1, 0, 0, false}, Change::AsKeySays}) ==
          "The C♯5 in bar 2 is played as C5, without its accidental.");
    CHECK(tune::changeSentence(tune, {{1, 1, 0, true}, Change::LeftOut}) ==
          "The grace note E5 in bar 2 is left out.");
    CHECK(tune::changeSentence(tune, {{7, 0, 0, false}, Change::LeftOut}).empty());
}

TEST_CASE("Every change has a name that leads back to it", "[tune]")
{
    for (Change const change :
         {Change::OctaveHigher, Change::OctaveLower, Change::LeftOut, Change::AsKeySays})
        CHECK(tune::changeFrom(tune::changeId(change)) == change);
    CHECK_FALSE(tune::changeFrom("louder"));
}
