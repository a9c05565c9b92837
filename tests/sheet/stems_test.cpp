#include "core/sheet/staffplace.h"
#include "core/sheet/stems.h"

#include <catch2/catch.hpp>

#include <vector>

using notation::Clef;
using sheet::Stem;

TEST_CASE("Stems point away from the side of the note furthest from the middle line", "[stems]")
{
    // Gould 2011, stems (from memory).
    auto const [steps, stem] = GENERATE(table<std::vector<int>, Stem>({
        {{-1}, Stem::Up},
        {{0}, Stem::Down}, // the middle line itself
        {{1}, Stem::Down},
        {{-2, 3}, Stem::Down},
        {{-4, 3}, Stem::Up},
        {{-3, 3}, Stem::Down},   // as far on both sides
        {{-3, -1, 3}, Stem::Up}, // as far, but most lie below
        {{-3, 1, 3}, Stem::Down},
    }));
    CAPTURE(steps);
    CHECK(sheet::stemDirection(steps) == stem);
}

TEST_CASE("A stem is an octave long and reaches the middle line from ledger lines", "[stems]")
{
    CHECK(sheet::stemLengthFor(-2, Stem::Up, 0) == Approx(3.5));
    CHECK(sheet::stemLengthFor(4, Stem::Down, 1) == Approx(3.5));
    CHECK(sheet::stemLengthFor(-10, Stem::Up, 0) == Approx(5.0));
    CHECK(sheet::stemLengthFor(11, Stem::Down, 0) == Approx(5.5));
    CHECK(sheet::stemLengthFor(0, Stem::Down, 3) > 3.5); // room for a third flag
}

TEST_CASE("The middle line is B4 in the treble and D3 in the bass clef", "[stems]")
{
    CHECK(notation::staffStep({music::Letter::B, 0, 4}, Clef::Treble) == 0);
    CHECK(notation::staffStep({music::Letter::D, 0, 3}, Clef::Bass) == 0);
    CHECK(notation::staffStep({music::Letter::E, -1, 4}, Clef::Treble) == -4); // bottom line
    CHECK(notation::staffStep({music::Letter::A, 0, 3}, Clef::Bass) == 4);     // top line
    CHECK(sheet::yOfStep(4) == Approx(0.0));
    CHECK(sheet::yOfStep(-4) == Approx(4.0));
}

TEST_CASE("Middle C takes one ledger line on either staff", "[stems]")
{
    music::Pitch const middleC{music::Letter::C, 0, 4};
    CHECK(sheet::ledgerLines(notation::staffStep(middleC, Clef::Treble)) == -1);
    CHECK(sheet::ledgerLines(notation::staffStep(middleC, Clef::Bass)) == 1);
    CHECK(sheet::ledgerLines(notation::staffStep({music::Letter::D, 0, 4}, Clef::Treble)) == 0);
    CHECK(sheet::ledgerLines(notation::staffStep({music::Letter::B, 0, 5}, Clef::Treble)) == 1);
    CHECK(sheet::ledgerLines(notation::staffStep({music::Letter::C, 0, 6}, Clef::Treble)) == 2);
    CHECK(sheet::ledgerLines(notation::staffStep({music::Letter::C, 0, 2}, Clef::Bass)) == -2);
}
