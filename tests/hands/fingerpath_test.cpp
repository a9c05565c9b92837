#include "core/hands/fingerpath.h"

#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

#include <limits>
#include <random>

using hands::HandShape;
using hands::Pause;
using hands::Pluck;

namespace {

// The least cost over every chain of moves, by following each of them.
int leastCost(HandShape const& from, std::vector<Pluck> const& plucks, std::size_t at,
              harp::Harp const& harp, harp::HandModel const& hand)
{
    if (at == plucks.size()) return 0;
    int best = std::numeric_limits<int>::max();
    for (auto const& move : movesTo(from, plucks[at], harp, hand)) {
        if (move.cost >= best) continue;
        best = std::min(best, move.cost + leastCost(move.to, plucks, at + 1, harp, hand));
    }
    return best;
}

Pluck randomPluck(std::mt19937& random, int& string)
{
    std::uniform_int_distribution<int> step(-4, 4);
    std::uniform_int_distribution<int> kind(0, 9);
    string = std::clamp(string + step(random), 10, 25);
    Pluck pluck{{string}, static_cast<Pause>(kind(random) % 3)};
    if (kind(random) == 0) pluck.strings.push_back(string + 2);
    return pluck;
}

} // namespace

TEST_CASE("The cheapest fingers cost least of all, by trying all", "[hands]")
{
    auto const harp = example::floor34();
    auto const hand = example::mediumHand();
    std::mt19937 random(77); // fixed, so that a failure can be seen again
    for (int round = 0; round < 60; ++round) {
        CAPTURE(round);
        int string = 17;
        std::vector<Pluck> plucks;
        for (int i = 0; i < 3 + round % 5; ++i) plucks.push_back(randomPluck(random, string));
        auto const path = cheapestFingers(plucks, harp, hand);
        CHECK(path.cost == leastCost({}, plucks, 0, harp, hand));
        REQUIRE(path.fingers.size() == plucks.size());
        for (std::size_t i = 0; i < plucks.size(); ++i)
            CHECK(path.fingers[i].size() == plucks[i].strings.size());
    }
}

TEST_CASE("Nothing to play needs no finger", "[hands]")
{
    auto const path = hands::cheapestFingers({}, example::floor34(), example::mediumHand());
    CHECK(path.fingers.empty());
    CHECK(path.cost == 0);
}
