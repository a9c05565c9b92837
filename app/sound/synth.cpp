#include "app/sound/synth.h"

#include <fluidsynth.h>

#include <array>
#include <cmath>
#include <fstream>
#include <map>
#include <string_view>
#include <utility>
#include <vector>

namespace sound {

namespace {

struct Close {
    void operator()(fluid_settings_t* settings) const { delete_fluid_settings(settings); }
    void operator()(fluid_synth_t* synth) const { delete_fluid_synth(synth); }
};

// General MIDI numbers, programs counted from 0.
constexpr int harpProgram = 46;
constexpr int percussionChannel = 9;
constexpr int highWoodBlock = 76;
constexpr int lowWoodBlock = 77;

// Ten strings plucked together as hard as a schedule has it stay below full scale, and a tune
// in two hands reaches about 0.45 of it: measured, see tests/sound.
constexpr double gain = 0.55;

// A finger on a string stops it at once. The offset outweighs whatever release the font has and
// leaves FluidSynth's shortest, 16 ms.
constexpr float shortestRelease = -12000; // timecents

// Neighbouring strings may sound the same key (E sharp and F), and damping one must not cut the
// other: they lie on two channels by turns. Strings two apart never sound alike.
int channelOf(int string) { return string % 2; }

// The program says itself, as a Fault, what goes wrong.
void silenceLog()
{
    for (int level : {FLUID_PANIC, FLUID_ERR, FLUID_WARN, FLUID_INFO, FLUID_DBG})
        fluid_set_log_function(level, nullptr, nullptr);
}

void configure(fluid_settings_t* settings)
{
    fluid_settings_setnum(settings, "synth.sample-rate", sampleRate);
    fluid_settings_setnum(settings, "synth.gain", gain);
    fluid_settings_setint(settings, "synth.polyphony", 256);
    fluid_settings_setint(settings, "synth.dynamic-sample-loading", 1);
    fluid_settings_setint(settings, "synth.chorus.active", 0);
    // A small wooden room.
    fluid_settings_setint(settings, "synth.reverb.active", 1);
    fluid_settings_setnum(settings, "synth.reverb.room-size", 0.35);
    fluid_settings_setnum(settings, "synth.reverb.damp", 0.4);
    fluid_settings_setnum(settings, "synth.reverb.width", 0.6);
    fluid_settings_setnum(settings, "synth.reverb.level", 0.3);
}

// A sound font is a RIFF file of the form "sfbk" (SoundFont 2.04, section 4). Anything else is
// kept away from the library, which would try it as other kinds and complain on the terminal.
bool looksLikeSoundFont(std::filesystem::path const& path)
{
    std::array<char, 12> head{};
    std::ifstream(path, std::ios::binary).read(head.data(), head.size());
    std::string_view const text(head.data(), head.size());
    return text.starts_with("RIFF") && text.ends_with("sfbk");
}

} // namespace

// Members are destroyed from the last to the first: synth, then settings.
struct HarpSynth::Parts {
    std::unique_ptr<fluid_settings_t, Close> settings{new_fluid_settings()};
    std::unique_ptr<fluid_synth_t, Close> synth;
    std::map<int, int> sounding; // key of each string that rings
};

HarpSynth::HarpSynth(std::unique_ptr<Parts> parts) : m_parts(std::move(parts)) {}
HarpSynth::HarpSynth(HarpSynth&&) noexcept = default;
HarpSynth& HarpSynth::operator=(HarpSynth&&) noexcept = default;
HarpSynth::~HarpSynth() = default;

base::Result<HarpSynth> HarpSynth::open(std::filesystem::path const& font)
{
    base::Fault const unreadable{base::FaultCode::NoSoundFont, font.string(),
                                 "it cannot be read"};
    if (!looksLikeSoundFont(font)) return unreadable;
    silenceLog();
    auto parts = std::make_unique<Parts>();
    configure(parts->settings.get());
    parts->synth.reset(new_fluid_synth(parts->settings.get()));
    fluid_synth_t* const synth = parts->synth.get();
    if (!synth || fluid_synth_sfload(synth, font.string().c_str(), 1) == FLUID_FAILED)
        return unreadable;
    for (int channel : {channelOf(0), channelOf(1)}) {
        fluid_synth_program_change(synth, channel, harpProgram);
        fluid_synth_set_gen(synth, channel, GEN_VOLENVRELEASE, shortestRelease);
    }
    fluid_synth_set_interp_method(synth, -1, FLUID_INTERP_7THORDER);
    return HarpSynth(std::move(parts));
}

void HarpSynth::pluck(int string, int midi, int velocity)
{
    damp(string);
    fluid_synth_noteon(m_parts->synth.get(), channelOf(string), midi, velocity);
    m_parts->sounding[string] = midi;
}

void HarpSynth::damp(int string)
{
    auto const found = m_parts->sounding.find(string);
    if (found == m_parts->sounding.end()) return;
    fluid_synth_noteoff(m_parts->synth.get(), channelOf(string), found->second);
    m_parts->sounding.erase(found);
}

void HarpSynth::dampAll()
{
    while (!m_parts->sounding.empty()) damp(m_parts->sounding.begin()->first);
}

void HarpSynth::dampAllBut(std::set<int> const& strings)
{
    std::vector<int> others;
    for (auto const& [string, key] : m_parts->sounding)
        if (!strings.contains(string)) others.push_back(string);
    for (int const string : others) damp(string);
}

void HarpSynth::click(Stress stress)
{
    bool const bar = stress == Stress::Bar;
    int const velocity = bar ? 110 : stress == Stress::HalfBar ? 98 : 80;
    fluid_synth_noteon(m_parts->synth.get(), percussionChannel,
                       bar ? highWoodBlock : lowWoodBlock, velocity);
}

void HarpSynth::tuneTo(double a4Hz)
{
    auto const cents = static_cast<float>(1200 * std::log2(a4Hz / 440)); // ISO 16 has 440 Hz
    for (int channel : {channelOf(0), channelOf(1)})
        fluid_synth_set_gen(m_parts->synth.get(), channel, GEN_FINETUNE, cents);
}

void HarpSynth::write(float* left, float* right, int frames)
{
    fluid_synth_write_float(m_parts->synth.get(), frames, left, 0, 1, right, 0, 1);
}

} // namespace sound
