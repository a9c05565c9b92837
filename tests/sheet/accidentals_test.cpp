#include "core/sheet/accidentals.h"
#include "core/sheet/notesetting.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <string>

namespace {

music::Pitch pitch(std::string const& name) { return *music::pitchFrom(name); }

} // namespace

TEST_CASE("An accidental holds to the end of the bar on its own line only", "[accidentals]")
{
    // Gould 2011, accidentals (from memory).
    sheet::AccidentalMemory memory(1); // G major: F sharp in the signature
    CHECK_FALSE(memory.needs(pitch("F#5")));
    CHECK(memory.needs(pitch("C#5")));
    CHECK_FALSE(memory.needs(pitch("C#5")));
    CHECK_FALSE(memory.needs(pitch("C4"))); // another octave was never changed
    CHECK(memory.needs(pitch("C#4")));      // and has to be told for itself
    CHECK(memory.needs(pitch("C5")));       // natural again
    CHECK(memory.needs(pitch("F5")));       // natural against the signature
    CHECK(memory.needs(pitch("F#5")));
}

TEST_CASE("A new bar forgets the accidentals of the old one", "[accidentals]")
{
    auto const flats = sheet::AccidentalMemory(-2);
    for (int time = 0; time < 2; ++time) {
        sheet::AccidentalMemory memory = flats;
        CHECK_FALSE(memory.needs(pitch("Bb4")));
        CHECK(memory.needs(pitch("B4")));
    }
}

TEST_CASE("A note tied over the bar line needs no new accidental but the next one does",
          "[accidentals]")
{
    auto const bar =
        example::bar("C#5:1/4 C#5:1/4 G4:1/4", example::threeFour, example::gMajor);
    tune::Tune const tune = example::tuneOf({bar});
    sheet::StaffBar staff;
    for (tune::Note const& note : bar.notes) {
        sheet::StaffNote out;
        out.at = note.at;
        out.length = note.length;
        out.pitches = note.pitches;
        staff.notes.push_back(out);
    }
    sheet::SetBar const set =
        sheet::setBar(staff, bar, sheet::Clef::Treble, {pitch("C#5")}, sheet::MusicFont{});
    CHECK_FALSE(set.notes[0].heads[0].accidental);
    CHECK(set.notes[1].heads[0].accidental == 1);
}
