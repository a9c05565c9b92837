#include "core/harmony/findchords.h"
#include "core/tune/chordorigin.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;

namespace {

// The chord found at the start of a bar, counted from 0 with the pick-up.
std::string chordAt(Suggestion const& found, int bar, std::size_t later = 0)
{
    for (FoundChord const& chord : found.chords)
        if (chord.unit.bar == bar && chord.unit.opensBar) return plain((&chord)[later].chord);
    return "";
}

} // namespace

TEST_CASE("Modes are harmonised with their own chords", "[chords]")
{
    // Invented. Common practice: mixolydian and dorian go between their tonic and the chord a
    // tone below.
    Suggestion const mixolydian = suggestChords(
        scenes::learned(),
        scenes::tuneOf("X:1\nM:6/8\nL:1/8\nK:Dmix\n|:DFA AFD|DFA d2A|cGE EGc|edc d3|\n"
                       "DFA AFD|DFA d2A|cGE EGE|D3 D3:|\n"));
    CHECK(chordAt(mixolydian, 0) == "D");
    CHECK(chordAt(mixolydian, 2) == "C");
    CHECK(chordAt(mixolydian, 6) == "C");
    CHECK(chordAt(mixolydian, 7) == "D");

    Suggestion const dorian = suggestChords(
        scenes::learned(),
        scenes::tuneOf("X:1\nM:6/8\nL:1/8\nK:Ador\n|:ABA E2A|ABc e3|dBG G2B|dBG GFG|\n"
                       "ABA E2A|ABc e3|dBG BAG|A3 A3:|\n"));
    CHECK(chordAt(dorian, 0) == "Am");
    CHECK(chordAt(dorian, 2) == "G");
    CHECK(chordAt(dorian, 6) == "G");
    CHECK(chordAt(dorian, 7) == "Am");
}

TEST_CASE("The pick-up to an ending, within the bar before it, changes no chord", "[chords]")
{
    // Invented: the fourth bar is too long by the pick-up.
    tune::Tune const tune = withFoundChords(
        scenes::learned(),
        scenes::tuneOf("X:1\nM:6/8\nL:1/8\nK:G\nGAB d2B|c2A F2A|GAB d2B|AFA G3 F|\n"
                       "GAB d2B|c2A F2A|GAB AFA|G3 G3|\n"));
    for (tune::ChordMark const& mark : tune.bars[3].chords)
        CHECK(mark.at < music::Length{music::Rational(3, 4)});
}

TEST_CASE("A leading note on the way home stands over the chord on the fifth", "[chords]")
{
    // Invented. Common practice: a strain closes V I where the tune has the leading note.
    Suggestion const found = suggestChords(
        scenes::learned(),
        scenes::tuneOf("X:1\nM:2/4\nL:1/16\nK:G\nGdBG AcAF|GABG D2GF|EGAB cBAG|FAdc A4|\n"
                       "GdBG AcAF|GABG D2GF|Eedc BAGF|A2G2 G4|\n"));
    CHECK(chordAt(found, 6, 1) == "D");
    CHECK(chordAt(found, 7, 1) == "G");
}
