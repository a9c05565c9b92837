#pragma once

#include "core/music/chord.h"
#include "core/music/key.h"
#include "core/notation/durations.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The vocabulary of MusicXML 4.0 that writer and reader share: value names, modes, chord kinds,
// and the signs over a note.
namespace files::musicxml {

// "eighth", "quarter": the type of a note. Values beyond 1024th and maxima are none.
std::string_view typeName(notation::NoteValue value);
std::optional<int> halvingsOf(std::string_view type); // dots are elements of their own

// The mode element: "major", "minor", "dorian" ... None for "none" and unknown words.
std::optional<music::Mode> modeFrom(std::string_view word);

// One added, altered or left-out tone of a chord.
struct Degree {
    int value = 9;
    int alter = 0; // of an added tone: against the tone of a dominant chord
    std::string type = "add";
    friend bool operator==(Degree const&, Degree const&) = default;
};
struct Kind {
    std::string_view name; // "dominant", "minor-seventh"
    std::vector<Degree> degrees;
};

// The kind and degrees of a chord's suffix.
Kind kindOf(std::string_view suffix);

// The suffix, in the spelling of music::Chord, of a kind with these degrees: the row that has
// the same tones; none where no suffix of ours has them.
std::optional<std::string> suffixOf(std::string_view kind, std::vector<Degree> const& degrees);

// Where a mark of ABC 2.1 (section 4.14) stands among the notations of a note: its group
// ("articulations", "ornaments", "technical", "dynamics" or empty for one that stands alone)
// and its element.
struct MarkElement {
    std::string_view mark;
    std::string_view group;
    std::string_view element;
};
MarkElement const* elementOf(std::string_view mark);
MarkElement const* markOf(std::string_view group, std::string_view element);
// Those that are directions of their own before the note: segno, coda, damping of strings.
MarkElement const* directionOf(std::string_view mark);
MarkElement const* markOfDirection(std::string_view element);

// The mark of a note that rings on: a tie of its own kind, at every note of a chord.
inline constexpr std::string_view letRing = "lv";

} // namespace files::musicxml
