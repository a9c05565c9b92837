#include "core/levers/moments.h"

#include <catch2/catch.hpp>

#include <functional>
#include <random>

using levers::Window;

namespace {

Window window(int from, int length, harp::Side hand, harp::StringIndex string, int cost)
{
    music::Rational const start(from);
    return {{start}, {start + music::Rational(length)}, {start}, hand, string, cost};
}

bool clear(std::vector<Window> const& windows)
{
    for (std::size_t a = 0; a < windows.size(); ++a)
        for (std::size_t b = a + 1; b < windows.size(); ++b)
            if (levers::overlap(windows[a], windows[b])) return false;
    return true;
}

int costOf(std::vector<Window> const& windows)
{
    int cost = 0;
    for (Window const& w : windows) cost += w.cost;
    return cost;
}

std::optional<int> leastCost(std::vector<std::vector<Window>> const& choices)
{
    std::optional<int> best;
    std::vector<Window> taken;
    std::function<void()> const tryAll = [&] {
        if (!clear(taken)) return;
        if (taken.size() == choices.size()) {
            if (!best || costOf(taken) < *best) best = costOf(taken);
            return;
        }
        for (Window const& w : choices[taken.size()]) {
            taken.push_back(w);
            tryAll();
            taken.pop_back();
        }
    };
    tryAll();
    return best;
}

} // namespace

TEST_CASE("A hand is wanted at one lever at a time", "[levers]")
{
    Window const first = window(0, 2, harp::Side::Left, 20, 0);
    CHECK(levers::overlap(first, window(1, 2, harp::Side::Left, 21, 0)));
    CHECK_FALSE(levers::overlap(first, window(2, 2, harp::Side::Left, 21, 0)));
    CHECK_FALSE(levers::overlap(first, window(1, 2, harp::Side::Right, 21, 0)));
    // To and fro at one lever, the hand stays.
    CHECK_FALSE(levers::overlap(first, window(1, 2, harp::Side::Left, 20, 0)));
}

TEST_CASE("Chosen windows cost least of all that go together, by trying all", "[levers]")
{
    std::mt19937 random(414243); // fixed, so that a failure can be seen again
    std::uniform_int_distribution<int> gaps(1, 5);
    std::uniform_int_distribution<int> count(1, 5);
    std::uniform_int_distribution<int> from(0, 9);
    std::uniform_int_distribution<int> length(1, 3);
    std::uniform_int_distribution<int> cost(0, 6);
    int impossible = 0;
    for (int round = 0; round < 2000; ++round) {
        CAPTURE(round);
        std::vector<std::vector<Window>> choices(static_cast<std::size_t>(gaps(random)));
        for (auto& windows : choices) {
            harp::StringIndex const string(from(random) % 3);
            for (int i = count(random); i > 0; --i)
                windows.push_back(
                    window(from(random), length(random),
                           cost(random) < 5 ? harp::Side::Left : harp::Side::Right, string,
                           cost(random)));
        }
        auto const best = leastCost(choices);
        std::vector<levers::Gap> named(choices.size());
        for (std::size_t i = 0; i < named.size(); ++i)
            named[i].playedBar = tune::PlayedBarIndex(static_cast<int>(i));
        auto const chosen = levers::Moments().chosen(named, choices);
        if (!best) {
            ++impossible;
            CHECK(chosen.empty());
            continue;
        }
        REQUIRE(chosen.size() == choices.size());
        CHECK(clear(chosen));
        CHECK(costOf(chosen) == *best);
        for (std::size_t i = 0; i < chosen.size(); ++i)
            CHECK(std::find(choices[i].begin(), choices[i].end(), chosen[i]) !=
                  choices[i].end());
    }
    CHECK(impossible > 0);
    CHECK(impossible < 1500);
}

// A tune with an accidental at nearly every note has such gaps; an exact search over them never
// came to an end.
TEST_CASE("Very many gaps in each other's way are decided all the same", "[levers]")
{
    std::mt19937 random(7); // fixed, so that a failure can be seen again
    std::uniform_int_distribution<int> from(0, 40);
    std::uniform_int_distribution<int> cost(0, 40);
    std::vector<std::vector<Window>> choices(26);
    for (std::size_t gap = 0; gap < choices.size(); ++gap)
        for (int i = 0; i < 24; ++i)
            choices[gap].push_back(
                window(from(random), 2, i % 2 == 0 ? harp::Side::Left : harp::Side::Right,
                       harp::StringIndex(static_cast<int>(gap)), cost(random)));
    std::vector<levers::Gap> named(choices.size());
    for (std::size_t i = 0; i < named.size(); ++i)
        named[i].playedBar = tune::PlayedBarIndex(static_cast<int>(i));
    auto const chosen = levers::Moments().chosen(named, choices);
    REQUIRE(chosen.size() == choices.size());
    CHECK(clear(chosen));
}
