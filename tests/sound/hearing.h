#pragma once

#include "app/sound/render.h"
#include "app/sound/soundfont.h"
#include "app/sound/synth.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <span>

namespace hearing {

// A sound font may be missing where the tests run: they then say so and stop.
inline bool canSound()
{
    if (sound::findSoundFont()) return true;
    WARN("no sound font: nothing was heard");
    return false;
}

inline perform::Event pluck(double at, harp::StringIndex string, int midi, int velocity = 80)
{
    return {at, perform::Event::Kind::Pluck, string, midi, velocity, harp::Side::Right, {}};
}

inline perform::Event damp(double at, harp::StringIndex string)
{
    return {at, perform::Event::Kind::Damp, string, 0, 0, harp::Side::Right, {}};
}

inline perform::Schedule scheduleOf(std::vector<perform::Event> events, double seconds)
{
    perform::Schedule schedule;
    schedule.events = std::move(events);
    schedule.counted = seconds;
    schedule.ringing = seconds;
    return schedule;
}

inline sound::Recording recordingOf(perform::Schedule const& schedule)
{
    auto const recording = sound::renderToMemory(perform::onceOnly(schedule));
    REQUIRE(recording);
    return *recording;
}

// A stretch of the left channel, in seconds.
inline std::span<float const> stretch(sound::Recording const& recording, double from,
                                      double seconds)
{
    auto const first = static_cast<std::size_t>(std::lround(from * sound::sampleRate));
    auto const count = static_cast<std::size_t>(std::lround(seconds * sound::sampleRate));
    return std::span(recording.left).subspan(first, count);
}

} // namespace hearing
