#pragma once

#include "app/sound/instrument.h"
#include "app/sound/voice.h"
#include "core/base/result.h"

#include <filesystem>
#include <memory>
#include <set>

namespace sound {

inline constexpr int sampleRate = 48000; // frames a second

// FluidSynth takes up new notes only at the borders of such blocks.
inline constexpr int blockFrames = 64;

// A harp as a synthesizer plays it: strings that ring until damped, and a wood block for
// counting in. Not safe to share between threads; its owner sees to that.
class HarpSynth final : public Instrument {
public:
    // Every key is tuned: what the font itself has wrong is measured and made good. Fault:
    // NoSoundFont when the font cannot be read; no font in the voice: the usual one.
    static base::Result<HarpSynth> open(Voice const& voice);
    // As the font has it, without its room: to measure it.
    static base::Result<HarpSynth> openUncorrected(std::filesystem::path const& font);

    HarpSynth(HarpSynth&&) noexcept;
    HarpSynth& operator=(HarpSynth&&) noexcept;
    ~HarpSynth() override;

    void pluck(harp::StringIndex string, int midi, int velocity, harp::Side hand) override;
    void damp(harp::StringIndex string) override;
    void dampAll();
    void dampAllBut(std::set<harp::StringIndex> const& strings) override;
    void click(Stress stress) override;
    void tuned(harp::StringIndex string, int midi) override;
    void write(float* left, float* right, int frames) override;

private:
    struct Parts;
    struct Opening;
    explicit HarpSynth(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> m_parts;
};

} // namespace sound
