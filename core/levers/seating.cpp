#include "core/levers/seating.h"

#include "core/base/at.h"
#include "core/levers/agreedsearch.h"

#include <algorithm>
#include <deque>
#include <queue>
#include <set>
#include <tuple>
#include <utility>

namespace levers {

namespace {

using harp::Lever;

using base::at;

Seating seatingOf(std::vector<GroupWay const*> const& ways, int notes, int strings,
                  NoteChoices const& choices)
{
    Seating seating;
    seating.strings = decltype(seating.strings)(notes, std::nullopt);
    seating.starts = decltype(seating.starts)(strings, std::nullopt);
    for (GroupWay const* way : ways) {
        seating.leastCost += way->cost;
        for (auto const& [note, string] : way->seats) seating.strings[note] = string;
        for (auto const& [string, lever] : way->starts) seating.starts[string] = lever;
        seating.turns.insert(seating.turns.end(), way->turns.begin(), way->turns.end());
        for (auto const& [note, taken] : way->ways)
            seating.taken.push_back({note, choices[note].ways[at(taken)]});
    }
    std::sort(seating.taken.begin(), seating.taken.end(),
              [](TakenWay const& a, TakenWay const& b) { return a.note < b.note; });
    std::sort(seating.turns.begin(), seating.turns.end(), [](Turn const& a, Turn const& b) {
        return std::pair(a.before, a.string) < std::pair(b.before, b.string);
    });
    return seating;
}

} // namespace

struct Seatings::Search {
    NoteChoices choices;
    NoteOptions options;
    std::vector<StringGroup> groups;
    std::optional<BestWindows> windows;
    MomentOrder order;
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

Seatings::Seatings(harp::Harp const& harp, Uses const& notes, Performance const& performance,
                   NoteChoices const& choices, std::optional<std::int64_t> most)
    : m_search(std::make_unique<Search>()), m_notes(notes.size()), m_strings(harp.count())
{
    m_search->choices = choices;
    for (UseIndex const note : notes.indices()) {
        m_search->options.push_back(optionsOf(
            harp, notes[note].pitch, choices.empty() ? nullptr : &m_search->choices[note]));
        if (m_search->options.back().empty()) {
            m_refusal = cannotBeHad(harp, note, notes, performance);
            return;
        }
    }

    std::optional<Turn> refused;
    m_search->groups = groupsOf(harp, m_search->options);
    m_search->windows.emplace(harp, notes, performance);
    m_search->order = orderOf(notes, performance.level.flips);
    for (StringGroup const& group : m_search->groups)
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
        m_refusal = noMoment(notes, *refused, performance);
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
        cost -=
            std::min_element(choice.begin(), choice.end(), [](auto const& a, auto const& b) {
                return a.cost < b.cost;
            })->cost;
    for (Window const& window : windows) cost += window.cost;
    return cost;
}

} // namespace levers
