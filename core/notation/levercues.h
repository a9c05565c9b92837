#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

#include <vector>

namespace notation {

// The lever changes of a written bar, in order: the string by harp octave and letter with what
// it sounds from now on, "3F♯"; those of one moment together. A change that not every time
// through the bar has is marked with the times it belongs to.
std::vector<Label> leverCues(arrange::Arrangement const& arrangement, tune::BarIndex bar);

} // namespace notation
