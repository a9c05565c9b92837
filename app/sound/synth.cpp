#include "app/sound/synth.h"

#include "app/sound/fontpitch.h"
#include "app/sound/halo.h"
#include "app/sound/soundfont.h"
#include "core/base/words.h"
#include "core/files/midi/messages.h"

#include <fluidsynth.h>

#include <algorithm>
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

namespace midi = files::midi;

// Ten strings plucked together as hard as a schedule has it stay below full scale, and a tune
// in two hands reaches about 0.45 of it: measured, see tests/sound.
constexpr double gain = 0.55;

// Of a font at this gain, as it is measured (fontpitch.h). Others are brought as near to it as a
// factor of two allows, so that a tune is as loud through any.
constexpr double usualLoudness = 0.068;
constexpr double quietest = 0.5;
constexpr double loudest = 2;

// A finger on a string stops it at once. The offset outweighs whatever release the font has and
// leaves FluidSynth's shortest, 16 ms.
constexpr float shortestRelease = -12000; // timecents

// Neighbouring strings may sound the same key (E sharp and F), and damping one must not cut the
// other: they lie on two channels by turns. Strings two apart never sound alike.
int channelOf(harp::StringIndex string) { return string % 2; }

// The program says itself, as a Fault, what goes wrong.
void silenceLog()
{
    for (int level : {FLUID_PANIC, FLUID_ERR, FLUID_WARN, FLUID_INFO, FLUID_DBG})
        fluid_set_log_function(level, nullptr, nullptr);
}

void configure(fluid_settings_t* settings, bool room)
{
    fluid_settings_setnum(settings, "synth.sample-rate", sampleRate);
    fluid_settings_setnum(settings, "synth.gain", gain);
    fluid_settings_setint(settings, "synth.polyphony", 256);
    fluid_settings_setint(settings, "synth.dynamic-sample-loading", 1);
    fluid_settings_setint(settings, "synth.chorus.active", 0);
    // A small wooden room.
    fluid_settings_setint(settings, "synth.reverb.active", room ? 1 : 0);
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
    std::map<harp::StringIndex, int> sounding; // key of each string that rings
    Voice voice;
    Halo halo;
};

HarpSynth::HarpSynth(std::unique_ptr<Parts> parts) : m_parts(std::move(parts)) {}
HarpSynth::HarpSynth(HarpSynth&&) noexcept = default;
HarpSynth& HarpSynth::operator=(HarpSynth&&) noexcept = default;
HarpSynth::~HarpSynth() = default;

struct HarpSynth::Opening {
    static base::Result<HarpSynth> open(std::filesystem::path const& font, bool room)
    {
        base::Fault const unreadable{base::FaultCode::NoSoundFont, font.string(),
                                     base::said("it cannot be read")};
        if (!looksLikeSoundFont(font)) return unreadable;
        silenceLog();
        auto parts = std::make_unique<Parts>();
        configure(parts->settings.get(), room);
        parts->synth.reset(new_fluid_synth(parts->settings.get()));
        fluid_synth_t* const synth = parts->synth.get();
        if (!synth || fluid_synth_sfload(synth, font.string().c_str(), 1) == FLUID_FAILED)
            return unreadable;
        for (int channel : {channelOf(0), channelOf(1)}) {
            fluid_synth_program_change(synth, channel, midi::harpProgram);
            fluid_synth_set_gen(synth, channel, GEN_VOLENVRELEASE, shortestRelease);
        }
        fluid_synth_set_interp_method(synth, -1, FLUID_INTERP_7THORDER);
        return HarpSynth(std::move(parts));
    }

    // Every key by itself: A4, the temperament, and what the font has wrong.
    static void tune(Parts& parts, std::array<double, 128> const& mistuning)
    {
        double const all = 1200 * std::log2(parts.voice.a4Hz / 440); // ISO 16 has 440 Hz
        std::array<double, 128> cents{};
        for (std::size_t key = 0; key < cents.size(); ++key)
            cents[key] = 100 * static_cast<double>(key) + all + parts.voice.cents[key % 12] -
                         mistuning[key];
        fluid_synth_activate_key_tuning(parts.synth.get(), 0, 0, "harp", cents.data(), 0);
        for (int channel : {channelOf(0), channelOf(1)})
            fluid_synth_activate_tuning(parts.synth.get(), channel, 0, 0, 0);
    }
};

base::Result<HarpSynth> HarpSynth::openUncorrected(std::filesystem::path const& font)
{
    return Opening::open(font, false);
}

base::Result<HarpSynth> HarpSynth::open(Voice const& voice)
{
    auto const font = findSoundFont(voice.font);
    if (!font) return font.error();
    auto harp = Opening::open(*font, true);
    if (!harp) return harp;
    harp->m_parts->voice = voice;
    harp->m_parts->halo.setLevel(voice.halo);
    FontPitch const pitch = measured(*font);
    Opening::tune(*harp->m_parts, pitch.cents);
    if (pitch.loudness > 0)
        fluid_synth_set_gain(harp->m_parts->synth.get(),
                             static_cast<float>(gain * std::clamp(usualLoudness / pitch.loudness,
                                                                  quietest, loudest)));
    return harp;
}

void HarpSynth::pluck(harp::StringIndex string, int midi, int velocity, harp::Side)
{
    damp(string);
    fluid_synth_noteon(m_parts->synth.get(), channelOf(string), midi, velocity);
    m_parts->sounding[string] = midi;
    m_parts->halo.pluck(string);
}

void HarpSynth::damp(harp::StringIndex string)
{
    auto const found = m_parts->sounding.find(string);
    if (found == m_parts->sounding.end()) return;
    fluid_synth_noteoff(m_parts->synth.get(), channelOf(string), found->second);
    m_parts->sounding.erase(found);
    m_parts->halo.free(string);
}

void HarpSynth::dampAll()
{
    while (!m_parts->sounding.empty()) damp(m_parts->sounding.begin()->first);
    m_parts->halo.still();
}

void HarpSynth::dampAllBut(std::set<harp::StringIndex> const& strings)
{
    std::vector<harp::StringIndex> others;
    for (auto const& [string, key] : m_parts->sounding)
        if (!strings.contains(string)) others.push_back(string);
    for (harp::StringIndex const string : others) damp(string);
    if (strings.empty()) m_parts->halo.still();
}

void HarpSynth::click(Stress stress)
{
    bool const bar = stress == Stress::Bar;
    int const velocity = bar ? 110 : stress == Stress::HalfBar ? 98 : 80;
    fluid_synth_noteon(m_parts->synth.get(), midi::percussionChannel,
                       bar ? midi::highWoodBlock : midi::lowWoodBlock, velocity);
}

void HarpSynth::tuned(harp::StringIndex string, int midi)
{
    Voice const& voice = m_parts->voice;
    double const cents = voice.cents[static_cast<std::size_t>(midi % 12)];
    m_parts->halo.tune(string, voice.a4Hz * std::exp2((midi - 69 + cents / 100) / 12));
}

void HarpSynth::write(float* left, float* right, int frames)
{
    fluid_synth_write_float(m_parts->synth.get(), frames, left, 0, 1, right, 0, 1);
    if (m_parts->halo.sounds()) m_parts->halo.add(left, right, frames);
}

} // namespace sound
