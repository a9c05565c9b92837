#pragma once

#include <string_view>

namespace base {

// Whether the language in use (core/base/words.h) has words for this English.
bool isSaid(std::string_view english);

} // namespace base
