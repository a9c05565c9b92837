#pragma once

#include "core/base/result.h"
#include "core/harp/placing.h"
#include "core/levers/clock.h"

#include <optional>
#include <span>
#include <vector>

namespace levers {

// A tune as it is performed: what the levers must serve. Notes are those of the playing,
// perhaps moved to another pitch.
struct Performance {
    tune::Tune const& tune;
    std::vector<tune::PlayedBar> const& bars;
    tune::Tempo tempo;
    harp::Level level;
    Clock clock;
};

// A lever that must be turned between two notes of the tune.
struct Turn {
    int string = 0;
    harp::Lever to = harp::Lever::Up;
    int after = 0;  // index of the string's last note before
    int before = 0; // index of its first note that wants the lever turned
    int by = 0;     // index of the note before which it must be turned: that one, or an earlier
                    // one that a neighbour plays and this string would sound as well
    bool returning = false; // to where the string stood at the start
    friend bool operator==(Turn const&, Turn const&) = default;
};

// Which string plays each note, and what that asks of the levers.
struct Seating {
    std::vector<int> strings;                       // one for each note
    std::vector<std::optional<harp::Lever>> starts; // one for each string; none: never played
    std::vector<Turn> turns;                        // by the note before which they stand
};

// "bar 7", "bar 7, pass 2": where a note of the performance stands, for the reader.
std::string placeOfNote(int note, std::span<tune::PlayedNote const> notes,
                        Performance const& performance);

Gap gapOf(Turn const& turn, std::span<tune::PlayedNote const> notes, harp::Harp const& harp);

// The seating with the fewest turns of those in which every turn has a window; among these the
// one with the best windows and the fewest notes away from the string of their own letter.
// Exact: pitches with two seats tie their strings together, and strings so tied (two, on a harp
// in a diatonic tuning) are decided together by dynamic programming over their levers and last
// notes. Whether windows of different strings get into each other's way is decided later, see
// moments.h. Faults: NoteOffHarp, KeyBeyondTuning, NoMomentForFlip at the first note that
// cannot be had.
base::Result<Seating> seated(harp::Harp const& harp, std::span<tune::PlayedNote const> notes,
                             Performance const& performance);

} // namespace levers
