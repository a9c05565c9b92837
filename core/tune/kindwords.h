#pragma once

#include "core/tune/kind.h"

#include <string>

namespace tune {

// "jig", "slip jig": in English, as tunes' files have it.
std::string kindText(Kind kind);

// The same in the language of the reader: "Walzer".
std::string kindShown(Kind kind);

// What a tune says that it is, for the reader: words of its own as they are, the usual ones in
// her language; in English as the file has them.
std::string rhythmShown(std::string const& rhythm);

} // namespace tune
