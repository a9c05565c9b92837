#pragma once

#include "app/sound/performance.h"
#include "app/sound/voice.h"
#include "core/base/result.h"

#include <functional>
#include <memory>

namespace sound {

// Where a performance goes while it is played: a sound device, or nowhere.
class Output {
public:
    virtual ~Output() = default;

    // As Performance has them, from any thread.
    virtual void begin(perform::Course course, perform::Place from) = 0;
    virtual void stop() = 0;
    virtual void pluck(harp::StringIndex string, int midi, int velocity) = 0;
    virtual Progress progress() const = 0;
    // Whether the device has gone away: nothing has been asked for any more for a while.
    virtual bool lost() const { return false; }
};

// The machine's sound device. Tried are the usual sound servers, or only the FluidSynth driver
// named by the variable SALLOW_SOUND_DRIVER ("jack", whose server then has to run at 48 kHz).
// Faults: NoSoundFont, NoSoundDevice.
base::Result<std::unique_ptr<Output>> openDevice(Voice const& voice = {});

// Time passes but nothing is heard: strings still light where there is no device. `now` is a
// steady clock in seconds.
std::unique_ptr<Output> silentOutput(std::function<perform::Seconds()> now);
std::unique_ptr<Output> silentOutput();

} // namespace sound
