#pragma once

#include "core/tune/tune.h"

namespace tune {

// A note or rest of the tune as written: a bar and one of its notes; one past the last is
// the end of the bar.
struct NoteAt {
    BarIndex bar = 0;
    NoteIndex note = 0;
    friend auto operator<=>(NoteAt const&, NoteAt const&) = default;
};

bool isIn(Tune const& tune, NoteAt at);          // a note or rest stands there
bool isOpenIn(Tune const& tune, NoteAt at);      // the same, or the end of a bar
Note const* noteAt(Tune const& tune, NoteAt at); // null where there is none

// Edits of notes. Each answers a new tune; places outside the tune change nothing. Chords stay
// where they are. What is left of a bar is filled with a rest and rests at its end make room,
// so that it stays as long as it should be; a bar that becomes too long or too short all the
// same is left so: see barsums.h.

// From the place on, in the place of what stands there for so long. In a triplet the length
// is the written one and no note goes beyond it; a triplet that is cut into from before goes.
// No pitches: a rest.
Tune withNote(Tune tune, NoteAt at, std::vector<music::Pitch> pitches, music::Length length);

// Three notes in the time of two of this length; the first sounds, the others are rests. No
// pitches: three rests.
Tune withTriplet(Tune tune, NoteAt at, std::vector<music::Pitch> pitches, music::Length length);

// The note there becomes a rest.
Tune silenced(Tune tune, NoteAt at);

// The note or rest there is taken out and what follows in its bar moves up. In a triplet it
// becomes a rest; a triplet of rests becomes one rest.
Tune withoutNote(Tune tune, NoteAt at);

// Another length for the note or rest there; what follows in its bar moves.
Tune withLength(Tune tune, NoteAt at, music::Length length);

// All notes of a bar at once, with their triplets.
Tune withBarNotes(Tune tune, BarIndex bar, Notes notes, std::vector<Tuplet> tuplets);

// The written length of a note: that of a triplet's note as if it stood outside.
music::Length writtenLength(Bar const& bar, NoteIndex note);

} // namespace tune
