#pragma once

#include "core/pattern/pattern.h"

#include <string>

namespace files {

// The pattern book as JSON: a list of {"name", "degrees", "fingers", "together", "rolls", "level",
// "strings", "meters", "feel"}.
std::string patternsJson(pattern::PatternBook const& book);

} // namespace files
