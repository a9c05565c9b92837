#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <vector>

namespace sound {

// The General MIDI sound font that the harp is heard through: the wanted one, else the one named
// by the variable SALLOW_SOUNDFONT, else the first of the usual places, the large free font
// before the small. Fault: NoSoundFont; a named font that does not exist is refused, never
// replaced by another.
base::Result<std::filesystem::path> findSoundFont(std::filesystem::path const& wanted = {});

// All that lie in the usual places, each file once, the one that is taken by itself first.
std::vector<std::filesystem::path> soundFonts();

} // namespace sound
