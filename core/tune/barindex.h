#pragma once

#include "core/base/index.h"

namespace tune {

struct Bar;
struct PlayedBar;
using BarIndex = base::Index<Bar>;             // into Tune::bars
using PlayedBarIndex = base::Index<PlayedBar>; // into Playing::bars

} // namespace tune
