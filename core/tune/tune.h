#pragma once

#include "core/base/list.h"
#include "core/music/chord.h"
#include "core/music/key.h"
#include "core/music/meter.h"
#include "core/music/pitch.h"
#include "core/music/time.h"
#include "core/tune/indices.h"

#include <optional>
#include <string>
#include <vector>

namespace tune {

// Where something stood in the file it was read from; line and column count from 1, 0 unknown.
struct Place {
    int line = 0;
    int column = 0;
    friend bool operator==(Place const&, Place const&) = default;
};

// What is sung to one note in one verse.
struct Syllable {
    std::string text;    // empty: nothing begins here
    bool hyphen = false; // its word goes on with the next syllable
    bool held = false;   // the syllable before is sung on
    friend bool operator==(Syllable const&, Syllable const&) = default;
};

// One written note, chord of the tune, or rest.
struct Note {
    music::Length at;                  // from the start of its bar
    music::Length length;              // as counted, tuplets worked out
    std::vector<music::Pitch> pitches; // lowest first; none: a rest
    bool tied = false;       // every pitch sounds on into the next note of the same pitch
    bool beamBroken = false; // the writer left a gap before it: no beam from the left
    bool hidden = false;     // a rest that is not printed
    std::vector<music::Pitch> graces; // played before it, taking no counted time
    // "staccato", "fermata", "trill", "roll" ...: words of ABC 2.1.
    std::vector<std::string> marks;
    Place place;
    int slursOpen = 0;            // slurs that begin on it
    int slursClose = 0;           // and end on it
    std::vector<Syllable> verses; // sung to it, verse by verse; may be shorter than others'
    friend bool operator==(Note const&, Note const&) = default;
};

using Notes = base::List<NoteIndex, Note>;

// `actual` notes in the time of `normal`: a triplet is 3 in the time of 2. Of the notes that
// indices of this kind lead into.
template<class Index>
struct TupletOf {
    Index first = 0;
    Index last = 0; // inclusive
    int actual = 3;
    int normal = 2;
    friend bool operator==(TupletOf const&, TupletOf const&) = default;
};
using Tuplet = TupletOf<NoteIndex>;

// A chord symbol over the tune. Two symbols stacked over one note mean first and second time.
struct ChordMark {
    music::Length at; // from the start of its bar
    music::Chord chord;
    std::string written;     // as the file spelt it
    std::optional<int> pass; // 1 or 2 where the file says "this time only"
    friend bool operator==(ChordMark const&, ChordMark const&) = default;
};

// A word over or under the tune that is no chord.
struct Annotation {
    music::Length at;
    std::string text;
    friend bool operator==(Annotation const&, Annotation const&) = default;
};

enum class BarLine { Single, Double, Final, None };

// What a bar is to the whole of what is played: of the tune itself, or made from its last
// phrase to stand before or after it (core/tune/form.h).
enum class Role { Tune, Introduction, Ending };

struct Bar {
    music::Meter meter;   // in force
    music::Key key;       // in force
    music::Length length; // what its notes add up to
    music::Length upbeat; // how much of a full bar is missing before its first note: a pick-up
                          // bar of one quaver in 6/8 has 5/8; whole bars have 0
    int number = 0;       // as printed; 0 for a pick-up before bar 1
    std::string part;     // "A" where a part begins here, else empty
    bool repeatOpens = false;
    bool repeatCloses = false;
    int timesPlayed = 2;       // of the repeat that closes here
    std::vector<int> endings;  // {1} where the first ending begins here, else empty
    bool endingCloses = false; // the bracket of an ending stops after this bar
    BarLine closes = BarLine::Single;
    Notes notes;
    std::vector<Tuplet> tuplets;
    std::vector<ChordMark> chords;
    std::vector<Annotation> annotations;
    Place place;
    Role role = Role::Tune;
    int time = 1; // which time through the whole tune, where it is written out more than once
    friend bool operator==(Bar const&, Bar const&) = default;
};

using Bars = base::List<BarIndex, Bar>;

struct Tempo {
    music::Length beat{music::Rational(1, 4)};
    double beatsPerMinute = 100;
    friend bool operator==(Tempo const&, Tempo const&) = default;
};

// Crotchets a minute.
inline double quartersPerMinute(Tempo t)
{
    return t.beatsPerMinute * (t.beat.wholes * music::Rational(4)).toDouble();
}

// Something the reader noticed and how it went on, for the arranger to see.
struct Remark {
    Place place;
    std::string what;
    std::string did;
    friend bool operator==(Remark const&, Remark const&) = default;
};

// A lead sheet: one melody with chord symbols, as written (repeats not played out).
// Invariants kept by the readers: at least one bar; notes of a bar stand in order, do not
// overlap, and add up to Bar::length; lengths are positive.
struct Tune {
    int number = 1; // X: of a tunebook
    std::string title;
    std::vector<std::string> otherTitles;
    std::string composer;
    std::string origin;
    std::string source;
    std::string arranger;           // named on the page where the arranger wants it
    std::string copyright;          // the line at the foot of the page, as she words it
    std::string rhythm;             // "jig", "reel" ... as the file says it
    std::vector<std::string> notes; // remarks of the writer (N:)
    std::vector<std::string> words; // verses that stand below the tune, line by line (W:)
    std::optional<Tempo> tempo;     // none where the file is silent
    music::Key key;                 // at the start
    music::Meter meter;             // at the start
    Bars bars;
    std::vector<std::string> partOrder; // "A", "A", "B"; empty: as written
    std::vector<Remark> said;
    friend bool operator==(Tune const&, Tune const&) = default;
};

// A tempo for a tune that names none, by its kind (core/tune/kind.h) and the player's level:
// steady learning speed without one.
Tempo usualTempo(Tune const& tune, int level = 1);
inline Tempo tempoOf(Tune const& tune, int level = 1)
{
    return tune.tempo ? *tune.tempo : usualTempo(tune, level);
}

// "66 dotted crotchets a minute": a tempo in the beat that a player counts. Given in crotchets
// a minute; whole beats, rounded down, so that a limit is kept.
std::string tempoWords(music::Length beat, double quartersPerMinute);

bool hasChords(Tune const& tune);
bool hasNotes(Tune const& tune);

// Every note, chord and key moved by one interval; signatures follow.
Tune transposed(Tune tune, music::Interval by);

// For readers, once the bars stand. Short bars that open the tune or a section become pick-ups
// (Bar::upbeat). Bars are numbered from 1; a pick-up before bar 1 is 0, and a later pick-up
// that completes the short bar before it shares that bar's number. Each time through the tune
// is numbered from 1 again, an ending goes on, and the bars of an introduction count up to -1.
void markPickUps(Bars& bars);
void numberBars(Bars& bars);

// "bar 7", "the pick-up bar", "bar 2 of the introduction", "bar 7, time 2": for the reader.
std::string barName(Tune const& tune, BarIndex bar);

} // namespace tune
