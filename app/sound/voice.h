#pragma once

#include <array>
#include <filesystem>

namespace sound {

// How the harp sounds.
struct Voice {
    std::filesystem::path font; // General MIDI; empty: the first in the usual places
    double a4Hz = 440;          // ISO 16
    std::array<double, 12> cents{}; // above equal temperament, from C upwards
    double halo = 0; // 0 to 1: how much the other strings answer each pluck
    friend bool operator==(Voice const&, Voice const&) = default;
};

} // namespace sound
