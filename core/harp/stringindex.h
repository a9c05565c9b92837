#pragma once

#include "core/base/index.h"

namespace harp {

struct HarpString;
using StringIndex = base::Index<HarpString>; // into Harp::strings; 0 is the lowest, longest

} // namespace harp
