#pragma once

#include <array>
#include <filesystem>

namespace sound {

// What the harp of a sound font has of its own.
struct FontPitch {
    // By how many cents it sounds each MIDI key too high, to a tenth; 0 for keys that no harp has
    // and where no clear tone is found.
    std::array<double, 128> cents{};
    double loudness = 0; // of its middle octaves, root of the mean square; 0: nothing is heard
};

// Measured once for each font in a run of the program.
FontPitch measured(std::filesystem::path const& font);

} // namespace sound
