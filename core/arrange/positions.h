#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace arrange {

// One position for each chord span, in written order, with every time it is played. Spans that
// are never played (a chord for a second time that does not come) are left out.
Positions positionsAsWritten(tune::Tune const& tune, tune::Playing const& playing);

// One position for each time a chord span is played, in the order of playing.
Positions positionsByPass(tune::Tune const& tune, tune::Playing const& playing);

// Takes the last time that the tune's last bar is played out of the positions of that bar, to
// be positions of their own: what closes the tune need not be what leads back into it. A chord
// that turns round to the beginning, after the tonic, is dropped there, and the tonic rings on.
Positions withEndApart(Positions positions, tune::Tune const& tune,
                       tune::Playing const& playing);

} // namespace arrange
