#pragma once

#include "app/sound/voice.h"
#include "core/base/result.h"
#include "core/perform/course.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace sound {

// What a sound file came out like.
struct Rendered {
    perform::Seconds length = 0;
    double peak = 0; // of either channel; full scale is 1
    bool stopped = false; // on the way, by whom it was told to: there is no file then
};

// Told now and then how much is done, 0 to 1; answers whether to go on. Where it does not, no
// file is made.
using Progressing = std::function<bool(double)>;

// Written into the file, where its kind has a place for them.
struct Tags {
    std::string title; // of this file
    std::string album; // of all that belong to it
};

// Whether the ending names a sound file that can be written: .wav (24 bit), .flac (24 bit),
// .ogg (Vorbis).
bool isSoundFile(std::filesystem::path const& path);

// Plays the course, each round once, into a stereo file at 48 kHz; the ending picks the kind.
// The file appears whole or not at all. Faults:
// NoSoundFont, UnknownFileKind, CannotWrite with the reason.
base::Result<Rendered> renderToFile(perform::Course const& course,
                                    std::filesystem::path const& path,
                                    Progressing const& progressing = {}, Voice const& voice = {},
                                    Tags const& tags = {});

// The same into memory. Fault: NoSoundFont.
struct Recording {
    std::vector<float> left;
    std::vector<float> right;
};
base::Result<Recording> renderToMemory(perform::Course const& course, Voice const& voice = {});

} // namespace sound
