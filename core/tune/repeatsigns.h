#pragma once

#include "core/tune/tune.h"

namespace tune {

// The tune with a sign wherever a repeat goes back to, other than its first bar. A file may leave it
// out where a double bar line or a part begins (ABC 2.1, section 4.8); readers of the page, and of
// other files, would go back to the beginning.
Tune withRepeatSigns(Tune tune);

} // namespace tune
