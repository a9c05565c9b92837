#pragma once

#include "core/sheet/score.h"

#include <pugixml.hpp>

#include <vector>

// The notes of one staff in one bar as elements of MusicXML. For the .cpp files of this folder.
namespace files::musicxml {

// An element that stands at a place of a bar among the notes: a chord symbol or words.
struct Placed {
    music::Length at;
    pugi::xml_node element; // a whole <harmony> or <direction>, still without its offset
};

// Where the notes are written to and what they need to know.
struct StaffFrame {
    tune::Bar const& written;
    int staff = 1;
    int voice = 1;
    bool grand = true;          // say which staff
    std::int64_t divisions = 1; // of a crotchet
};

// A length in divisions; exact, as divisions are chosen so.
std::int64_t inDivisions(music::Length length, std::int64_t divisions);

// Appends the notes and, before the note in whose time they fall, the placed elements (copied,
// with their offset). `carried`: pitches that a tie brings into the bar; those that it takes
// out stand there afterwards.
void writeNotes(pugi::xml_node measure, sheet::StaffBar const& bar, StaffFrame const& frame,
                std::vector<Placed> const& placed, std::vector<music::Pitch>& carried);

} // namespace files::musicxml
