#pragma once

#include "core/base/result.h"

#include <filesystem>

namespace sound {

// The General MIDI sound font that the harp is heard through: the one named by the variable
// SALLOW_SOUNDFONT, else the first found in the usual places. Fault: NoSoundFont; a named font
// that does not exist is refused, never replaced by another.
base::Result<std::filesystem::path> findSoundFont();

} // namespace sound
