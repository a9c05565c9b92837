#pragma once

#include "core/notation/staff.h"

#include <pugixml.hpp>

#include <algorithm>
#include <string_view>
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
    // Where signs of the lower staff are printed on the upper.
    std::vector<music::Length> upper{};

    bool onUpper(notation::StaffNote const& sign) const
    {
        return std::find(upper.begin(), upper.end(), sign.at) != upper.end();
    }
};

// A length in divisions; exact, as divisions are chosen so.
std::int64_t inDivisions(music::Length length, std::int64_t divisions);

// What goes on from one bar of a staff to the next.
struct Carried {
    std::vector<music::Pitch> ties;
    int slurs = 0;                 // open
    std::vector<bool> wordsGoOn{}; // by verse: the word of the last syllable is not at its end
};

// Whether a mark of a note is an element of its own before the note: segno, coda, "D.C.",
// dynamics, hairpins.
bool isDirection(std::string_view mark);

// Appends the notes and, before the note in whose time they fall, the placed elements (copied,
// with their offset). `carried`: what comes into the bar; what goes out of it stands there
// afterwards.
void writeNotes(pugi::xml_node measure, notation::StaffBar const& bar, StaffFrame const& frame,
                std::vector<Placed> const& placed, Carried& carried);

} // namespace files::musicxml
