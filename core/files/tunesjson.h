#pragma once

#include "core/collection/listing.h"

#include <string>

namespace files {

// A row of the list of tunes as one line of JSON: {"file", "tune" (X:), "title", "kind", "key",
// "mode", "meter", "bars", "chords", "arrangement" (it is one), "arranged" (the file of one that
// was made of it, or null)}; one that cannot be read has {"file", "tune", "title", "unreadable"}.
std::string tuneRowJson(collection::Row const& row);

} // namespace files
