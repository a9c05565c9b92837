#pragma once

#include "core/base/result.h"
#include "core/music/pitch.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace music {

// A chord as a lead sheet names it: root, the intervals of its tones above the root, and the
// bass of a slash chord. What a suffix means is a table in chord.cpp.
struct Chord {
    PitchName root;
    // From the root up, {0, 0} first; the third as {2, 4} or {2, 3}.
    std::vector<Interval> tones;
    std::optional<PitchName> bass; // of a slash chord
    std::string suffix;            // in our spelling: "", "m", "7", "m7", "dim", "sus4" ...
    friend bool operator==(Chord const&, Chord const&) = default;
};

// The note that stands lowest: the bass of a slash chord, else the root.
PitchName lowest(Chord const& chord);

// The tones that a suffix in our spelling stands for, as degrees of the root's major scale from
// the root up, parted by blanks: "1 b3 5" of "m". Empty for any other.
std::string_view suffixTones(std::string_view suffix);

// Names of the chord's tones from the root up; the bass of a slash chord is not added.
std::vector<PitchName> toneNames(Chord const& chord);

// Whether a pitch class (0 C .. 11 B) belongs to the chord, its bass included.
bool contains(Chord const& chord, int pitchClass);

// "Em7", "D/F♯": for the reader. Plain: "D/F#".
std::string shown(Chord const& chord);
std::string plain(Chord const& chord);

Chord transposed(Chord chord, Interval by);

// Reads a chord symbol: "G", "Em7", "D/F#", "F#m7b5", and the old spellings that folk files
// hold: "Gd" diminished, "Ca" augmented, "D/f+" for D over F sharp, "D7/b9" for D7b9, "(Em)" in
// brackets. Fault: BadChord with the symbol as detail when no spelling explains it.
base::Result<Chord> chordFrom(std::string_view symbol);

} // namespace music
