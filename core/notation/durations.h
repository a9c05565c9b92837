#pragma once

#include "core/music/meter.h"
#include "core/music/time.h"

#include <optional>
#include <vector>

namespace notation {

// A length as one sign can print it: halvings of a semibreve (0 semibreve, 1 minim, 2 crotchet,
// 3 quaver; -1 breve) and dots.
struct NoteValue {
    int halvings = 2;
    int dots = 0;
    friend constexpr bool operator==(NoteValue const&, NoteValue const&) = default;
};

music::Length lengthOf(NoteValue value);

// The value that lasts exactly this long, with at most two dots; none for 5/8 and the like.
std::optional<NoteValue> valueOf(music::Length length);

// The longest printable value that is not longer; for lengths that no sign fits.
NoteValue nearestValue(music::Length length);

// One printed sign of a length that may need several.
struct Piece {
    music::Length at; // from the start of the full bar
    NoteValue value;
    friend bool operator==(Piece const&, Piece const&) = default;
};

// How deep a place lies in the meter: 4 the bar's start, 3 the half bar, 2 a beat, 1 half a
// beat (a third in compound meters), 0 elsewhere. `at` counts from the start of the full bar.
int metricDepth(music::Meter meter, music::Length at);

// Spells a note so that no sign hides a place of the bar that is heavier than the one it starts
// on, and that no value longer than a compound beat ends between beats [gould11]. The pieces
// are to be tied. Plain lengths at plain places come back as one piece.
std::vector<Piece> notePieces(music::Length at, music::Length length, music::Meter meter);

// Strings ring on by themselves: a left-hand note that begins on a beat and lasts whole beats is
// one sign wherever a value has its length, a dotted minim in the middle of the bar too; else
// as above. Not in compound meters, where a value must show the beats.
std::vector<Piece> ringingPieces(music::Length at, music::Length length, music::Meter meter);

// Rests are spelt more strictly: no rest crosses a beat unless it begins on a heavier one and
// fills whole beats; no dots in simple meters; no minim rest in 3/4 [gould11].
std::vector<Piece> restPieces(music::Length at, music::Length length, music::Meter meter);

} // namespace notation
