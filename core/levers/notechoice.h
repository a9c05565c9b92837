#pragma once

#include "core/harp/seats.h"
#include "core/levers/useindex.h"
#include "core/tune/ways.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace levers {

// A way to have a note otherwise than written.
struct NoteWay {
    tune::Way way = tune::Way::Plain;
    std::optional<music::Pitch> sounds; // none: nothing is plucked
    std::int64_t cost = 0;
    friend bool operator==(NoteWay const&, NoteWay const&) = default;
};

// What may be done about one note of the performance. Notes of one figure all take the same
// way.
struct NoteChoice {
    bool asWritten = true;
    std::vector<NoteWay> ways;
    int figure = 0;
    std::optional<UseIndex> before; // the note that rings on through it, of Way::Held
};

using NoteChoices = base::List<UseIndex, NoteChoice>;

// One way to play a note: a seat, or none where it is not plucked.
struct NoteOption {
    std::optional<harp::Seat> seat;
    harp::Seat own{}; // the first seat of what sounds
    std::int64_t cost = 0;
    std::optional<int> way;   // index into NoteChoice::ways; none: as written
    bool quick = false;       // as written, with a quick flip
    std::optional<UseIndex> holds; // the note that rings on instead
};

using NoteOptions = base::List<UseIndex, std::vector<NoteOption>>;

// The seats of the pitch, and of the ways of the choice where there is one.
std::vector<NoteOption> optionsOf(harp::Harp const& harp, music::Pitch pitch,
                                  NoteChoice const* choice);

} // namespace levers
