#pragma once

#include <cstdint>

namespace arrange {

// Thousandths of a point. Integers, so that ties and totals are the same on every machine and
// an outside solver can compare exactly.
using Points = std::int64_t;

} // namespace arrange
