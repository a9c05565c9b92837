#include "core/levers/moments.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

namespace levers {

namespace {

Window const& cheapest(std::vector<Window> const& windows)
{
    return *std::min_element(windows.begin(), windows.end(),
                             [](auto const& a, auto const& b) { return a.cost < b.cost; });
}

// Two windows that do not go together, by their gaps.
std::optional<std::pair<std::size_t, std::size_t>> clash(std::vector<Window> const& windows)
{
    for (std::size_t a = 0; a < windows.size(); ++a)
        for (std::size_t b = a + 1; b < windows.size(); ++b)
            if (overlap(windows[a], windows[b])) return std::pair(a, b);
    return std::nullopt;
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
    int string = 0;
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

std::vector<Window> searched(std::vector<std::vector<Window>> const& choices)
{
    std::vector<Offer> const offers = inTime(choices);
    std::vector<Node> nodes;
    Ways ways{{State{}, Way{}}};
    for (std::size_t i = 0; i < offers.size(); ++i) ways = after(ways, offers[i], i, nodes);
    if (ways.empty()) return {};

    auto const best =
        std::min_element(ways.begin(), ways.end(), [](auto const& a, auto const& b) {
            return a.second.cost < b.second.cost;
        });
    std::vector<Window> out(choices.size());
    for (auto taken = best->second.taken; taken; taken = nodes[*taken].before)
        out[offers[nodes[*taken].offer].gap] = offers[nodes[*taken].offer].window;
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
std::vector<Window> chosenWindows(std::vector<std::vector<Window>> const& choices)
{
    std::vector<Window> chosen;
    std::vector<std::size_t> group; // of each gap
    for (auto const& windows : choices) {
        group.push_back(group.size());
        chosen.push_back(cheapest(windows));
    }
    while (auto const pair = clash(chosen)) {
        std::size_t const joined = group[pair->first];
        std::size_t const other = group[pair->second];
        std::replace(group.begin(), group.end(), other, joined);
        std::vector<std::size_t> gaps;
        std::vector<std::vector<Window>> together;
        for (std::size_t gap = 0; gap < group.size(); ++gap)
            if (group[gap] == joined) {
                gaps.push_back(gap);
                together.push_back(choices[gap]);
            }
        auto const windows = searched(together);
        if (windows.empty()) return {};
        for (std::size_t i = 0; i < gaps.size(); ++i) chosen[gaps[i]] = windows[i];
    }
    return chosen;
}

} // namespace levers
