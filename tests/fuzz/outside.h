#pragma once

// What fuzz entries share: the shipped tables, read once, and how a broken promise is told.

#include "core/files/tables/tables.h"
#include "core/sheet/musicfont.h"

#include <string>

namespace fuzz {

files::Tables const& tables();

// None where the font is not installed.
sheet::MusicFont const* font();

// Says what is broken and stops the program, so that a fuzzer keeps the input.
void demand(bool holds, std::string const& promise);

} // namespace fuzz
