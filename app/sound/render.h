#pragma once

#include "core/base/result.h"
#include "core/perform/schedule.h"

#include <filesystem>
#include <functional>
#include <vector>

namespace sound {

// What a sound file came out like.
struct Rendered {
    perform::Seconds length = 0;
    double peak = 0; // of either channel; full scale is 1
};

// Told now and then how much is done, 0 to 1.
using Progressing = std::function<void(double)>;

// Whether the ending names a sound file that can be written: .wav (24 bit), .flac (24 bit),
// .ogg (Vorbis).
bool isSoundFile(std::filesystem::path const& path);

// Plays the schedule into a stereo file at 48 kHz; the ending picks the kind. The file appears
// whole or not at all. `a4Hz` is what the strings are tuned to. Faults: NoSoundFont,
// UnknownFileKind, CannotWrite with the reason.
base::Result<Rendered> renderToFile(perform::Schedule const& schedule,
                                    std::filesystem::path const& path,
                                    Progressing const& progressing = {}, double a4Hz = 440);

// The same into memory. Fault: NoSoundFont.
struct Recording {
    std::vector<float> left;
    std::vector<float> right;
};
base::Result<Recording> renderToMemory(perform::Schedule const& schedule, double a4Hz = 440);

} // namespace sound
