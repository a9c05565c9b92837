#pragma once

#include "core/levers/stringgroup.h"
#include "core/levers/turn.h"

#include <compare>
#include <cstdint>
#include <memory>
#include <optional>
#include <queue>
#include <span>
#include <utility>
#include <vector>

namespace levers {

// How the notes of one group are played.
struct GroupWay {
    std::int64_t cost = 0;
    std::vector<std::pair<UseIndex, std::optional<harp::StringIndex>>> seats; // note and string
    std::vector<std::pair<harp::StringIndex, harp::Lever>> starts;
    std::vector<Turn> turns;
    // Note and the way it goes, of those not as written.
    std::vector<std::pair<UseIndex, int>> ways;
    friend bool operator<(GroupWay const& a, GroupWay const& b)
    {
        return std::tie(a.cost, a.seats, a.ways) < std::tie(b.cost, b.seats, b.ways);
    }
};

// Plays the notes of one group in turn, keeping every way to every state of its strings, and
// then tells whole ways from the cheapest on: a search from the end, led by the cost of the
// cheapest beginning.
class GroupSearch {
public:
    // What lets states be dropped: when notes begin and end, and for each note the last one
    // through which it may ring on (-1 for none).
    struct Pruning {
        MomentOrder const& order;
        base::List<UseIndex, UseIndex> const& ringsUntil;
    };

    // Without `pruning` every way is kept.
    GroupSearch(BestWindows& windows, StringGroup const& group, std::optional<Pruning> pruning);

    // A search that has played as the other has, up to its first `notes` notes. The other plays
    // no further note.
    GroupSearch(GroupSearch const& other, std::size_t notes);

    // Adds the next note; the turn that found no window when there is no way to play it.
    std::optional<Turn> play(UseIndex note, std::span<NoteOption const> options);

    // The way of that rank, 0 the cheapest; none when there are not so many.
    GroupWay const* way(std::size_t rank);

private:
    static constexpr UseIndex noNote = -1;
    static constexpr int none = -1;

    // What a string has been through up to some note.
    struct StringState {
        UseIndex lastNote = noNote; // not played yet
        UseIndex leftTo = noNote;   // the first note since then that was left to a neighbour
        UseIndex heldTo = noNote;   // the note through which the last one rings on
        harp::Lever start = harp::Lever::Down;
        harp::Lever now = harp::Lever::Down;
        friend auto operator<=>(StringState const&, StringState const&) = default;
    };

    // One way to play a note: from which state before it, on which string.
    struct Edge {
        std::int64_t cost = 0;
        std::uint32_t from = 0; // index into the states after the note before
        harp::StringIndex string = none;
        int way = none;  // index into NoteChoice::ways; none: as written
        int turn = none; // index into Store::turns
    };

    // Millions of states are reached while keys are compared: what all notes lead to lies in a
    // few lists, a state being so many strings of the first.
    struct Store {
        std::vector<StringState> strings;
        std::vector<std::int64_t> least; // of each state, the cost of the cheapest way to it
        std::vector<std::uint32_t> ends; // of each state, where its edges end
        std::vector<Edge> edges;
        std::vector<Turn> turns;
    };

    // What the strings may have been through once a note is played: a run of states.
    struct Layer {
        Store const* store = nullptr;
        std::uint32_t first = 0;
        std::uint32_t count = 0;
    };

    // States on trial before like ones become one.
    struct Trial {
        std::vector<StringState> strings;
        std::vector<Edge> edges; // one for each state
        std::vector<std::uint32_t> order;
    };

    // Trials that led to one state: a run of Trial::order.
    struct Found {
        std::uint32_t first = 0;
        std::uint32_t end = 0;
        std::int64_t least = 0;
    };

    // A way known from some note to the end.
    struct Partial {
        std::int64_t whole = 0;  // the least cost of a way that ends so
        std::int64_t behind = 0; // of the part that is known
        std::size_t layer = 0;
        std::size_t state = 0;
        std::optional<std::size_t> later; // the partial way one note shorter, in m_taken
        std::size_t edge = 0;             // ... and which of its state's edges leads on to it
        std::size_t age = 0;              // ties fall to the older
        bool operator<(Partial const& other) const
        {
            return std::pair(whole, age) > std::pair(other.whole, other.age);
        }
    };

    std::span<StringState const> stateOf(Layer const& layer, std::size_t state) const;
    std::int64_t leastOf(Layer const& layer, std::size_t state) const;
    std::span<Edge const> edgesOf(Layer const& layer, std::size_t state) const;
    std::span<StringState const> trial(std::uint32_t index) const;

    void tryOptions(UseIndex note, std::span<NoteOption const> options,
                    std::optional<Turn>& refused);
    std::vector<Found> joined();
    void prune(std::vector<Found>& states, UseIndex note) const;
    void keep(std::vector<Found> const& states);

    std::optional<Turn> seatNote(std::span<StringState> state, UseIndex note,
                                 harp::Seat const& seat) const;
    bool holdOn(std::span<StringState> state, UseIndex before, UseIndex note) const;
    void leaveOwnLetter(std::span<StringState> state, UseIndex note,
                        harp::Seat const& own) const;
    StringState& stringOf(std::span<StringState> state, harp::StringIndex string) const;
    bool outdone(std::span<StringState const> worse, std::span<StringState const> better,
                 UseIndex note) const;
    bool asFree(StringState const& better, StringState const& worse, UseIndex note) const;
    int endOf(StringState const& string) const;

    void push(Partial partial);
    GroupWay told(Partial const& first) const;

    BestWindows& m_windows;
    StringGroup const& m_group;
    std::optional<Pruning> m_pruning;
    std::size_t m_width; // strings of a state
    std::shared_ptr<Store> m_store;
    std::vector<std::shared_ptr<Store const>> m_shared; // of searches that began alike
    std::vector<Layer> m_layers;                        // for the start and each note
    Trial m_trial;
    std::priority_queue<Partial> m_open;
    std::vector<Partial> m_taken;
    std::vector<GroupWay> m_told;
    std::size_t m_pushed = 0;
};

} // namespace levers
