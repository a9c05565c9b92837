#pragma once

#include "core/tune/tune.h"

// The notes of one bar as a row that can be cut and joined. For the .cpp files of this folder.
namespace tune {

// Index into Bar::tuplets of the one that holds a note; none: it stands outside.
std::optional<std::size_t> tupletOver(Bar const& bar, NoteIndex note);

// Takes out the notes [first, past) and puts others in their place. A tuplet that loses all its
// notes goes; one that is changed inside grows or shrinks with what is put in.
void exchange(Bar& bar, NoteIndex first, NoteIndex past, Notes const& by);

// One rest in the place of a tuplet.
void dissolve(Bar& bar, std::size_t tuplet);

// Places and length of the bar from the lengths of its notes; rests at its end grow, come or go
// until it is as long as it should be, as far as they can.
void settle(Bar& bar, music::Length due);

// Places, length and chords of a bar as its notes are; pick-ups and numbers of the whole tune.
void addUp(Bar& bar);
void renumber(Tune& tune);

Note restOf(music::Length length);

} // namespace tune
