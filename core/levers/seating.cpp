#include "core/levers/seating.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <compare>
#include <map>
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

// What a string has been through up to some note.
struct StringState {
    Lever start = Lever::Down;
    Lever now = Lever::Down;
    std::optional<int> lastNote; // none: not played yet
    std::optional<int> leftTo;   // the first note since then that was left to a neighbour
    friend auto operator<=>(StringState const&, StringState const&) = default;
};
using GroupState = std::vector<StringState>; // one for each string of a group

// One way to play a note: from which state before it, on which string.
struct Edge {
    std::size_t from = 0; // index into the states after the note before
    std::int64_t cost = 0;
    int string = 0;
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
            fmt::format("no string sounds {}: its string gives {}{}", shown(pitch),
                        shown(harp.string(*string).open),
                        harp.string(*string).hasLever
                            ? " and " + shown(sounding(harp.string(*string), Lever::Up))
                            : ", without a lever")};
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
    return fmt::format("; at {} it would do", tune::tempoWords(beat, quarters));
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
                fmt::format("{}; level {} turns no levers while playing", change,
                            performance.level.number)};

    tune::Bar const& bar = performance.tune.bars[at(performance.bars[at(next.playedBar)].bar)];
    music::Length const beat = music::beatLength(bar.meter);
    double const secondsAWhole = 240 / tune::quartersPerMinute(performance.tempo);
    auto const inWords = [&](music::Length length) {
        return fmt::format("{:.2g} beats ({:.2f} s)", (length / beat).toDouble(),
                           length.wholes.toDouble() * secondsAWhole);
    };
    music::Length const silent = std::max(
        music::Length{}, notes[at(turn.by)].at - old.at - old.held * music::Rational(1, 2));
    return {base::FaultCode::NoMomentForFlip, where,
            fmt::format("{}, silent between them for at most {}; level {} needs {}{}", change,
                        inWords(silent), performance.level.number,
                        inWords(performance.clock.turningTime(next.playedBar)),
                        tempoThatHelps(silent, beat, performance))};
}

// Strings that share a note with two seats belong to one group.
std::vector<Group> groupsOf(harp::Harp const& harp, std::vector<std::vector<Seat>> const& seats)
{
    std::vector<int> leader(at(harp.count()));
    std::iota(leader.begin(), leader.end(), 0);
    auto const leaderOf = [&leader](int string) {
        while (leader[at(string)] != string) string = leader[at(string)];
        return string;
    };
    for (auto const& choice : seats)
        for (Seat const& seat : choice)
            leader[at(leaderOf(seat.string))] = leaderOf(choice.front().string);

    std::vector<Group> groups(leader.size());
    for (int string = 0; string < harp.count(); ++string)
        groups[at(leaderOf(string))].strings.push_back(string);
    for (std::size_t note = 0; note < seats.size(); ++note)
        groups[at(leaderOf(seats[note].front().string))].notes.push_back(
            static_cast<int>(note));
    std::erase_if(groups, [](Group const& group) { return group.notes.empty(); });
    return groups;
}

// How the notes of one group are played.
struct GroupWay {
    std::int64_t cost = 0;
    std::vector<std::pair<int, int>> seats; // note and string
    std::vector<std::pair<int, Lever>> starts;
    std::vector<Turn> turns;
};

// Plays the notes of one group in turn, keeping every way to every state, and then tells whole
// ways from the cheapest on: a search from the end, led by the cost of the cheapest beginning.
class GroupSearch {
public:
    GroupSearch(harp::Harp const& harp, Notes notes, Performance const& performance,
                Group const& group)
        : m_harp(harp), m_notes(notes), m_performance(performance), m_group(group)
    {
        m_layers.push_back({Reached{GroupState(group.strings.size()), 0, {}}});
    }

    // Adds the next note; the turn that found no window when there is no way to play it.
    std::optional<Turn> play(int note, std::vector<Seat> const& seats)
    {
        std::map<GroupState, Reached> next;
        std::optional<Turn> refused;
        auto const& before = m_layers.back();
        for (std::size_t from = 0; from < before.size(); ++from)
            for (Seat const& seat : seats) {
                GroupState state = before[from].state;
                Edge edge{from, 0, seat.string, std::nullopt};
                seatNote(state, edge, note, seat);
                if (seat != seats.front()) {
                    edge.cost += awayFromLetterCost;
                    leaveOwnLetter(state, note, seats.front());
                }
                if (edge.turn) {
                    auto const window =
                        m_performance.clock.bestWindow(gapOf(*edge.turn, m_notes, m_harp));
                    if (!window) {
                        if (!refused) refused = edge.turn;
                        continue;
                    }
                    edge.cost += turnCost + window->cost;
                }
                std::int64_t const cost = before[from].least + edge.cost;
                auto const [known, isNew] = next.try_emplace(state, Reached{state, cost, {}});
                if (!isNew) known->second.least = std::min(known->second.least, cost);
                known->second.ways.push_back(std::move(edge));
            }
        if (next.empty()) return refused;
        std::vector<Reached> layer;
        for (auto& [state, reached] : next) layer.push_back(std::move(reached));
        m_layers.push_back(std::move(layer));
        return std::nullopt;
    }

    // The way of that rank, 0 the cheapest; none when there are not so many.
    GroupWay const* way(std::size_t rank)
    {
        if (m_told.empty() && m_open.empty())
            for (std::size_t i = 0; i < m_layers.back().size(); ++i)
                push({m_layers.back()[i].least, 0, m_layers.size() - 1, i, std::nullopt, 0});
        while (m_told.size() <= rank && !m_open.empty()) {
            Partial const best = m_open.top();
            m_open.pop();
            if (best.layer == 0) {
                m_told.push_back(told(best));
                continue;
            }
            auto const& ways = m_layers[best.layer][best.state].ways;
            m_taken.push_back(best);
            for (std::size_t i = 0; i < ways.size(); ++i) {
                std::int64_t const behind = best.behind + ways[i].cost;
                push({m_layers[best.layer - 1][ways[i].from].least + behind, behind,
                      best.layer - 1, ways[i].from, m_taken.size() - 1, i});
            }
        }
        return rank < m_told.size() ? &m_told[rank] : nullptr;
    }

private:
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
        GroupState const* last = &m_layers.back().front().state;
        for (Partial const* partial = &first; partial->later; ++note) {
            Partial const& later = m_taken[*partial->later];
            Reached const& reached = m_layers[later.layer][later.state];
            Edge const& edge = reached.ways[partial->edge];
            way.seats.emplace_back(m_group.notes[note], edge.string);
            if (edge.turn) way.turns.push_back(*edge.turn);
            last = &reached.state;
            partial = &later;
        }
        for (std::size_t i = 0; i < m_group.strings.size(); ++i)
            if ((*last)[i].lastNote)
                way.starts.emplace_back(m_group.strings[i], (*last)[i].start);
        return way;
    }

    void seatNote(GroupState& state, Edge& edge, int note, Seat const& seat) const
    {
        StringState& string = stateOf(state, seat.string);
        if (!string.lastNote)
            string.start = seat.lever;
        else if (string.now != seat.lever)
            edge.turn = Turn{seat.string,
                             seat.lever,
                             *string.lastNote,
                             note,
                             string.leftTo.value_or(note),
                             seat.lever == string.start};
        string.now = seat.lever;
        string.lastNote = note;
        string.leftTo.reset();
    }

    // A note on a neighbour: where the string of its own letter would sound it as well, that
    // string's lever must be turned by then, or the note is not where the plan says.
    void leaveOwnLetter(GroupState& state, int note, Seat const& own) const
    {
        StringState& string = stateOf(state, own.string);
        if (string.lastNote && string.now == own.lever && !string.leftTo) string.leftTo = note;
    }

    StringState& stateOf(GroupState& state, int string) const
    {
        auto const place = std::find(m_group.strings.begin(), m_group.strings.end(), string);
        return state[at(static_cast<int>(place - m_group.strings.begin()))];
    }

    harp::Harp const& m_harp;
    Notes m_notes;
    Performance const& m_performance;
    Group const& m_group;
    std::vector<std::vector<Reached>> m_layers; // for the start and each note of the group
    std::priority_queue<Partial> m_open;
    std::vector<Partial> m_taken;
    std::vector<GroupWay> m_told;
    std::size_t m_pushed = 0;
};

Seating seatingOf(std::vector<GroupWay const*> const& ways, std::size_t notes,
                  std::size_t strings)
{
    Seating seating{std::vector<int>(notes), std::vector<std::optional<Lever>>(strings), {}, 0};
    for (GroupWay const* way : ways) {
        seating.leastCost += way->cost;
        for (auto const& [note, string] : way->seats) seating.strings[at(note)] = string;
        for (auto const& [string, lever] : way->starts) seating.starts[at(string)] = lever;
        seating.turns.insert(seating.turns.end(), way->turns.begin(), way->turns.end());
    }
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
    return bar.pass == 1 ? name : fmt::format("{}, pass {}", name, bar.pass);
}

Gap gapOf(Turn const& turn, Notes notes, harp::Harp const& harp)
{
    tune::PlayedNote const& old = notes[at(turn.after)];
    tune::PlayedNote const& next = notes[at(turn.by)];
    harp::HarpString const& string = harp.string(turn.string);
    constexpr int middleC = 60;
    return {turn.string,
            old.at,
            old.at + old.held,
            next.at,
            next.playedBar,
            music::midi(string.open) >= middleC,
            turn.returning,
            string.wound,
            harp::ringSeconds(string)};
}

struct Seatings::Search {
    std::vector<Group> groups;
    std::vector<GroupSearch> searches; // one for each group
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

Seatings::Seatings(harp::Harp const& harp, Notes notes, Performance const& performance)
    : m_search(std::make_unique<Search>()), m_notes(notes.size()), m_strings(at(harp.count()))
{
    std::vector<std::vector<Seat>> seats;
    for (std::size_t note = 0; note < notes.size(); ++note) {
        seats.push_back(harp::seats(harp, notes[note].pitch));
        if (seats.back().empty()) {
            int const index = static_cast<int>(note);
            m_refusal = Refused{cannotBeHad(harp, index, notes, performance), index, {}};
            return;
        }
    }

    std::optional<Turn> refused;
    m_search->groups = groupsOf(harp, seats);
    m_search->searches.reserve(m_search->groups.size());
    for (Group const& group : m_search->groups) {
        GroupSearch& search =
            m_search->searches.emplace_back(harp, notes, performance, group);
        std::optional<Turn> stuck;
        for (int const note : group.notes) {
            stuck = search.play(note, seats[at(note)]);
            if (stuck) break;
        }
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
    if (m_search->open.empty()) return std::nullopt;
    auto const best = m_search->open.top();
    m_search->open.pop();
    std::vector<GroupWay const*> ways;
    for (std::size_t g = 0; g < best.ranks.size(); ++g)
        ways.push_back(m_search->searches[g].way(best.ranks[g]));
    Seating const seating = seatingOf(ways, m_notes, m_strings);
    for (std::size_t g = 0; g < best.ranks.size(); ++g) {
        auto ranks = best.ranks;
        ++ranks[g];
        m_search->offer(std::move(ranks));
    }
    return seating;
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
