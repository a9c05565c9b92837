#pragma once

#include "core/notation/notation.h"
#include "core/sheet/helps.h"
#include "core/sheet/pictures.h"
#include "core/sheet/staffplace.h"

#include <optional>
#include <string>
#include <vector>

namespace sheet {

// The signs that this room draws.
using notation::Label;
using notation::NoteValue;
using notation::PlacingBracket;
using notation::PrintedBar;
using notation::StaffBar;
using notation::StaffNote;
using notation::StaffNoteIndex;

// All that a sheet shows, before it is set on paper: what stands in its bars and what stands
// around them. Heading lines may be empty.
struct Score : notation::Notation {
    Clef clef = Clef::Treble;             // of the only staff
    std::vector<std::string> wordsBelow;  // verses under the last line of music
    std::string harpLine;
    std::optional<LeverPicture> levers; // beside the set-up line
    std::vector<ShapePicture> shapes;   // of the box "Patterns used here", before the foot
    std::vector<std::string> notes;     // for the player, after the music
    std::vector<std::string> footLines; // remarks before the caution
    std::string caution;
    bool meterShown = true; // not where bars are only places
    Helps helps;
    std::string place;  // of a set: "Tune 2 of 3"
    std::string change; // of a set: the levers to flip before it
    std::string next;   // of a set: told at the foot
};

} // namespace sheet
