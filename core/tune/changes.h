#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <vector>

namespace tune {

// One pitch of the tune as written: the note `note` of a bar and its pitch `ofChord`, counted
// from the lowest; or, with `grace`, the grace note of that number before it.
struct NotePlace {
    BarIndex bar = 0;
    NoteIndex note = 0;
    int ofChord = 0;
    bool grace = false;
    friend auto operator<=>(NotePlace const&, NotePlace const&) = default;
};

// The pitch that stands there; none when the tune has no such note.
std::optional<music::Pitch> pitchOf(Tune const& tune, NotePlace place);

// What an arranger may do with a note that her harp does not give where it stands.
enum class Change {
    OctaveHigher,
    OctaveLower,
    LeftOut,    // the beat stays; where nothing else is plucked it becomes a rest
    AsKeySays,  // the accidental is dropped: the note as the key in force has it
    SemitoneHigher, // the other pitch of its string: the letter stays
    SemitoneLower,
    HeldOver,   // the note straight before it rings on through it
};

struct NoteChange {
    NotePlace place;
    Change change = Change::LeftOut;
    friend bool operator==(NoteChange const&, NoteChange const&) = default;
};

// The tune with the notes changed, in the order given by `changes`; a note tied on is changed
// with the notes it is tied to. Changes of notes that the tune does not have are passed over.
Tune changed(Tune tune, std::vector<NoteChange> const& changes);

// "the C♯5 in bar 7", "the grace note F♯5 in bar 7": for the reader.
std::string noteName(Tune const& tune, NotePlace place);

// "The C♯5 in bar 7 is left out.": what a change does to the tune as it was.
std::string changeSentence(Tune const& before, NoteChange const& change);

// The name of a change in saved work: "octave_higher", "octave_lower", "left_out",
// "as_key_says", "semitone_higher", "semitone_lower", "held_over"; and back, none for other
// words.
std::string_view changeId(Change change);
std::optional<Change> changeFrom(std::string_view id);

} // namespace tune
