#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

namespace notation {

// The positions that are printed in a written bar, in order of time. Where passes
// differ, those of the first pass are printed.
std::vector<arrange::PositionIndex> printedPositions(arrange::Arrangement const& arrangement,
                                                     tune::BarIndex bar);

// The left hand in one written bar: notes at the pitch that sounds as the levers stand, one
// stem a moment, rests where the hand waits. A note counted on beyond the next is cut there:
// the string rings on by itself. Chords of three and more are taken by harpers as slightly
// rolled, so those to be plucked together carry a bracket [trade-6].
StaffBar leftBar(arrange::Arrangement const& arrangement, tune::BarIndex bar);

} // namespace notation
