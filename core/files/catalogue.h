#pragma once

#include "core/base/result.h"
#include "core/base/words.h"

#include <string_view>

namespace files {

// The words of a language from a Qt Linguist file (.ts): source, comment and translation. A
// comment tells two meanings of one English word apart, as in base/words.h. What is unfinished
// or no longer used there is passed over. Faults: Malformed, if it is not such a file.
base::Result<base::Catalogue> catalogueFrom(std::string_view ts);

} // namespace files
