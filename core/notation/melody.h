#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

namespace notation {

// A note with all that is written of it, no sign chosen yet for its length.
StaffNote asWritten(tune::Note const& note);

// One written bar of the tune as it is printed: lengths as written, with ties where one sign
// cannot show them. `fingers` and `added` may hold any bars; those of this one are used.
StaffBar melodyBar(tune::Tune const& tune, tune::BarIndex bar,
                   std::vector<arrange::NoteFingers> const& fingers,
                   std::vector<arrange::AddedBelow> const& added = {});

} // namespace notation
