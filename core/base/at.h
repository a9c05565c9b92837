#pragma once

#include <cstddef>

namespace base {

// An index as lists take it; it must not be negative.
constexpr std::size_t at(int index) { return static_cast<std::size_t>(index); }

} // namespace base
