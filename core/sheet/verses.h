#pragma once

#include "core/sheet/ties.h"

namespace sheet {

// Words to sing under the upper staff: a row for each verse, syllables centred under their
// notes, hyphens between the parts of a word, a line where the end of a word is sung on
// [gould11]. Between the staves of a grand staff they keep off the bar lines.
void drawVerses(Pen& pen, StaffLine const& line, bool grand);

// How far a syllable reaches to both sides of its notehead's left edge, in spaces; `head` is
// the width of the notehead.
struct SyllableReach {
    double left = 0;
    double right = 0;
};
SyllableReach syllableReach(tune::Syllable const& syllable, double head, bool afterBarLine);

} // namespace sheet
