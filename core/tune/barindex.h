#pragma once

#include "core/base/index.h"

namespace tune {

struct PlayedBar;
using PlayedBarIndex = base::Index<PlayedBar>; // into Playing::bars

} // namespace tune
