#pragma once

#include "core/tune/edit/notes.h"

#include <optional>
#include <string>
#include <vector>

namespace tune {

// A melody that is being typed: the caret stands at a note, a rest or the end of a bar, and the
// next note will be so long. Signs are those of ABC where it has them.
struct Typing {
    Tune tune;
    NoteAt at;
    music::Length length{music::Rational(1, 8)};       // of what is written next
    std::optional<int> accidental{};                   // of the next note
    bool triplet = false;                              // the next note begins one
    std::optional<std::vector<music::Pitch>> graces{}; // being typed, or for the next note
    bool graceOpen = false;                            // letters are grace notes
    std::optional<NoteAt> tie{};                       // a note to be tied to the next one
    std::optional<NoteAt> written{}; // the last note typed, until the caret moves otherwise
    friend bool operator==(Typing const&, Typing const&) = default;
};

// What a key did: the words say it for undo; empty where the tune stays as it was.
struct Typed {
    Typing typing;
    std::string what;
};

// a to g: a note, in the octave nearest to the one before; z: a rest; 1 to 9 / * . the length
// in quavers, halved, doubled, dotted: of the next notes, and of the note that the caret was
// moved to; ' and , octave, - tie: of the note just typed, or else the one at the caret; ^ _ =
// before a letter; ( a triplet; { } grace notes; | the next bar, where the caret is not there
// already. Other signs do nothing. A letter behind the last bar adds a bar.
Typed typed(Typing typing, char sign);

// A pitch that was played, put as a letter is.
Typed played(Typing typing, music::Pitch pitch);

enum class Stroke {
    Left,
    Right,
    BarBefore,
    BarAfter,
    Up, // the pitch, by a string
    Down,
    SemitoneUp,
    SemitoneDown,
    OctaveUp,
    OctaveDown,
    Delete,   // a note becomes a rest; a rest is taken out and what follows moves up
    BackSpace // the same before the caret
};
Typed stroked(Typing typing, Stroke stroke);

// The caret at a place, where that is in the tune; else where it can be next to it.
Typing withCaret(Typing typing, NoteAt at);

// "quaver", "dotted crotchet", "3/32 of a whole note": for the reader.
std::string lengthWords(music::Length length);

} // namespace tune
