#include "tests/places.h"

namespace places {

std::string shared() { return SALLOW_PLACE_SHARED; }
std::string outside() { return SALLOW_PLACE_OUTSIDE; }
std::string tests() { return SALLOW_PLACE_TESTS; }
std::string nodeModules() { return SALLOW_PLACE_NODE_MODULES; }
std::string musicFont() { return SALLOW_PLACE_MUSIC_FONT; }
std::string program() { return SALLOW_PLACE_PROGRAM; }

} // namespace places
