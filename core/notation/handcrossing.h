#pragma once

#include "core/notation/staff.h"

namespace notation {

// Left-hand notes far above the bass staff are written on the upper one, stems down, while the
// right hand's stems point up: the player reads one staff and still sees the hand [gould11].
// From three ledger lines on; only where the tune lies at least a third above for as long as
// the note counts, no accidental stands in the bar, and no beam would be torn apart. Ties
// stay on one staff. The lower staff keeps a rest that is not printed.
void moveHighNotes(PrintedBar& bar, tune::Bar const& written);

} // namespace notation
