#pragma once

#include <array>
#include <filesystem>

namespace sound {

// By how many cents the harp of a sound font sounds each MIDI key too high, to a tenth. Measured
// on the keys that harps have, once for each font in a run of the program; 0 for the others and
// where no clear tone is found.
std::array<double, 128> mistuningOf(std::filesystem::path const& font);

} // namespace sound
