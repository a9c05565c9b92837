#include "core/levers/groupsearch.h"

#include "core/base/at.h"

#include <algorithm>
#include <numeric>

namespace levers {

namespace {

// One turn outweighs all that windows and respelt notes can add up to.
constexpr std::int64_t turnCost = 1'000'000;

constexpr std::size_t mostStates = 40; // kept after a note

using base::at;

} // namespace

GroupSearch::GroupSearch(BestWindows& windows, StringGroup const& group,
                         std::optional<Pruning> pruning)
    : m_windows(windows), m_group(group), m_pruning(pruning), m_width(group.strings.size()),
      m_store(std::make_shared<Store>())
{
    m_store->strings.resize(m_width);
    m_store->least.push_back(0);
    m_store->ends.push_back(0);
    m_layers.push_back({m_store.get(), 0, 1});
}

GroupSearch::GroupSearch(GroupSearch const& other, std::size_t notes)
    : m_windows(other.m_windows), m_group(other.m_group), m_pruning(other.m_pruning),
      m_width(other.m_width), m_store(std::make_shared<Store>()), m_shared(other.m_shared),
      m_layers(other.m_layers.begin(),
               other.m_layers.begin() + static_cast<std::ptrdiff_t>(notes) + 1)
{
    m_shared.push_back(other.m_store);
}

std::span<GroupSearch::StringState const> GroupSearch::stateOf(Layer const& layer,
                                                               std::size_t state) const
{
    return std::span(layer.store->strings).subspan((layer.first + state) * m_width, m_width);
}

std::int64_t GroupSearch::leastOf(Layer const& layer, std::size_t state) const
{
    return layer.store->least[layer.first + state];
}

std::span<GroupSearch::Edge const> GroupSearch::edgesOf(Layer const& layer,
                                                        std::size_t state) const
{
    std::size_t const index = layer.first + state;
    std::size_t const first = index == 0 ? 0 : layer.store->ends[index - 1];
    return std::span(layer.store->edges).subspan(first, layer.store->ends[index] - first);
}

std::span<GroupSearch::StringState const> GroupSearch::trial(std::uint32_t index) const
{
    return std::span(m_trial.strings).subspan(index * m_width, m_width);
}

std::optional<Turn> GroupSearch::play(UseIndex note, std::span<NoteOption const> options)
{
    std::optional<Turn> refused;
    tryOptions(note, options, refused);
    std::vector<Found> states = joined();
    if (m_pruning) prune(states, note);
    keep(states);
    if (states.empty()) return refused ? refused : Turn{};
    return std::nullopt;
}

// Every option after every state; a turn without a window is told once.
void GroupSearch::tryOptions(UseIndex note, std::span<NoteOption const> options,
                             std::optional<Turn>& refused)
{
    m_trial.strings.clear();
    m_trial.edges.clear();
    Layer const before = m_layers.back();
    std::vector<StringState> state(m_width);
    for (std::uint32_t from = 0; from < before.count; ++from)
        for (NoteOption const& option : options) {
            std::ranges::copy(stateOf(before, from), state.begin());
            Edge edge{option.cost, from, harp::StringIndex(none), option.way.value_or(none),
                      none};
            std::optional<Turn> turn;
            if (!option.seat) {
                if (option.holds && !holdOn(state, *option.holds, note)) continue;
            } else {
                edge.string = option.seat->string;
                turn = seatNote(state, note, *option.seat);
                if (*option.seat != option.own) leaveOwnLetter(state, note, option.own);
            }
            if (option.quick) {
                if (!turn) continue; // nothing is flipped: the same as written
                turn->quick = true;
            }
            if (turn) {
                auto const& window = m_windows.of(*turn);
                if (!window) {
                    if (!refused) refused = turn;
                    continue;
                }
                edge.cost += turnCost + window->cost;
                edge.turn = static_cast<int>(m_store->turns.size());
                m_store->turns.push_back(*turn);
            }
            m_trial.strings.insert(m_trial.strings.end(), state.begin(), state.end());
            m_trial.edges.push_back(edge);
        }
}

// Trials that led to one state, states in their own order.
std::vector<GroupSearch::Found> GroupSearch::joined()
{
    m_trial.order.resize(m_trial.edges.size());
    std::iota(m_trial.order.begin(), m_trial.order.end(), 0u);
    std::sort(m_trial.order.begin(), m_trial.order.end(),
              [this](std::uint32_t a, std::uint32_t b) {
                  auto const left = trial(a);
                  auto const right = trial(b);
                  auto const compared = std::lexicographical_compare_three_way(
                      left.begin(), left.end(), right.begin(), right.end());
                  return compared != 0 ? compared < 0 : a < b;
              });
    std::vector<Found> states;
    Layer const before = m_layers.back();
    for (std::uint32_t i = 0; i < m_trial.order.size(); ++i) {
        Edge const& edge = m_trial.edges[m_trial.order[i]];
        std::int64_t const cost = leastOf(before, edge.from) + edge.cost;
        if (i == 0 || !std::ranges::equal(trial(m_trial.order[i]), trial(m_trial.order[i - 1])))
            states.push_back({i, i, cost});
        states.back().end = i + 1;
        states.back().least = std::min(states.back().least, cost);
    }
    return states;
}

// Drops what strings may have been through where something else got them to the same levers,
// with the same notes to ring on, no later, for no more. The cheapest stand first.
void GroupSearch::prune(std::vector<Found>& states, UseIndex note) const
{
    std::ranges::stable_sort(states, {}, &Found::least);
    std::vector<Found> kept;
    for (Found const& found : states) {
        if (kept.size() >= mostStates) break;
        auto const state = trial(m_trial.order[found.first]);
        if (!std::ranges::any_of(kept, [&](Found const& k) {
                return outdone(state, trial(m_trial.order[k.first]), note);
            }))
            kept.push_back(found);
    }
    states = std::move(kept);
}

void GroupSearch::keep(std::vector<Found> const& states)
{
    Store& store = *m_store;
    m_layers.push_back({&store, static_cast<std::uint32_t>(store.least.size()),
                        static_cast<std::uint32_t>(states.size())});
    for (Found const& found : states) {
        auto const state = trial(m_trial.order[found.first]);
        store.strings.insert(store.strings.end(), state.begin(), state.end());
        store.least.push_back(found.least);
        for (std::uint32_t i = found.first; i < found.end; ++i)
            store.edges.push_back(m_trial.edges[m_trial.order[i]]);
        store.ends.push_back(static_cast<std::uint32_t>(store.edges.size()));
    }
}

GroupWay const* GroupSearch::way(std::size_t rank)
{
    if (m_told.empty() && m_open.empty())
        for (std::size_t i = 0; i < m_layers.back().count; ++i)
            push({leastOf(m_layers.back(), i), 0, m_layers.size() - 1, i, std::nullopt, 0});
    while (m_told.size() <= rank && !m_open.empty()) {
        Partial const best = m_open.top();
        m_open.pop();
        if (best.layer == 0) {
            m_told.push_back(told(best));
            continue;
        }
        auto const edges = edgesOf(m_layers[best.layer], best.state);
        m_taken.push_back(best);
        for (std::size_t i = 0; i < edges.size(); ++i) {
            std::int64_t const behind = best.behind + edges[i].cost;
            push({leastOf(m_layers[best.layer - 1], edges[i].from) + behind, behind,
                  best.layer - 1, edges[i].from, m_taken.size() - 1, i});
        }
    }
    return rank < m_told.size() ? &m_told[rank] : nullptr;
}

void GroupSearch::push(Partial partial)
{
    partial.age = m_pushed++;
    m_open.push(partial);
}

GroupWay GroupSearch::told(Partial const& first) const
{
    GroupWay way;
    way.cost = first.whole;
    std::size_t note = 0;
    auto last = stateOf(m_layers.back(), 0);
    for (Partial const* partial = &first; partial->later; ++note) {
        Partial const& later = m_taken[*partial->later];
        Layer const& layer = m_layers[later.layer];
        Edge const& edge = edgesOf(layer, later.state)[partial->edge];
        way.seats.emplace_back(m_group.notes[note],
                               edge.string == none ? std::nullopt : std::optional(edge.string));
        if (edge.way != none) way.ways.emplace_back(m_group.notes[note], edge.way);
        if (edge.turn != none) way.turns.push_back(layer.store->turns[at(edge.turn)]);
        last = stateOf(layer, later.state);
        partial = &later;
    }
    for (std::size_t i = 0; i < m_width; ++i)
        if (last[i].lastNote != noNote)
            way.starts.emplace_back(m_group.strings[i], last[i].start);
    return way;
}

// Plays the note there; the turn that this asks for.
std::optional<Turn> GroupSearch::seatNote(std::span<StringState> state, UseIndex note,
                                          harp::Seat const& seat) const
{
    StringState& string = stringOf(state, seat.string);
    std::optional<Turn> turn;
    if (string.lastNote == noNote)
        string.start = seat.lever;
    else if (string.now != seat.lever)
        turn = Turn{seat.string,
                    seat.lever,
                    string.lastNote,
                    note,
                    string.leftTo == noNote ? note : string.leftTo,
                    seat.lever == string.start,
                    false,
                    string.heldTo == noNote ? std::nullopt : std::optional(string.heldTo)};
    string = {note, noNote, noNote, string.start, seat.lever};
    return turn;
}

// The note before rings on through a note; not where it is not plucked itself. A note on a
// string of another group is never left out.
bool GroupSearch::holdOn(std::span<StringState> state, UseIndex before, UseIndex note) const
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
void GroupSearch::leaveOwnLetter(std::span<StringState> state, UseIndex note,
                                 harp::Seat const& own) const
{
    StringState& string = stringOf(state, own.string);
    if (string.lastNote != noNote && string.now == own.lever && string.leftTo == noNote)
        string.leftTo = note;
}

GroupSearch::StringState& GroupSearch::stringOf(std::span<StringState> state,
                                                harp::StringIndex string) const
{
    auto const place = std::find(m_group.strings.begin(), m_group.strings.end(), string);
    return state[static_cast<std::size_t>(place - m_group.strings.begin())];
}

bool GroupSearch::outdone(std::span<StringState const> worse,
                          std::span<StringState const> better, UseIndex note) const
{
    for (std::size_t i = 0; i < m_width; ++i)
        if (!asFree(better[i], worse[i], note)) return false;
    return true;
}

bool GroupSearch::asFree(StringState const& better, StringState const& worse,
                         UseIndex note) const
{
    if (worse.lastNote == noNote) return better.lastNote == noNote;
    bool const ringsOn = m_pruning->ringsUntil[worse.lastNote] > note;
    if (better.lastNote == noNote) return !ringsOn;
    if (better.start != worse.start || better.now != worse.now) return false;
    if (better.leftTo != noNote && (worse.leftTo == noNote || better.leftTo < worse.leftTo))
        return false;
    if (ringsOn && better.lastNote != worse.lastNote) return false;
    MomentOrder const& order = m_pruning->order;
    if (!order.leversTurn) return true;
    return order.begins[better.lastNote] <= order.begins[worse.lastNote] &&
           endOf(better) <= endOf(worse);
}

int GroupSearch::endOf(StringState const& string) const
{
    return m_pruning->order.ends[string.heldTo == noNote ? string.lastNote : string.heldTo];
}

} // namespace levers
