#pragma once

#include "core/harp/seats.h"
#include "core/levers/clock.h"
#include "core/levers/useindex.h"
#include "core/tune/changes.h"

#include <span>
#include <string>
#include <vector>

namespace levers {

// A tune as it is performed: what the levers must serve. Notes are those of the playing,
// perhaps moved to another pitch.
struct Performance {
    tune::Tune const& tune;
    tune::PlayedBars const& bars;
    tune::Tempo tempo;
    harp::Level level;
    Clock clock;
    std::vector<harp::LeverWish> wishes{};
    std::vector<tune::NotePlace> quick{}; // notes before which a flip may be quick
    bool anyKey = false; // a key that the levers cannot give is set as near as they can
};

// "bar 7", "bar 7, time 2": where a note of the performance stands, for the reader.
std::string placeOfNote(UseIndex note, Uses const& notes, Performance const& performance);

} // namespace levers
