#pragma once

#include "core/arrange/arrangement.h"

namespace roundtrip {

// Written as a score of each kind and read, the tune is the same.
void checkMusicXml(arrange::Arrangement const& arrangement);

} // namespace roundtrip
