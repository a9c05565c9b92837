#pragma once

#include "core/notation/accidentals.h"
#include "core/notation/beams.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/score.h"
#include "core/sheet/staffplace.h"
#include "core/sheet/stems.h"

#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace sheet {

using notation::beamCount;
using notation::BeamGroup;
using notation::BeamRun;

// One notehead of a chord. Horizontal places count in spaces from the left edge of the chord's
// main row of noteheads.
struct SetHead {
    music::Pitch pitch;
    int step = 0;                  // half spaces above the middle line
    double dx = 0;                 // displaced beside its neighbour a second away
    std::optional<int> accidental; // alteration to print
    bool courtesy = false;         // in brackets: the reader may doubt it
    double accidentalDx = 0;
    int dotStep = 0; // where its dot stands: always in a space
};

// A grace note, its places measured like the noteheads'.
struct SetGrace {
    music::Pitch pitch;
    double dx = 0;
    std::optional<int> accidental;
    double accidentalDx = 0;
};

// A sign made ready for its place on the line: everything but where on the line it stands and
// how long a beamed stem is.
struct SetNote {
    StaffNote what;
    std::vector<SetHead> heads; // lowest first
    Stem stem = Stem::Up;
    std::optional<int> beam; // index into SetBar::beams
    char32_t head = 0;       // the notehead or rest glyph
    double left = 0;         // reach to the left of its place, positive
    double right = 0;        // reach to the right
    double rollDx = 0;       // centre of the wiggle or bracket
    double dotDx = 0;        // left edge of the first dot
    std::vector<SetGrace> graces;
};

struct SetBeam {
    BeamGroup group;
    std::vector<BeamRun> runs;
};

// Which of the voices of a staff a bar holds: one alone, or that of the right hand above or of
// the left hand below on the upper staff.
enum class Voice { Alone, Above, Below };

struct SetBar {
    Voice voice = Voice::Alone;
    Clef clef = Clef::Treble;
    base::List<StaffNoteIndex, SetNote> notes;
    std::vector<SetBeam> beams;
    std::vector<notation::StaffTuplet> tuplets;
    std::map<int, int> altered; // what accidentals have left altered, by diatonic step
};

char32_t noteheadFor(NoteValue value);
char32_t restFor(NoteValue value);
char32_t flagFor(NoteValue value, Stem stem);
char32_t accidentalFor(int alter);
// The mark of a note that is left ringing, and the length of its sign.
inline constexpr std::string_view letRing = "lv";
inline constexpr double ringLength = 1.7;

inline bool hasStem(NoteValue value) { return value.halvings > 0; }

// What a bar takes over from the one before it on the same staff.
struct BarBefore {
    std::vector<music::Pitch> tied; // carried in by a tie: they need no accidental
    std::map<int, int> altered;     // a reader may think them altered still
};

SetBar setBar(StaffBar const& bar, tune::Bar const& written, Clef clef, BarBefore const& before,
              MusicFont const& font, Voice voice = Voice::Alone);

} // namespace sheet
