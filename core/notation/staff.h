#pragma once

#include "core/arrange/indices.h"
#include "core/harp/levers.h"
#include "core/music/pitch.h"
#include "core/music/time.h"
#include "core/notation/durations.h"
#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace notation {

// One sign on a staff: note, chord or rest, as it will be printed.
struct StaffNote {
    music::Length at; // from the start of its bar
    music::Length length;
    NoteValue value;
    std::vector<music::Pitch> pitches; // lowest first; none: a rest
    std::vector<int> fingers;          // one for each pitch, or none
    std::vector<music::Pitch> graces;
    std::vector<std::string> marks;
    bool tied = false;     // every pitch sounds on into the next sign that has it
    bool hidden = false;   // a rest that is not printed
    bool fillsBar = false; // a rest of a whole bar, set in its middle
    bool beamBroken = false;
    bool rolled = false;
    bool bracketed = false;      // three or more strings to be plucked strictly together
    std::optional<arrange::PositionIndex> position;
    int slursOpen = 0;           // slurs that begin on it
    int slursClose = 0;          // and end on it
    std::vector<tune::Syllable> verses;

    bool isRest() const { return pitches.empty(); }
};

// The mark of a left-hand chord of which the right hand takes a note.
inline constexpr std::string_view rightHandHelps = "righthand";

using StaffNoteIndex = base::Index<StaffNote>; // into StaffBar::notes
using StaffNotes = base::List<StaffNoteIndex, StaffNote>;
using StaffTuplet = tune::TupletOf<StaffNoteIndex>;

// One bar of one staff.
struct StaffBar {
    StaffNotes notes;
    std::vector<StaffTuplet> tuplets;
};

// Words that belong to a place in a bar.
struct Label {
    music::Length at;
    std::string text;
    std::optional<arrange::PositionIndex> position;
    std::optional<harp::Side> hand = std::nullopt; // that flips the lever, where it is one hand
};

// One bar as it is printed: what stands on its staves, over, between and under them. What the tune
// says of the bar (key, meter, repeats, endings) is read from the tune.
struct PrintedBar {
    StaffBar upper;
    StaffBar lower;      // empty on single-staff sheets
    StaffBar upperBelow; // left-hand notes on the upper staff, stems down: where it has any,
                         // the stems of the right hand's all point up
    std::vector<Label> chords;
    std::vector<Label> annotations;
    std::vector<Label> gaveWay; // what is not played as it is written, in words
    std::vector<Label> navigation; // "D.S. al Fine": at the right end of the bar
    std::vector<Label> dynamics;   // "mf"
    std::vector<Label> leverCues;
    std::vector<Label> labels; // under the lowest staff
};

// A moment of a written bar.
struct Spot {
    tune::BarIndex bar = 0;
    music::Length at;
};

// Louder or softer over a stretch.
struct Hairpin {
    Spot from;
    Spot to;
    bool opens = true; // crescendo
};

// Notes whose fingers are placed together: a bracket from the first to the last.
struct PlacingBracket {
    using End = Spot;
    harp::Side hand = harp::Side::Right;
    bool linked = false; // a finger stays on from the bracket before: they overlap
    End from;
    End to;
};

} // namespace notation
