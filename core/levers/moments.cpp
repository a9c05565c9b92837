#include "core/levers/moments.h"

#include <algorithm>
#include <limits>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <utility>

namespace levers {

namespace {

Window const& cheapest(std::vector<Window> const& windows)
{
    return *std::min_element(windows.begin(), windows.end(),
                             [](auto const& a, auto const& b) { return a.cost < b.cost; });
}

// Joins the groups whose windows do not go together. Returns the groups that grew.
std::set<std::size_t> joinClashing(std::vector<Window> const& windows,
                                   std::vector<std::size_t>& group)
{
    std::set<std::size_t> grown;
    for (std::size_t a = 0; a < windows.size(); ++a)
        for (std::size_t b = a + 1; b < windows.size(); ++b) {
            if (group[a] == group[b] || !overlap(windows[a], windows[b])) continue;
            std::size_t const from = group[b];
            std::ranges::replace(group, from, group[a]);
            grown.erase(from);
            grown.insert(group[a]);
        }
    return grown;
}

// One window on offer.
struct Offer {
    std::size_t gap = 0;
    Window window;
    bool last = false; // no later offer serves this gap
};

// All offers in the order in which the hands could take them up.
std::vector<Offer> inTime(std::vector<std::vector<Window>> const& choices)
{
    std::vector<Offer> offers;
    for (std::size_t gap = 0; gap < choices.size(); ++gap)
        for (Window const& window : choices[gap]) offers.push_back({gap, window, false});
    std::stable_sort(offers.begin(), offers.end(), [](Offer const& a, Offer const& b) {
        return a.window.freeFrom < b.window.freeFrom;
    });
    std::vector<bool> seen(choices.size(), false);
    for (auto offer = offers.rbegin(); offer != offers.rend(); ++offer) {
        offer->last = !seen[offer->gap];
        seen[offer->gap] = true;
    }
    return offers;
}

// A hand at a lever.
struct Busy {
    music::Moment until;
    harp::StringIndex string = 0;
    friend auto operator<=>(Busy const&, Busy const&) = default;
};

// What matters for the offers still to come: which open gaps are served, and until when the
// hands are busy. Served gaps whose last offer has passed are forgotten.
struct State {
    std::vector<std::size_t> served; // ascending
    std::optional<Busy> left;
    std::optional<Busy> right;
    friend auto operator<=>(State const&, State const&) = default;
};

struct Way {
    int cost = 0;
    std::optional<std::size_t> taken; // index of the newest node of the chain
};

// Windows taken, newest first: a chain through one shared list.
struct Node {
    std::size_t offer = 0;
    std::optional<std::size_t> before;
};

using Ways = std::map<State, Way>;

void keep(Ways& ways, State state, Way way)
{
    auto const [known, isNew] = ways.try_emplace(std::move(state), way);
    if (!isNew && way.cost < known->second.cost) known->second = way;
}

void forgetPast(State& state, music::Moment now)
{
    if (state.left && state.left->until <= now) state.left.reset();
    if (state.right && state.right->until <= now) state.right.reset();
}

// The ways after one offer: passed over, and taken where gap and hand are free.
Ways after(Ways const& ways, Offer const& offer, std::size_t index, std::vector<Node>& nodes)
{
    Ways next;
    for (auto const& [known, way] : ways) {
        State state = known;
        forgetPast(state, offer.window.freeFrom);
        auto const served = std::find(state.served.begin(), state.served.end(), offer.gap);
        bool const isServed = served != state.served.end();
        if (isServed || !offer.last) {
            State passed = state;
            if (isServed && offer.last) std::erase(passed.served, offer.gap);
            keep(next, std::move(passed), way);
        }
        auto& busy = offer.window.hand == harp::Side::Left ? state.left : state.right;
        if (isServed || (busy && busy->string != offer.window.string)) continue;
        music::Moment const until =
            busy ? std::max(busy->until, offer.window.freeTo) : offer.window.freeTo;
        busy = Busy{until, offer.window.string};
        if (!offer.last) {
            state.served.push_back(offer.gap);
            std::sort(state.served.begin(), state.served.end());
        }
        nodes.push_back({index, way.taken});
        keep(next, std::move(state), {way.cost + offer.window.cost, nodes.size() - 1});
    }
    return next;
}

// What the gaps still to be served cost at least: of each gap, its cheapest offer from some
// offer on.
class StillToPay {
public:
    StillToPay(std::vector<Offer> const& offers, std::size_t gaps)
        : m_least(offers.size() + 1, std::vector<int>(gaps, 0)), m_sum(offers.size() + 1, 0)
    {
        for (std::size_t i = offers.size(); i-- > 0;) {
            m_least[i] = m_least[i + 1];
            int& least = m_least[i][offers[i].gap];
            least = offers[i].last ? offers[i].window.cost
                                   : std::min(least, offers[i].window.cost);
            m_sum[i] = std::accumulate(m_least[i].begin(), m_least[i].end(), 0);
        }
    }

    int from(std::size_t offer, State const& state) const
    {
        int sum = m_sum[offer];
        for (std::size_t const gap : state.served) sum -= m_least[offer][gap];
        return sum;
    }

private:
    std::vector<std::vector<int>> m_least; // of each offer on, each gap
    std::vector<int> m_sum;
};

// One pass over the offers. Ways that come to cost more than `bound` are dropped, and so are
// all but the `most` cheapest after each offer.
struct Pass {
    std::vector<Node> nodes;
    Ways ways{{State{}, Way{}}};
    bool dropped = false; // more ways than are kept

    void run(std::vector<Offer> const& offers, StillToPay const& toPay, int bound,
             std::size_t most)
    {
        for (std::size_t i = 0; i < offers.size() && !ways.empty(); ++i) {
            ways = after(ways, offers[i], i, nodes);
            std::erase_if(ways, [&](auto const& known) {
                return known.second.cost + toPay.from(i + 1, known.first) > bound;
            });
            if (ways.size() <= most) continue;
            drop(toPay, i + 1, most);
            dropped = true;
        }
    }

    Way const* best() const
    {
        auto const found = std::ranges::min_element(
            ways, {}, [](auto const& known) { return known.second.cost; });
        return found == ways.end() ? nullptr : &found->second;
    }

private:
    void drop(StillToPay const& toPay, std::size_t offer, std::size_t most)
    {
        std::vector<int> costs;
        for (auto const& [state, way] : ways)
            costs.push_back(way.cost + toPay.from(offer, state));
        auto const nth = costs.begin() + static_cast<std::ptrdiff_t>(most);
        std::nth_element(costs.begin(), nth, costs.end());
        int const dearest = *nth;
        std::erase_if(ways, [&](auto const& known) {
            return known.second.cost + toPay.from(offer, known.first) >= dearest &&
                   ways.size() > most;
        });
    }
};

// How many windows of one gap a window of another can take away at most.
int mostTaken(std::vector<Window> const& from, std::vector<Window> const& by)
{
    std::ptrdiff_t most = 0;
    for (Window const& taken : by)
        most = std::max(most, std::ranges::count_if(from, [&](Window const& window) {
                            return overlap(window, taken);
                        }));
    return static_cast<int>(most);
}

// The cheapest windows of each gap, as many as the other gaps can take away and one more: among
// these there is one left whatever the others do, so that no dearer one is ever needed.
std::vector<std::vector<Window>> worthTrying(std::vector<std::vector<Window>> choices)
{
    for (auto& windows : choices) {
        int needed = 1;
        for (auto const& others : choices)
            if (&others != &windows) needed += mostTaken(windows, others);
        if (static_cast<std::size_t>(needed) >= windows.size()) continue;
        std::ranges::stable_sort(windows, {}, &Window::cost);
        windows.resize(static_cast<std::size_t>(needed));
    }
    return choices;
}

// First a quick pass that keeps few ways, then one for anything that costs less: exact but for
// a tune with accidentals at nearly every note, whose ways would be without number.
std::vector<Window> searched(std::vector<std::vector<Window>> const& choices,
                             std::size_t& mostWays)
{
    std::vector<Offer> const offers = inTime(worthTrying(choices));
    StillToPay const toPay(offers, choices.size());
    constexpr int noBound = std::numeric_limits<int>::max() / 2;
    constexpr std::size_t few = 20;
    Pass quick;
    quick.run(offers, toPay, noBound, few);
    Pass exact;
    exact.run(offers, toPay, quick.best() ? quick.best()->cost - 1 : noBound, mostWays);
    // A tune of this kind has many such groups.
    if (exact.dropped) mostWays = few;
    Pass const& best = exact.best() ? exact : quick;
    if (!best.best()) return {};
    std::vector<Window> out(choices.size());
    for (auto taken = best.best()->taken; taken; taken = best.nodes[*taken].before)
        out[offers[best.nodes[*taken].offer].gap] = offers[best.nodes[*taken].offer].window;
    return out;
}

} // namespace

bool overlap(Window const& a, Window const& b)
{
    return a.hand == b.hand && a.string != b.string && a.freeFrom < b.freeTo &&
           b.freeFrom < a.freeTo;
}

// Gaps whose windows get into each other's way are decided together, the others each by itself.
// While groups of gaps clash they are joined; groups that do not clash are each at their least,
// so that the whole is.
std::vector<Window> Moments::chosen(std::vector<Gap> const& gaps,
                                    std::vector<std::vector<Window>> const& choices)
{
    std::vector<Window> chosen;
    std::vector<std::size_t> group; // of each gap
    for (auto const& windows : choices) {
        group.push_back(group.size());
        chosen.push_back(cheapest(windows));
    }
    while (true) {
        auto const joined = joinClashing(chosen, group);
        if (joined.empty()) return chosen;
        for (std::size_t const one : joined) {
            std::vector<std::size_t> members;
            for (std::size_t gap = 0; gap < group.size(); ++gap)
                if (group[gap] == one) members.push_back(gap);
            std::vector<Window> const& windows = together(members, gaps, choices);
            if (windows.empty()) return {};
            for (std::size_t i = 0; i < members.size(); ++i) chosen[members[i]] = windows[i];
        }
    }
}

std::vector<Window> const& Moments::together(std::vector<std::size_t> const& members,
                                             std::vector<Gap> const& gaps,
                                             std::vector<std::vector<Window>> const& choices)
{
    std::vector<int> names;
    for (std::size_t const member : members)
        names.push_back(
            m_names.try_emplace(gaps[member], static_cast<int>(m_names.size())).first->second);
    auto const [known, isNew] = m_known.try_emplace(std::move(names));
    if (isNew) {
        std::vector<std::vector<Window>> windows;
        for (std::size_t const member : members) windows.push_back(choices[member]);
        known->second = searched(windows, m_mostWays);
    }
    return known->second;
}

} // namespace levers
