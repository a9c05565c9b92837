#pragma once

#include "core/base/result.h"
#include "core/harp/placing.h"
#include "core/levers/clock.h"
#include "core/tune/changes.h"
#include "core/tune/ways.h"

#include <cstdint>
#include <memory>
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
    std::vector<harp::LeverWish> wishes{};
    std::vector<tune::NotePlace> quick{}; // notes before which a flip may be quick
    bool anyKey = false; // a key that the levers cannot give is set as near as they can
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
    bool quick = false;     // see Gap
    std::optional<int> heldTo{}; // a later note through which the old one rings on
    friend bool operator==(Turn const&, Turn const&) = default;
};

// A way to have a note otherwise than written.
struct NoteWay {
    tune::Way way = tune::Way::Plain;
    std::optional<music::Pitch> sounds; // none: nothing is plucked
    std::int64_t cost = 0;
    friend bool operator==(NoteWay const&, NoteWay const&) = default;
};

// What may be done about one note of the performance. Notes of one figure all take the same way.
struct NoteChoice {
    bool asWritten = true;
    std::vector<NoteWay> ways;
    int figure = 0;
    std::optional<int> before; // the note that rings on through it, of Way::Held
};

// A note that is not as written.
struct TakenWay {
    int note = 0;
    NoteWay way;
};

// Which string plays each note, and what that asks of the levers.
struct Seating {
    std::vector<std::optional<int>> strings; // one for each note; none: not plucked
    std::vector<std::optional<harp::Lever>> starts; // one for each string; none: never played
    std::vector<Turn> turns;                        // by the note before which they stand
    std::vector<TakenWay> taken;                    // by note
    std::int64_t leastCost = 0; // of the best window of each turn, whatever gets into its way
};

// "bar 7", "bar 7, pass 2": where a note of the performance stands, for the reader.
std::string placeOfNote(int note, std::span<tune::PlayedNote const> notes,
                        Performance const& performance);

Gap gapOf(Turn const& turn, std::span<tune::PlayedNote const> notes, harp::Harp const& harp);

// Why a tune cannot be seated, and the notes that stand in the way (indices into the notes).
struct Refused {
    base::Fault fault; // NoteOffHarp, KeyBeyondTuning, NoMomentForFlip
    int note = 0;
    std::optional<int> after; // the note before it on the same string, of a turn without time
};

// The seatings of a tune in which every turn has a window, each once, the best first: fewest
// turns, then the best windows and the fewest notes away from the string of their own letter.
// Exact: pitches with two seats tie their strings together, and strings so tied (two, on a harp
// in a diatonic tuning) are decided together by dynamic programming over their levers and last
// notes. Where `choices` are given (one for each note) its priced ways stand beside its seats;
// notes of one figure that would go different ways are told apart by branching over the ways of
// the figure. With choices it is exact on short lines and bounded on long ones: so many states are
// kept after a note, and after so many branchings only the cheapest is followed. Whether windows of different strings get into each other's way is not asked here, see
// moments.h: leastCost is what the seating costs at least.
class Seatings {
public:
    Seatings(harp::Harp const& harp, std::span<tune::PlayedNote const> notes,
             Performance const& performance, std::span<NoteChoice const> choices = {},
             std::optional<std::int64_t> most = std::nullopt);
    ~Seatings();

    // Set when there is no seating at all: the first note that cannot be had.
    std::optional<Refused> const& refused() const { return m_refusal; }

    // Every seating costs more than `most`: none is told.
    bool tooDear() const { return m_tooDear; }

    // The next seating; none when there are no more.
    std::optional<Seating> next();

private:
    struct Search;
    std::unique_ptr<Search> m_search;
    std::size_t m_notes;
    std::size_t m_strings;
    std::optional<Refused> m_refusal;
    bool m_tooDear = false;
};

// What a seating costs with these windows for its turns.
std::int64_t costOf(Seating const& seating, std::vector<std::vector<Window>> const& choices,
                    std::vector<Window> const& windows);

} // namespace levers
