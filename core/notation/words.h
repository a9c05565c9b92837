#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace notation {

// The chord symbols of a bar as they are printed: two at one place, for the first and second
// time, side by side.
std::vector<Label> chordLabels(tune::Bar const& bar);

// The writer's words of a bar but for those below.
std::vector<Label> annotationLabels(tune::Bar const& bar);

// What sends the player elsewhere or ends the piece, from marks and from words alike: "D.C.",
// "D.S. al Fine", "To Coda", "Fine".
std::vector<Label> navigationLabels(tune::Bar const& bar);

// "mf" and the like, and the hairpins of a whole tune. One that never ends is none.
std::vector<Label> dynamicLabels(tune::Bar const& bar);
std::vector<Hairpin> hairpins(tune::Tune const& tune);

// Whether a mark of a note is told by one of the rows above rather than by a sign at the note.
bool isToldInWords(std::string_view mark);

// A pattern's name as it is printed: "1, low 5" for 1-low5.
std::string patternWords(std::string const& name);

// The same for a pattern as it is played: 1-8-6 where the rhythm takes the notes of 1-6-8 one
// by one in that order.
std::string patternWords(arrange::Voicing const& voicing);

// The pattern of every position that is printed in a bar; the words of one where the left hand
// is silent are empty.
std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, tune::BarIndex bar);

} // namespace notation
