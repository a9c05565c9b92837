#include "core/hands/fingerpath.h"

#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

#include <rapidcheck.h>

#include <algorithm>

using hands::HandShape;
using hands::Pause;
using hands::Stroke;

namespace {

// Whether any chain of moves costs less than so much: every chain is followed until it does
// not.
bool isUndercut(HandShape const& from, std::vector<Stroke> const& plucks, std::size_t at,
                int cost, hands::Player const& player)
{
    if (cost <= 0) return false;
    if (at == plucks.size()) return true;
    auto const moves = movesTo(from, plucks[at], player);
    return std::any_of(moves.begin(), moves.end(), [&](hands::HandMove const& move) {
        return isUndercut(move.to, plucks, at + 1, cost - move.cost, player);
    });
}

// Whether these fingers can be played for exactly so much, by following every chain of moves
// that uses them.
bool isPlayedFor(HandShape const& from, std::vector<Stroke> const& plucks, std::size_t at,
                 hands::FingerPath const& path, int cost, hands::Player const& player)
{
    if (cost < 0) return false;
    if (at == plucks.size()) return cost == 0;
    auto const moves = movesTo(from, plucks[at], player);
    return std::any_of(moves.begin(), moves.end(), [&](hands::HandMove const& move) {
        return move.fingers == path.fingers[at] && move.join == path.joins[at] &&
               isPlayedFor(move.to, plucks, at + 1, path, cost - move.cost, player);
    });
}

Stroke arbitraryPluck(harp::StringIndex& string)
{
    constexpr harp::StringIndex lowest = 8, highest = 26;
    string = std::clamp(string + *rc::gen::inRange(-5, 6), lowest, highest);
    Stroke pluck{{string},
                 *rc::gen::element(Pause::Hurried, Pause::None, Pause::None, Pause::Beat,
                                   Pause::Rested)};
    int const kind = *rc::gen::inRange(0, 12);
    if (kind == 0) pluck.strings.push_back(string + *rc::gen::inRange(1, 8));
    if (kind == 1) pluck.usual = {*rc::gen::inRange(1, 5)};
    if (kind == 2) pluck.set = {*rc::gen::inRange(1, 5)};
    return pluck;
}

} // namespace

TEST_CASE("On phrases of up to ten notes no chain of moves costs less than the fingers found",
          "[hands]")
{
    auto const harp = example::floor34();
    auto const hand = example::mediumHand();
    CHECK(rc::check("fingers by dynamic programming equal those by trying all", [&] {
        hands::Player const player{harp, hand, *rc::gen::arbitrary<bool>(),
                                   *rc::gen::arbitrary<bool>(), *rc::gen::inRange(3, 5)};
        harp::StringIndex string = 17;
        std::vector<Stroke> plucks;
        int const notes = *rc::gen::inRange(1, 11);
        for (int i = 0; i < notes; ++i) plucks.push_back(arbitraryPluck(string));
        auto const path = cheapestFingers(plucks, player);
        RC_ASSERT(path.fingers.size() == plucks.size());
        RC_ASSERT(isPlayedFor({}, plucks, 0, path, path.cost, player));
        RC_ASSERT(!isUndercut({}, plucks, 0, path.cost, player));
    }));
}

TEST_CASE("Nothing to play needs no finger", "[hands]")
{
    auto const path = hands::cheapestFingers({}, {example::floor34(), example::mediumHand()});
    CHECK(path.fingers.empty());
    CHECK(path.cost == 0);
}
