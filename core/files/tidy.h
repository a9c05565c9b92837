#pragma once

#include "core/files/remarks.h"
#include "core/tune/tune.h"

#include <vector>

namespace files {

// What can be said of the bars only when all stand. `free`: the tune has no meter of its own,
// and every bar takes the commonest length as its meter.
tune::Bars tidied(tune::Bars bars, bool free, Remarks& remarks);

// Says where a D.C. or the like is not followed. For a tune that is read whole.
void remarkOnJump(tune::Tune const& tune, Remarks& remarks);

} // namespace files
