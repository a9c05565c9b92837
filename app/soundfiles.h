#pragma once

#include "app/sound/render.h"
#include "app/soundwish.h"
#include "core/perform/tuneset.h"

#include <string>
#include <vector>

namespace app {

// One sound file of a wish.
struct SoundFile {
    std::string path;
    SoundWish wish;
};

// The files that a wish makes: the one of the name, or a practice pack of four beside each
// other: both hands, left hand and right hand alone, all three slow (as the wish says, else at
// 60 %), and both hands at the tempo.
std::vector<SoundFile> soundFiles(std::string const& path, SoundWish const& wish);

// Writes them one after another, each whole or not at all. `progressing` hears of all of them
// together. Answers how many were written: fewer where it was told to stop. Faults as heard()
// and renderToFile().
base::Result<int> writeSoundFiles(arrange::Arrangement const& arrangement,
                                  perform::DanceWays const& ways,
                                  std::vector<SoundFile> const& files,
                                  sound::Progressing const& progressing = {});
// The same of a set: its tunes one after another in each file, with the pauses that the levers
// need.
base::Result<int> writeSoundFiles(perform::PlayedSet const& set, perform::DanceWays const& ways,
                                  std::vector<SoundFile> const& files,
                                  sound::Progressing const& progressing = {});

} // namespace app
