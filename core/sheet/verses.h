#pragma once

#include "core/sheet/ties.h"

namespace sheet {

// Words to sing under the upper staff: a row for each verse, syllables centred under their
// notes, hyphens between the parts of a word, a line where the end of a word is sung on
// [gould11].
void drawVerses(Pen& pen, StaffLine const& line);

// Space a syllable takes, in spaces.
double syllableWidth(tune::Syllable const& syllable);

} // namespace sheet
