#pragma once

#include "core/levers/notechoice.h"
#include "core/levers/refused.h"
#include "core/levers/turn.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace levers {

// A note that is not as written.
struct TakenWay {
    UseIndex note = 0;
    NoteWay way;
};

// Which string plays each note, and what that asks of the levers.
struct Seating {
    base::List<UseIndex, std::optional<harp::StringIndex>> strings;   // none: not plucked
    base::List<harp::StringIndex, std::optional<harp::Lever>> starts; // none: never played
    std::vector<Turn> turns;                        // by the note before which they stand
    std::vector<TakenWay> taken;                    // by note
    std::int64_t leastCost = 0; // of the best window of each turn, whatever gets into its way
};

// The seatings of a tune in which every turn has a window, each once, the best first: fewest
// turns, then the best windows and the fewest notes away from the string of their own letter.
// Exact: pitches with two seats tie their strings together, and strings so tied (two, on a harp
// in a diatonic tuning) are decided together by dynamic programming over their levers and last
// notes. Where `choices` are given (one for each note) its priced ways stand beside its seats;
// notes of one figure that would go different ways are told apart by branching over the ways of
// the figure. With choices it is exact on short lines and bounded on long ones: so many states
// are kept after a note, and after so many branchings only the cheapest is followed. Whether
// windows of different strings get into each other's way is not asked here, see moments.h:
// leastCost is what the seating costs at least.
class Seatings {
public:
    Seatings(harp::Harp const& harp, Uses const& notes, Performance const& performance,
             NoteChoices const& choices = {}, std::optional<std::int64_t> most = std::nullopt);
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
    int m_notes;
    int m_strings;
    std::optional<Refused> m_refusal;
    bool m_tooDear = false;
};

// What a seating costs with these windows for its turns.
std::int64_t costOf(Seating const& seating, std::vector<std::vector<Window>> const& choices,
                    std::vector<Window> const& windows);

} // namespace levers
