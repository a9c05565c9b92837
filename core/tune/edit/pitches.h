#pragma once

#include "core/tune/edit/notes.h"

#include <optional>

namespace tune {

// The pitch of a letter typed at a place: altered as the signature and earlier notes of its bar
// say, in the octave nearest to the note before (a fourth at most; without one, to B4), within
// octaves 0 to 8.
music::Pitch typedPitch(Tune const& tune, NoteAt at, music::Letter letter);

// Edits of pitch. A note that is tied moves with those it is tied to; every pitch of a chord
// moves. A rest, and a note that would leave C0 to B8, stay as they are.
Tune withStep(Tune tune, NoteAt at, int strings);      // along the strings, in the key
Tune withSemitone(Tune tune, NoteAt at, int semitone); // +1 or -1, spelt as the key has it
Tune withOctave(Tune tune, NoteAt at, int octaves);

// Signs at a note.
Tune withTie(Tune tune,
             NoteAt at); // to the next note of its pitch; taken away where there is one
// Played before it: none takes them away.
Tune withGraces(Tune tune, NoteAt at, std::vector<music::Pitch> graces);

} // namespace tune
