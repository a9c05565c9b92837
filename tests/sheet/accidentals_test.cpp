#include "core/notation/accidentals.h"
#include "core/sheet/notesetting.h"
#include "tests/sheet/examples.h"

#include <catch2/catch.hpp>

#include <set>
#include <string>

namespace {

music::Pitch pitch(std::string const& name) { return *music::pitchFrom(name); }

notation::StaffNote signOf(tune::Note const& note)
{
    notation::StaffNote sign;
    sign.at = note.at;
    sign.length = note.length;
    sign.pitches = note.pitches;
    sign.graces = note.graces;
    return sign;
}

} // namespace

TEST_CASE("An accidental holds to the end of the bar on its own line only", "[accidentals]")
{
    // Gould 2011, accidentals (from memory).
    notation::AccidentalMemory memory(1); // G major: F sharp in the signature
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
    auto const flats = notation::AccidentalMemory(-2);
    for (int time = 0; time < 2; ++time) {
        notation::AccidentalMemory memory = flats;
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
    notation::StaffBar staff;
    for (tune::Note const& note : bar.notes) {
        staff.notes.push_back(signOf(note));
    }
    sheet::SetBar const set = sheet::setBar(staff, bar, notation::Clef::Treble,
                                            {{pitch("C#5")}, {}}, sheet::MusicFont{});
    CHECK_FALSE(set.notes[0].heads[0].accidental);
    CHECK(set.notes[1].heads[0].accidental == 1);
}

TEST_CASE("Accidentals of a chord a third apart stand in two columns and of an octave in one",
          "[accidentals]")
{
    // Gould 2011, accidentals in chords (from memory): an octave apart they may share a column.
    auto const columns = [](std::string const& chord) {
        auto const bar = example::bar(chord + ":3/4", example::threeFour, example::gMajor);
        notation::StaffBar staff;
        staff.notes.push_back(signOf(bar.notes[0]));
        sheet::MusicFont font; // a sharp as tall as the font's
        font.boxes[0xE262] = {0, -1.392, 0.996, 1.4};
        font.advances[0xE262] = 0.996;
        std::set<double> places;
        auto const set = sheet::setBar(staff, bar, notation::Clef::Treble, {}, font);
        for (sheet::SetHead const& head : set.notes[0].heads)
            if (head.accidental) places.insert(head.accidentalDx);
        return places.size();
    };
    CHECK(columns("A#4+C#5") == 2);
    CHECK(columns("C#4+C#5") == 1);
}

TEST_CASE("A grace note tells its accidental and the note after it does not repeat it",
          "[accidentals]")
{
    auto bar = example::bar("C#5:3/4", example::threeFour, example::gMajor);
    bar.notes[0].graces = {pitch("C#5"), pitch("D5")};
    notation::StaffBar staff;
    staff.notes.push_back(signOf(bar.notes[0]));
    auto const set = sheet::setBar(staff, bar, notation::Clef::Treble, {}, sheet::MusicFont{});
    sheet::SetNote const& note = set.notes[0];
    CHECK(note.graces[0].accidental == 1);
    CHECK_FALSE(note.graces[1].accidental);
    CHECK_FALSE(note.heads[0].accidental);
    CHECK(note.graces[0].accidentalDx < note.graces[0].dx);
    CHECK(note.graces[0].dx < note.graces[1].dx);
    CHECK(note.graces[1].dx < 0);
}
