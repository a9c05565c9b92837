#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <set>

namespace sound {

inline constexpr int sampleRate = 48000; // frames a second

// FluidSynth takes up new notes only at the borders of such blocks.
inline constexpr int blockFrames = 64;

// How hard a wood block is struck.
enum class Stress { Beat, HalfBar, Bar };

// A harp as a synthesizer plays it: strings that ring until damped, and a wood block for
// counting in. Not safe to share between threads; its owner sees to that.
class HarpSynth {
public:
    // Fault: NoSoundFont when the font cannot be read.
    static base::Result<HarpSynth> open(std::filesystem::path const& font);

    HarpSynth(HarpSynth&&) noexcept;
    HarpSynth& operator=(HarpSynth&&) noexcept;
    ~HarpSynth();

    // Plucks a string, which stops whatever it still sounded. `midi` is the key that sounds as
    // the lever stands, `velocity` 1 to 127.
    void pluck(int string, int midi, int velocity);
    void damp(int string);
    void dampAll();
    void dampAllBut(std::set<int> const& strings);
    void click(Stress stress);
    // Tunes all strings so that A4 has this frequency; 440 Hz until then.
    void tuneTo(double a4Hz);

    // The next frames of sound, one float a channel, full scale 1.
    void write(float* left, float* right, int frames);

private:
    struct Parts;
    explicit HarpSynth(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> m_parts;
};

} // namespace sound
