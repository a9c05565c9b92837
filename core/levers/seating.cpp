#include "core/levers/seating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <compare>
#include <deque>
#include <map>
#include <memory>
#include <numeric>
#include <queue>
#include <set>

namespace levers {

namespace {

using harp::Lever;
using harp::Seat;
using Notes = std::span<tune::PlayedNote const>;

// One turn outweighs all that windows and respelt notes can add up to.
constexpr std::int64_t turnCost = 1'000'000;
// A note away from the string of its own letter has to be marked and learnt. Common practice.
constexpr std::int64_t awayFromLetterCost = 30;

constexpr int noNote = -1;

// What a string has been through up to some note. Millions of these are compared: they are
// small.
struct StringState {
    int lastNote = noNote; // not played yet
    int leftTo = noNote;   // the first note since then that was left to a neighbour
    int heldTo = noNote;   // the note through which the last one rings on
    Lever start = Lever::Down;
    Lever now = Lever::Down;
    friend auto operator<=>(StringState const&, StringState const&) = default;
};
using GroupState = std::vector<StringState>; // one for each string of a group

// One way to play a note: from which state before it, on which string.
struct Edge {
    std::size_t from = 0; // index into the states after the note before
    std::int64_t cost = 0;
    std::optional<int> string;
    std::optional<int> way; // index into NoteChoice::ways; none: as written
    std::optional<Turn> turn;
};

// What the strings of a group may have been through once a note is played.
struct Reached {
    GroupState state;
    std::int64_t least = 0; // cost of the cheapest way here
    std::vector<Edge> ways;
};

// Strings tied by pitches that either can give, and the notes they play.
struct Group {
    std::vector<int> strings;
    std::vector<int> notes;
};

std::size_t at(int index) { return static_cast<std::size_t>(index); }

// One way to play a note: a seat, or none where it is not plucked.
struct Option {
    std::optional<Seat> seat;
    Seat own{};        // the first seat of what sounds
    std::int64_t cost = 0;
    std::optional<int> way;        // index into NoteChoice::ways
    bool quick = false;            // as written, with a quick flip
    std::optional<int> holds;      // the note that rings on instead
};

std::vector<Option> optionsOf(harp::Harp const& harp, music::Pitch pitch, NoteChoice const* choice)
{
    std::vector<Option> out;
    auto const seatAll = [&](music::Pitch sounds, std::int64_t cost, std::optional<int> way,
                             bool quick) {
        auto const seats = harp::seats(harp, sounds);
        for (Seat const& seat : seats)
            out.push_back({seat, seats.front(),
                           cost + (seat == seats.front() ? 0 : awayFromLetterCost), way, quick,
                           std::nullopt});
    };
    if (!choice || choice->asWritten) seatAll(pitch, 0, std::nullopt, false);
    if (!choice) return out;
    for (std::size_t w = 0; w < choice->ways.size(); ++w) {
        NoteWay const& way = choice->ways[w];
        int const index = static_cast<int>(w);
        if (way.sounds)
            seatAll(*way.sounds, way.cost, index, way.way == tune::Way::LeftLightened);
        else
            out.push_back({std::nullopt, {}, way.cost, index, false,
                           way.way == tune::Way::Held ? choice->before : std::nullopt});
    }
    return out;
}

// Why no string sounds the pitch.
base::Fault cannotBeHad(harp::Harp const& harp, int note, Notes notes,
                        Performance const& performance)
{
    music::Pitch const pitch = notes[at(note)].pitch;
    auto const string = harp::stringFor(harp, pitch);
    if (!string)
        return {base::FaultCode::NoteOffHarp, placeOfNote(note, notes, performance),
                fmt::format("{}, the harp goes from {} to {}", shown(pitch),
                            shown(harp.string(0).open),
                            shown(harp.string(harp.count() - 1).open))};
    return {base::FaultCode::KeyBeyondTuning, placeOfNote(note, notes, performance),
            fmt::format("no string gives {}: the string of that letter gives {}{}",
                        shown(pitch), shown(harp.string(*string).open),
                        harp.string(*string).hasLever
                            ? " and " + shown(sounding(harp.string(*string), Lever::Up))
                            : " only, as it has no lever")};
}

// What would let a lever turn in so short a silence, as far as tempo goes.
std::string tempoThatHelps(music::Length silent, music::Length beat,
                           Performance const& performance)
{
    harp::Level const& level = performance.level;
    // The same shares as in Clock::turningTime.
    double const beats = (silent / beat).toDouble();
    if (beats <= 0 || beats < level.flipFreeBeats / 4) return {};
    double const quarters = silent.wholes.toDouble() * 240 / (level.flipFreeSeconds / 2);
    return fmt::format("; {} would be slow enough", tune::tempoWords(beat, quarters));
}

// The refusal of a turn that finds no window: what follows what, the silence there is between
// them and the silence that turning asks for.
base::Fault noMoment(Notes notes, Turn const& turn, Performance const& performance)
{
    tune::PlayedNote const& old = notes[at(turn.after)];
    tune::PlayedNote const& next = notes[at(turn.before)];
    std::string const where = placeOfNote(turn.before, notes, performance);
    if (old.at == next.at)
        return {base::FaultCode::NoMomentForFlip, where,
                fmt::format("{} and {} together, both on string {}", shown(old.pitch),
                            shown(next.pitch), turn.string + 1)};
    std::string const change = fmt::format("{} after {}, both on string {}", shown(next.pitch),
                                           shown(old.pitch), turn.string + 1);
    if (!performance.level.flips)
        return {base::FaultCode::NoMomentForFlip, where,
                fmt::format("{}; at level {} no lever is flipped while playing", change,
                            performance.level.number)};

    tune::Bar const& bar = performance.tune.bars[at(performance.bars[at(next.playedBar)].bar)];
    music::Length const beat = music::beatLength(bar.meter);
    double const secondsAWhole = 240 / tune::quartersPerMinute(performance.tempo);
    auto const inWords = [&](music::Length length) {
        return fmt::format("{:.2g} beats or {:.2f} s", (length / beat).toDouble(),
                           length.wholes.toDouble() * secondsAWhole);
    };
    music::Length const silent = std::max(
        music::Length{}, notes[at(turn.by)].at - old.at - old.held * music::Rational(1, 2));
    return {base::FaultCode::NoMomentForFlip, where,
            fmt::format("{}, with at most {} between them; level {} needs {}{}", change,
                        inWords(silent), performance.level.number,
                        inWords(performance.clock.turningTime(next.playedBar)),
                        tempoThatHelps(silent, beat, performance))};
}

// Strings that share a note with two seats belong to one group; so do those of a note that may
// ring on through another, as long as the group stays small: beyond that a note rings on
// wherever its neighbour is plucked, and the plan that follows sees what it does to the levers.
constexpr int mostTiedByHolding = 2; // strings; the states of a group grow with each

std::vector<Group> groupsOf(harp::Harp const& harp,
                            std::vector<std::vector<Option>> const& options)
{
    std::vector<int> leader(at(harp.count()));
    std::vector<int> size(leader.size(), 1);
    std::iota(leader.begin(), leader.end(), 0);
    auto const leaderOf = [&leader](int string) {
        while (leader[at(string)] != string) string = leader[at(string)];
        return string;
    };
    auto const tie = [&](int a, int b) {
        int const from = leaderOf(a);
        int const to = leaderOf(b);
        if (from == to) return;
        leader[at(from)] = to;
        size[at(to)] += size[at(from)];
    };
    std::vector<std::optional<int>> first(options.size()); // a string of each note
    for (std::size_t note = 0; note < options.size(); ++note)
        for (Option const& option : options[note]) {
            if (!option.seat) continue;
            if (!first[note]) first[note] = option.seat->string;
            tie(option.seat->string, *first[note]);
        }
    for (std::size_t note = 0; note < options.size(); ++note)
        for (Option const& option : options[note]) {
            if (!option.holds || !first[at(*option.holds)]) continue;
            int const held = *first[at(*option.holds)];
            if (!first[note]) first[note] = held;
            if (leaderOf(held) == leaderOf(*first[note])) continue;
            if (size[at(leaderOf(held))] + size[at(leaderOf(*first[note]))] <= mostTiedByHolding)
                tie(held, *first[note]);
        }

    std::vector<Group> groups(leader.size());
    for (int string = 0; string < harp.count(); ++string)
        groups[at(leaderOf(string))].strings.push_back(string);
    for (std::size_t note = 0; note < options.size(); ++note)
        groups[at(leaderOf(first[note].value_or(0)))].notes.push_back(static_cast<int>(note));
    std::erase_if(groups, [](Group const& group) { return group.notes.empty(); });
    return groups;
}

// How the notes of one group are played.
struct GroupWay {
    std::int64_t cost = 0;
    std::vector<std::pair<int, std::optional<int>>> seats; // note and string
    std::vector<std::pair<int, Lever>> starts;
    std::vector<Turn> turns;
    std::vector<std::pair<int, int>> ways; // note and the way it goes, of those not as written
    friend bool operator<(GroupWay const& a, GroupWay const& b)
    {
        return std::tie(a.cost, a.seats, a.ways) < std::tie(b.cost, b.seats, b.ways);
    }
};

// Ways that figures are bound to; none: as written.
using Bound = std::map<int, std::optional<int>>;

// The best windows of turns; each turn is asked once.
class BestWindows {
public:
    BestWindows(harp::Harp const& harp, Notes notes, Performance const& performance)
        : m_harp(harp), m_notes(notes), m_performance(performance)
    {
    }

    std::optional<Window> const& of(Turn const& turn)
    {
        auto const key = std::tuple(turn.string, turn.after, turn.by, turn.heldTo.value_or(-1),
                                    turn.returning, turn.quick);
        auto const known = m_windows.find(key);
        if (known != m_windows.end()) return known->second;
        return m_windows
            .emplace(key, m_performance.clock.bestWindow(gapOf(turn, m_notes, m_harp)))
            .first->second;
    }

private:
    harp::Harp const& m_harp;
    Notes m_notes;
    Performance const& m_performance;
    std::map<std::tuple<int, int, int, int, bool, bool>, std::optional<Window>> m_windows;
};

// When the notes begin and end, as places in the order of all such moments.
struct Order {
    std::vector<int> begins;
    std::vector<int> ends;
    bool leversTurn = true; // while playing
};

Order orderOf(Notes notes, bool leversTurn)
{
    std::vector<music::Moment> moments;
    for (tune::PlayedNote const& note : notes) {
        moments.push_back(note.at);
        moments.push_back(note.at + note.held);
    }
    std::sort(moments.begin(), moments.end());
    moments.erase(std::unique(moments.begin(), moments.end()), moments.end());
    auto const placeOf = [&moments](music::Moment moment) {
        return static_cast<int>(std::lower_bound(moments.begin(), moments.end(), moment) -
                                moments.begin());
    };
    Order order{{}, {}, leversTurn};
    for (tune::PlayedNote const& note : notes) {
        order.begins.push_back(placeOf(note.at));
        order.ends.push_back(placeOf(note.at + note.held));
    }
    return order;
}

// Drops what strings may have been through where something else got them to the same levers,
// with the same notes to ring on, no later, for no more.
class Pruning {
public:
    // `ringsUntil`: for each note, the last one through which it may ring on; -1 for none.
    Pruning(Order const& order, std::vector<int> const& ringsUntil)
        : m_order(order), m_ringsUntil(ringsUntil)
    {
    }

    // Of the states after a note.
    void operator()(std::vector<Reached>& layer, int note)
    {
        std::sort(layer.begin(), layer.end(), [](Reached const& a, Reached const& b) {
            return std::tie(a.least, a.state) < std::tie(b.least, b.state);
        });
        m_note = note;
        std::vector<Reached> kept;
        for (Reached& reached : layer) {
            if (kept.size() >= mostStates) break;
            if (!std::ranges::any_of(kept,
                                     [&](Reached const& k) { return outdone(reached, k); }))
                kept.push_back(std::move(reached));
        }
        layer = std::move(kept);
    }

private:
    static constexpr std::size_t mostStates = 80;

    bool outdone(Reached const& worse, Reached const& better) const
    {
        for (std::size_t i = 0; i < worse.state.size(); ++i)
            if (!asFree(better.state[i], worse.state[i])) return false;
        return true;
    }

    bool asFree(StringState const& better, StringState const& worse) const
    {
        if (worse.lastNote == noNote) return better.lastNote == noNote;
        bool const ringsOn = m_ringsUntil[at(worse.lastNote)] > m_note;
        if (better.lastNote == noNote) return !ringsOn;
        if (better.start != worse.start || better.now != worse.now) return false;
        if (better.leftTo != noNote && (worse.leftTo == noNote || better.leftTo < worse.leftTo))
            return false;
        if (ringsOn && better.lastNote != worse.lastNote) return false;
        if (!m_order.leversTurn) return true;
        return m_order.begins[at(better.lastNote)] <= m_order.begins[at(worse.lastNote)] &&
               endOf(better) <= endOf(worse);
    }

    int endOf(StringState const& string) const
    {
        return m_order.ends[at(string.heldTo == noNote ? string.lastNote : string.heldTo)];
    }

    Order const& m_order;
    std::vector<int> const& m_ringsUntil;
    int m_note = 0;
};

// Plays the notes of one group in turn, keeping every way to every state, and then tells whole
// ways from the cheapest on: a search from the end, led by the cost of the cheapest beginning.
class GroupSearch {
public:
    // Without `pruning` every way is kept.
    GroupSearch(BestWindows& windows, Group const& group, std::optional<Pruning> pruning)
        : m_windows(windows), m_group(group), m_pruning(std::move(pruning))
    {
        m_layers.push_back(std::make_shared<Layer const>(
            Layer{Reached{GroupState(group.strings.size()), 0, {}}}));
    }

    // A search that has played as the other has, up to its first `notes` notes.
    GroupSearch(GroupSearch const& other, std::size_t notes)
        : m_windows(other.m_windows), m_group(other.m_group), m_pruning(other.m_pruning),
          m_layers(other.m_layers.begin(),
                   other.m_layers.begin() + static_cast<std::ptrdiff_t>(notes) + 1)
    {}

    // Adds the next note; the turn that found no window when there is no way to play it.
    std::optional<Turn> play(int note, std::vector<Option> const& options)
    {
        std::map<GroupState, Reached> next; // their states are the keys until the end
        std::optional<Turn> refused;
        Layer const& before = *m_layers.back();
        for (std::size_t from = 0; from < before.size(); ++from)
            for (Option const& option : options) {
                GroupState state = before[from].state;
                Edge edge{from, option.cost, std::nullopt, option.way, std::nullopt};
                if (!option.seat) {
                    if (option.holds && !holdOn(state, *option.holds, note)) continue;
                } else {
                    edge.string = option.seat->string;
                    seatNote(state, edge, note, *option.seat);
                    if (*option.seat != option.own) leaveOwnLetter(state, note, option.own);
                }
                if (option.quick) {
                    if (!edge.turn) continue; // nothing is flipped: the same as written
                    edge.turn->quick = true;
                }
                if (edge.turn) {
                    auto const& window = m_windows.of(*edge.turn);
                    if (!window) {
                        if (!refused) refused = edge.turn;
                        continue;
                    }
                    edge.cost += turnCost + window->cost;
                }
                std::int64_t const cost = before[from].least + edge.cost;
                auto const [known, isNew] = next.try_emplace(std::move(state));
                Reached& reached = known->second;
                reached.least = isNew ? cost : std::min(reached.least, cost);
                reached.ways.push_back(std::move(edge));
            }
        Layer layer;
        layer.reserve(next.size());
        while (!next.empty()) {
            auto first = next.extract(next.begin());
            first.mapped().state = std::move(first.key());
            layer.push_back(std::move(first.mapped()));
        }
        if (m_pruning) (*m_pruning)(layer, note);
        m_layers.push_back(std::make_shared<Layer const>(std::move(layer)));
        if (m_layers.back()->empty()) return refused ? refused : Turn{};
        return std::nullopt;
    }

    // The way of that rank, 0 the cheapest; none when there are not so many.
    GroupWay const* way(std::size_t rank)
    {
        if (m_told.empty() && m_open.empty())
            for (std::size_t i = 0; i < m_layers.back()->size(); ++i)
                push({(*m_layers.back())[i].least, 0, m_layers.size() - 1, i, std::nullopt, 0});
        while (m_told.size() <= rank && !m_open.empty()) {
            Partial const best = m_open.top();
            m_open.pop();
            if (best.layer == 0) {
                m_told.push_back(told(best));
                continue;
            }
            auto const& ways = (*m_layers[best.layer])[best.state].ways;
            m_taken.push_back(best);
            for (std::size_t i = 0; i < ways.size(); ++i) {
                std::int64_t const behind = best.behind + ways[i].cost;
                push({(*m_layers[best.layer - 1])[ways[i].from].least + behind, behind,
                      best.layer - 1, ways[i].from, m_taken.size() - 1, i});
            }
        }
        return rank < m_told.size() ? &m_told[rank] : nullptr;
    }

private:
    using Layer = std::vector<Reached>;

    // A way known from some note to the end.
    struct Partial {
        std::int64_t whole = 0;  // the least cost of a way that ends so
        std::int64_t behind = 0; // of the part that is known
        std::size_t layer = 0;
        std::size_t state = 0;
        std::optional<std::size_t> later; // the partial way one note shorter, in m_taken
        std::size_t edge = 0;             // ... and which of its state's ways leads on to it
        std::size_t age = 0;              // ties fall to the older
        bool operator<(Partial const& other) const
        {
            return std::pair(whole, age) > std::pair(other.whole, other.age);
        }
    };

    void push(Partial partial)
    {
        partial.age = m_pushed++;
        m_open.push(partial);
    }

    GroupWay told(Partial const& first) const
    {
        GroupWay way;
        way.cost = first.whole;
        std::size_t note = 0;
        GroupState const* last = &m_layers.back()->front().state;
        for (Partial const* partial = &first; partial->later; ++note) {
            Partial const& later = m_taken[*partial->later];
            Reached const& reached = (*m_layers[later.layer])[later.state];
            Edge const& edge = reached.ways[partial->edge];
            way.seats.emplace_back(m_group.notes[note], edge.string);
            if (edge.way) way.ways.emplace_back(m_group.notes[note], *edge.way);
            if (edge.turn) way.turns.push_back(*edge.turn);
            last = &reached.state;
            partial = &later;
        }
        for (std::size_t i = 0; i < m_group.strings.size(); ++i)
            if ((*last)[i].lastNote != noNote)
                way.starts.emplace_back(m_group.strings[i], (*last)[i].start);
        return way;
    }

    void seatNote(GroupState& state, Edge& edge, int note, Seat const& seat) const
    {
        StringState& string = stateOf(state, seat.string);
        if (string.lastNote == noNote)
            string.start = seat.lever;
        else if (string.now != seat.lever)
            edge.turn =
                Turn{seat.string,
                     seat.lever,
                     string.lastNote,
                     note,
                     string.leftTo == noNote ? note : string.leftTo,
                     seat.lever == string.start,
                     false,
                     string.heldTo == noNote ? std::nullopt : std::optional(string.heldTo)};
        string = {note, noNote, noNote, string.start, seat.lever};
    }

    // The note before rings on through a note; not where it is not plucked itself. A note on a
    // string of another group is never left out.
    bool holdOn(GroupState& state, int before, int note) const
    {
        for (StringState& string : state)
            if (string.lastNote == before) {
                string.heldTo = note;
                return true;
            }
        return !std::binary_search(m_group.notes.begin(), m_group.notes.end(), before);
    }

    // A note on a neighbour: where the string of its own letter would sound it as well, that
    // string's lever must be turned by then, or the note is not where the plan says.
    void leaveOwnLetter(GroupState& state, int note, Seat const& own) const
    {
        StringState& string = stateOf(state, own.string);
        if (string.lastNote != noNote && string.now == own.lever && string.leftTo == noNote)
            string.leftTo = note;
    }

    StringState& stateOf(GroupState& state, int string) const
    {
        auto const place = std::find(m_group.strings.begin(), m_group.strings.end(), string);
        return state[at(static_cast<int>(place - m_group.strings.begin()))];
    }

    BestWindows& m_windows;
    Group const& m_group;
    std::optional<Pruning> m_pruning;
    // For the start and each note of the group; searches that begin alike share them.
    std::vector<std::shared_ptr<Layer const>> m_layers;
    std::priority_queue<Partial> m_open;
    std::vector<Partial> m_taken;
    std::vector<GroupWay> m_told;
    std::size_t m_pushed = 0;
};

// The ways of one group in which the notes of a figure all go the same way, the cheapest first.
// Where the cheapest way of a search is at odds with itself, the search is parted: the figure
// goes each of its ways in a search of its own. After so many partings only the cheapest part
// is followed, so that no line takes for ever.
class AgreedSearch {
public:
    AgreedSearch(BestWindows& windows, Order const& order, Group const& group,
                 std::vector<std::vector<Option>> const& options,
                 std::span<NoteChoice const> choices)
        : m_windows(windows), m_order(order), m_group(group), m_options(options),
          m_choices(choices), m_ringsUntil(options.size(), -1)
    {
        for (int const note : group.notes) {
            m_chosen = m_chosen || (!choices.empty() && !choices[at(note)].ways.empty());
            for (Option const& option : options[at(note)])
                if (option.holds) m_ringsUntil[at(*option.holds)] = note;
        }
        std::optional<Pruning> pruning;
        if (m_chosen) pruning.emplace(m_order, m_ringsUntil);
        if (auto whole = searched(GroupSearch(m_windows, group, pruning), 0, {}))
            m_branches.push_back(*std::move(whole));
    }

    // Ways that cost more are not looked for.
    void limit(std::int64_t most) { m_most = most; }

    // What any way costs at least, before it is asked whether figures go one way; none: there
    // is no way.
    std::optional<std::int64_t> atLeast()
    {
        if (!m_told.empty()) return m_told.front().cost;
        auto const best = cheapestBranch();
        if (!best) return std::nullopt;
        return m_branches[*best].search->way(m_branches[*best].rank)->cost;
    }

    // The turn without a window where the notes cannot be played at all.
    std::optional<Turn> stuck()
    {
        return way(0) ? std::nullopt : std::optional(m_stuck.value_or(Turn{}));
    }

    GroupWay const* way(std::size_t rank)
    {
        while (m_told.size() <= rank && next()) {}
        return rank < m_told.size() ? &m_told[rank] : nullptr;
    }

private:
    static constexpr int mostParted = 20;

    struct Branch {
        std::unique_ptr<GroupSearch> search;
        Bound bound;
        std::size_t rank = 0;
    };

    // Goes on from a search that has played so many notes.
    std::optional<Branch> searched(GroupSearch begun, std::size_t played, Bound bound)
    {
        auto search = std::make_unique<GroupSearch>(std::move(begun));
        for (; played < m_group.notes.size(); ++played) {
            int const note = m_group.notes[played];
            auto const stuck = search->play(note, allowed(note, bound));
            if (!stuck) continue;
            if (!m_stuck && bound.empty()) m_stuck = stuck;
            return std::nullopt;
        }
        return Branch{std::move(search), std::move(bound), 0};
    }

    std::vector<Option> allowed(int note, Bound const& bound) const
    {
        if (bound.empty()) return m_options[at(note)];
        auto const found = bound.find(m_choices[at(note)].figure);
        if (found == bound.end()) return m_options[at(note)];
        std::vector<Option> out;
        for (Option const& option : m_options[at(note)])
            if (goes(option.way, note) == found->second) out.push_back(option);
        return out;
    }

    // The way a note goes for its figure: a quick flip is as written with leave to hurry.
    std::optional<int> goes(std::optional<int> way, int note) const
    {
        if (way && m_choices[at(note)].ways[at(*way)].way == tune::Way::LeftLightened)
            return std::nullopt;
        return way;
    }

    // A figure whose notes go different ways.
    std::optional<int> atOdds(GroupWay const& whole) const
    {
        if (whole.ways.empty()) return std::nullopt;
        std::map<int, int> taken(whole.ways.begin(), whole.ways.end());
        std::map<int, std::optional<int>> figures;
        for (int const note : m_group.notes) {
            if (m_choices[at(note)].ways.empty()) continue;
            auto const found = taken.find(note);
            std::optional<int> const way =
                found == taken.end() ? std::nullopt : goes(found->second, note);
            auto const [known, isNew] = figures.try_emplace(m_choices[at(note)].figure, way);
            if (!isNew && known->second != way) return known->first;
        }
        return std::nullopt;
    }

    void part(Branch const& branch, int figure)
    {
        std::set<std::optional<int>> ways;
        for (int const note : m_group.notes)
            if (m_choices[at(note)].figure == figure)
                for (Option const& option : m_options[at(note)])
                    ways.insert(goes(option.way, note));
        // Up to the figure's first note all parts are as the whole is.
        auto const first = std::ranges::find(
            m_group.notes, figure, [this](int note) { return m_choices[at(note)].figure; });
        auto const alike = static_cast<std::size_t>(first - m_group.notes.begin());
        std::vector<Branch> parts;
        for (std::optional<int> const& way : ways) {
            Bound bound = branch.bound;
            bound[figure] = way;
            if (auto part =
                    searched(GroupSearch(*branch.search, alike), alike, std::move(bound)))
                parts.push_back(*std::move(part));
        }
        if (++m_parted > mostParted && !parts.empty()) {
            auto const cheapest = std::ranges::min_element(
                parts, {}, [](Branch const& part) { return part.search->way(0)->cost; });
            std::iter_swap(parts.begin(), cheapest);
            parts.erase(parts.begin() + 1, parts.end());
        }
        std::ranges::move(parts, std::back_inserter(m_branches));
    }

    // The branch whose next way is the cheapest; branches without one are dropped.
    std::optional<std::size_t> cheapestBranch()
    {
        std::erase_if(m_branches,
                      [](Branch const& branch) { return !branch.search->way(branch.rank); });
        std::optional<std::size_t> best;
        std::int64_t least = 0;
        for (std::size_t b = 0; b < m_branches.size(); ++b) {
            std::int64_t const cost = m_branches[b].search->way(m_branches[b].rank)->cost;
            if (best && cost >= least) continue;
            best = b;
            least = cost;
        }
        return best;
    }

    bool next()
    {
        while (auto const best = cheapestBranch()) {
            Branch& branch = m_branches[*best];
            if (m_most && branch.search->way(branch.rank)->cost > *m_most) return false;
            GroupWay const way = *branch.search->way(branch.rank);
            auto const figure = atOdds(way);
            if (figure && !branch.bound.contains(*figure)) {
                Branch const parted = std::move(branch);
                m_branches.erase(m_branches.begin() + static_cast<std::ptrdiff_t>(*best));
                part(parted, *figure);
                continue;
            }
            ++branch.rank;
            if (!m_known.insert(way).second) continue;
            m_told.push_back(way);
            return true;
        }
        return false;
    }

    BestWindows& m_windows;
    Order const& m_order;
    Group const& m_group;
    std::vector<std::vector<Option>> const& m_options;
    std::span<NoteChoice const> m_choices;
    bool m_chosen = false;
    std::vector<int> m_ringsUntil; // as Pruning has it
    std::optional<std::int64_t> m_most;
    int m_parted = 0;
    std::vector<Branch> m_branches;
    std::set<GroupWay> m_known;
    std::deque<GroupWay> m_told;
    std::optional<Turn> m_stuck;
};

Seating seatingOf(std::vector<GroupWay const*> const& ways, std::size_t notes,
                  std::size_t strings, std::span<NoteChoice const> choices)
{
    Seating seating{std::vector<std::optional<int>>(notes),
                    std::vector<std::optional<Lever>>(strings),
                    {},
                    {},
                    0};
    for (GroupWay const* way : ways) {
        seating.leastCost += way->cost;
        for (auto const& [note, string] : way->seats) seating.strings[at(note)] = string;
        for (auto const& [string, lever] : way->starts) seating.starts[at(string)] = lever;
        seating.turns.insert(seating.turns.end(), way->turns.begin(), way->turns.end());
        for (auto const& [note, taken] : way->ways)
            seating.taken.push_back({note, choices[at(note)].ways[at(taken)]});
    }
    std::sort(seating.taken.begin(), seating.taken.end(),
              [](TakenWay const& a, TakenWay const& b) { return a.note < b.note; });
    std::sort(seating.turns.begin(), seating.turns.end(), [](Turn const& a, Turn const& b) {
        return std::pair(a.before, a.string) < std::pair(b.before, b.string);
    });
    return seating;
}

} // namespace

std::string placeOfNote(int note, Notes notes, Performance const& performance)
{
    tune::PlayedBar const& bar = performance.bars[at(notes[at(note)].playedBar)];
    std::string const name = tune::barName(performance.tune, bar.bar);
    return bar.pass == 1 ? name : fmt::format("{}, time {}", name, bar.pass);
}

Gap gapOf(Turn const& turn, Notes notes, harp::Harp const& harp)
{
    tune::PlayedNote const& old = notes[at(turn.after)];
    tune::PlayedNote const& next = notes[at(turn.by)];
    harp::HarpString const& string = harp.string(turn.string);
    constexpr int middleC = 60;
    music::Moment ends = old.at + old.held;
    if (turn.heldTo) ends = notes[at(*turn.heldTo)].at + notes[at(*turn.heldTo)].held;
    return {turn.string,
            old.at,
            ends,
            next.at,
            next.playedBar,
            music::midi(string.open) >= middleC,
            turn.returning,
            string.wound,
            harp::ringSeconds(string),
            turn.quick};
}

struct Seatings::Search {
    std::vector<NoteChoice> choices;
    std::vector<std::vector<Option>> options; // of each note
    std::vector<Group> groups;
    std::optional<BestWindows> windows;
    Order order;
    std::deque<AgreedSearch> searches; // one for each group
    // Ranks of the groups' ways, the cheapest together first.
    struct Ranks {
        std::int64_t cost = 0;
        std::vector<std::size_t> ranks;
        bool operator<(Ranks const& other) const
        {
            return std::tie(cost, ranks) > std::tie(other.cost, other.ranks);
        }
    };
    std::priority_queue<Ranks> open;
    std::set<std::vector<std::size_t>> seen;
    std::optional<std::vector<std::size_t>> told; // whose followers are not open yet

    // Whether every way of all groups together costs more; what cannot be played at all does
    // not count. Groups are looked into only as far as it takes to tell.
    bool dearerThan(std::int64_t most)
    {
        std::int64_t sum = 0;
        for (AgreedSearch& search : searches) {
            auto const least = search.atLeast();
            if (!least) return false;
            sum += *least;
        }
        for (AgreedSearch& search : searches) {
            if (sum > most) return true;
            std::int64_t const least = *search.atLeast();
            search.limit(most - (sum - least));
            bool const some = search.way(0);
            auto const found = search.atLeast();
            if (!found) return false;
            if (!some) return true;
            sum += *found - least;
        }
        return sum > most;
    }

    void offer(std::vector<std::size_t> ranks)
    {
        std::int64_t cost = 0;
        for (std::size_t g = 0; g < searches.size(); ++g) {
            GroupWay const* const way = searches[g].way(ranks[g]);
            if (!way) return;
            cost += way->cost;
        }
        if (seen.insert(ranks).second) open.push({cost, std::move(ranks)});
    }
};

Seatings::Seatings(harp::Harp const& harp, Notes notes, Performance const& performance,
                   std::span<NoteChoice const> choices, std::optional<std::int64_t> most)
    : m_search(std::make_unique<Search>()), m_notes(notes.size()), m_strings(at(harp.count()))
{
    m_search->choices.assign(choices.begin(), choices.end());
    for (std::size_t note = 0; note < notes.size(); ++note) {
        m_search->options.push_back(optionsOf(harp, notes[note].pitch,
                                              choices.empty() ? nullptr
                                                              : &m_search->choices[note]));
        if (m_search->options.back().empty()) {
            int const index = static_cast<int>(note);
            m_refusal = Refused{cannotBeHad(harp, index, notes, performance), index, {}};
            return;
        }
    }

    std::optional<Turn> refused;
    m_search->groups = groupsOf(harp, m_search->options);
    m_search->windows.emplace(harp, notes, performance);
    m_search->order = orderOf(notes, performance.level.flips);
    for (Group const& group : m_search->groups)
        m_search->searches.emplace_back(*m_search->windows, m_search->order, group,
                                        m_search->options, m_search->choices);
    if (most && m_search->dearerThan(*most)) {
        m_tooDear = true;
        return;
    }
    for (AgreedSearch& search : m_search->searches) {
        std::optional<Turn> const stuck = search.stuck();
        if (stuck && (!refused || stuck->before < refused->before)) refused = stuck;
    }
    if (refused)
        m_refusal = Refused{noMoment(notes, *refused, performance), refused->before,
                            refused->after};
    else
        m_search->offer(std::vector<std::size_t>(m_search->groups.size(), 0));
}

Seatings::~Seatings() = default;

std::optional<Seating> Seatings::next()
{
    // Followers cost a search each: they are opened once they are asked for.
    if (auto const told = std::exchange(m_search->told, std::nullopt))
        for (std::size_t g = 0; g < told->size(); ++g) {
            auto ranks = *told;
            ++ranks[g];
            m_search->offer(std::move(ranks));
        }
    if (m_search->open.empty()) return std::nullopt;
    auto const best = m_search->open.top();
    m_search->open.pop();
    std::vector<GroupWay const*> ways;
    for (std::size_t g = 0; g < best.ranks.size(); ++g)
        ways.push_back(m_search->searches[g].way(best.ranks[g]));
    m_search->told = best.ranks;
    return seatingOf(ways, m_notes, m_strings, m_search->choices);
}

std::int64_t costOf(Seating const& seating, std::vector<std::vector<Window>> const& choices,
                    std::vector<Window> const& windows)
{
    std::int64_t cost = seating.leastCost;
    for (auto const& choice : choices)
        cost -= std::min_element(choice.begin(), choice.end(), [](auto const& a, auto const& b) {
                    return a.cost < b.cost;
                })->cost;
    for (Window const& window : windows) cost += window.cost;
    return cost;
}

} // namespace levers
