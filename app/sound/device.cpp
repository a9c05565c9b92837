#include "app/sound/locked.h"

#include "core/base/words.h"

#include <fluidsynth.h>

#include <array>
#include <atomic>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sound {

namespace {

struct Close {
    void operator()(fluid_settings_t* settings) const { delete_fluid_settings(settings); }
    void operator()(fluid_audio_driver_t* driver) const { delete_fluid_audio_driver(driver); }
};

// A pluck is heard within 16 ms: three periods of 256 frames [science-10].
constexpr int periodFrames = 256;
constexpr int periods = 3;

// A device asks for sound all the time, also for silence. One that has not for so long is gone.
using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds patience{1500};

// Drivers to try, the sound servers first.
constexpr std::array usualDrivers{"pulseaudio", "pipewire", "alsa",
                                  "coreaudio",  "wasapi",   "dsound"};

std::vector<std::string> driversToTry()
{
    if (char const* named = std::getenv("SALLOW_SOUND_DRIVER"); named && *named) return {named};
    std::vector<std::string> drivers;
    for (std::string_view const driver : usualDrivers) {
        // The library beneath complains on the terminal when asked for a card that is not
        // there.
        if (driver == "alsa" && !std::filesystem::exists("/dev/snd")) continue;
        drivers.emplace_back(driver);
    }
    return drivers;
}

class Device final : public Locked {
public:
    explicit Device(HarpSynth synth) : Locked(Performance(std::move(synth))) {}

    // Whether the driver could be opened; sound is asked for from then on.
    bool open(std::string const& driver)
    {
        fluid_settings_t* const settings = m_settings.get();
        fluid_settings_setstr(settings, "audio.driver", driver.c_str());
        fluid_settings_setnum(settings, "synth.sample-rate", sampleRate);
        fluid_settings_setint(settings, "audio.period-size", periodFrames);
        fluid_settings_setint(settings, "audio.periods", periods);
        fluid_settings_setint(settings, "audio.jack.autoconnect", 1);
        m_driver.reset(new_fluid_audio_driver2(settings, wanted, this));
        m_asked = Clock::now();
        return m_driver != nullptr;
    }

    bool lost() const override { return Clock::now() - m_asked.load() > patience; }

private:
    // Called on the driver's own thread. The lock is only ever held for a moment elsewhere.
    static int wanted(void* device, int frames, int, float*[], int channels, float* out[])
    {
        if (channels < 2) return FLUID_FAILED;
        auto* const self = static_cast<Device*>(device);
        self->m_asked = Clock::now();
        std::lock_guard const lock(self->m_mutex);
        self->m_performance.render(out[0], out[1], frames);
        return FLUID_OK;
    }

    // Members are destroyed from the last to the first: the driver goes before what it plays.
    std::atomic<Clock::time_point> m_asked{Clock::now()}; // when sound was last asked for
    std::unique_ptr<fluid_settings_t, Close> m_settings{new_fluid_settings()};
    std::unique_ptr<fluid_audio_driver_t, Close> m_driver;
};

} // namespace

base::Result<std::unique_ptr<Output>> openDevice(Voice const& voice)
{
    auto synth = HarpSynth::open(voice);
    if (!synth) return synth.error();
    auto device = std::make_unique<Device>(std::move(*synth));
    for (std::string const& driver : driversToTry())
        if (device->open(driver)) return std::unique_ptr<Output>(std::move(device));
    return base::Fault{base::FaultCode::NoSoundDevice, base::said("sound"), {}};
}

} // namespace sound
