#pragma once

#include "core/base/result.h"
#include "core/harp/stringindex.h"
#include "core/music/meter.h"
#include "core/music/time.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace pattern {

// How a finger comes to its string when the hand is already placed: it simply stands there, is
// put under the thumb on a higher string, over the others on a lower one, or slides on from the
// neighbouring string, the thumb downwards and finger 4 upwards [trade-3.3].
enum class Placing { Plain, Under, Over, Slide };

// One note of a shape: a degree counted along the strings from the chord's root string (1 is
// the root, 8 its octave, -2 the fifth below) and the finger that plays it (1 thumb .. 4).
struct PatternNote {
    int degree = 1;
    int finger = 4;
    bool withPrevious = false; // plucked together with the note before it, "+" in the name
    Placing placing = Placing::Plain;
    friend bool operator==(PatternNote const&, PatternNote const&) = default;
};

// A left-hand shape. Its name is its degrees, "1-5-8", with "+" between notes plucked together
// and "~" between those of a roll.
struct Pattern {
    std::string name;
    std::vector<PatternNote> notes;  // in playing order, at least one
    bool together = false;           // a block of two or more: all notes at once
    bool rolls = false;              // may be spread low to high when out of block reach
    bool spread = false;             // a block that is always rolled
    bool own = false;                // the arranger's own, not one of the program's book
    int level = 1;                   // from which level on
    int lowestRoot = 0;              // MIDI key below which the root is not placed; 0: none
    std::vector<std::string> meters; // "6/8" ...; empty: any
    std::string feel;                // one plain sentence for the arranger
    int penalty = 0; // what speaks against it beside its degrees, thousandths of a point; below
                     // 0: for it
    friend bool operator==(Pattern const&, Pattern const&) = default;
};

// What speaks for or against a rhythm in tunes of one kind ("waltz", as tune::kindName has it).
struct ForKind {
    std::string kind;
    int penalty = 0;
    friend bool operator==(ForKind const&, ForKind const&) = default;
};

// How the notes of a shape fall in a bar or part of one.
struct Rhythm {
    std::string name;
    music::Meter meter;
    music::Length span;                  // of what it fills: a bar, or part of one
    int notes = 3;                       // of the pattern it is for
    std::vector<music::Length> onsets;   // from the start of the span, rising, first at 0
    std::vector<std::vector<int>> plays; // for each onset: indices into Pattern::notes
    int level = 1;                       // from which level on
    int penalty = 0;                     // as of a pattern
    std::vector<ForKind> kinds{};        // on top of that, by the kind of tune
    friend bool operator==(Rhythm const&, Rhythm const&) = default;
};

// What the book says of a rhythm in tunes of a kind.
int penaltyFor(Rhythm const& rhythm, std::string_view kind);

struct PatternBook {
    std::vector<Pattern> patterns;
    std::vector<Rhythm> rhythms;
    std::map<std::string, std::string> renamed{}; // names of rhythms in older saved work
};

// A degree in a name: "5"; below the root "low5", the fifth of the octave below (degree -2),
// and "deep5" an octave below that (degree -9).
std::string degreeText(int degree);

// "1-5+8": the name that the notes of a shape have; "1~5~8" where they are always rolled.
std::string nameOf(std::vector<PatternNote> const& notes, bool spread = false);

// "4-2-1-2u": fingers in playing order, u under, o over, s sliding, + together.
std::string fingersText(std::vector<PatternNote> const& notes);

// Reads "1-5-8", "1 5 8", "1-5+8", "1+5+8", "1~5~8" (all rolled), "1-low5" or "1 -2", with the
// fingers in brackets where the player wants others than the usual ones: "1-5-8 (4-3-1)". Usual
// are, by the width of each interval, 2-1 up to a fourth, 3-1 up to a sixth, 4-1 beyond
// [trade-3.2]. The level follows from the width. Fault: BadPattern with the offending part.
base::Result<Pattern> patternFrom(std::string_view text);

// Whether the shape is meant for a meter.
bool suits(Pattern const& pattern, music::Meter meter);

// Lowest and highest degree, and the strings from one to the other inclusive.
int lowestDegree(Pattern const& pattern);
int highestDegree(Pattern const& pattern);
inline int stringsSpanned(Pattern const& p) { return highestDegree(p) - lowestDegree(p) + 1; }

// The string a degree stands on: always d - 1 strings above the root string. Degree 0 is the
// string below the root, -2 the fifth below it [trade-4].
constexpr harp::StringIndex stringOf(harp::StringIndex rootString, int degree)
{
    return rootString + (degree - 1);
}

} // namespace pattern
