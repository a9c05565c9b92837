#include "core/levers/tuneset.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"

#include <catch2/catch.hpp>

#include <random>

using levers::SetOrder;
using levers::SetTune;

namespace {

tune::Tune inKey(char const* text, music::Key key) { return lines::tune(text, key); }

SetTune of(tune::Tune const& tune, std::size_t keys = 1)
{
    return levers::setTune(example::floor34(), tune, {{music::Rational(1, 4)}, 90},
                           lines::level(2), keys);
}

SetTune inG() { return of(inKey("G4:1/4 B4:1/4 D5:1/4 A6:1/4 |", lines::major("G"))); }
SetTune inD() { return of(inKey("D5:1/4 F#5:1/4 A5:1/4 A6:1/4 |", lines::major("D"))); }

} // namespace

TEST_CASE("From G to D all C levers are turned: five on 34 strings", "[levers]")
{
    // Derived [trade-7]: a change of key inside a set is mostly one letter.
    auto const plan = levers::setPlan(example::floor34(), {inG(), inD()}, SetOrder::AsGiven);
    REQUIRE(plan.size() == 2);
    CHECK(plan[0].changes.empty());
    REQUIRE(plan[1].changes.size() == 5);
    for (auto const& change : plan[1].changes) {
        CHECK(example::floor34().string(change.string).open.letter == music::Letter::C);
        CHECK(change.to == harp::Lever::Up);
    }
    CHECK(plan[1].seconds == Approx(3.75));
    CHECK(changesInWords(example::floor34(), plan[1]) ==
          "Flip 5 levers, about 4 s: C♯ (lever up) on 6C 5C 4C 3C 2C");
}

TEST_CASE("D major, E dorian and A mixolydian follow each other without a lever", "[levers]")
{
    // Row 73 of the trade's check values: they share two sharps.
    auto const mode = [](char const* key) {
        return of(inKey("D5:1/4 E5:1/4 A5:1/4 A6:1/4 |", *music::keyFrom(key)));
    };
    auto const plan = levers::setPlan(example::floor34(), {mode("D"), mode("Edor"), mode("Amix")},
                                      SetOrder::AsGiven);
    REQUIRE(plan.size() == 3);
    for (auto const& step : plan) CHECK(step.changes.empty());
    CHECK(changesInWords(example::floor34(), plan[1]) == "Leave the levers as they are");
}

TEST_CASE("Only strings up to the tune's highest note are turned", "[levers]")
{
    auto const low = of(inKey("D4:1/4 F#4:1/4 A4:1/2 |", lines::major("D")));
    auto const plan = levers::setPlan(example::floor34(), {inG(), low}, SetOrder::AsGiven);
    REQUIRE(plan.size() == 2);
    CHECK(plan[1].changes.size() == 3); // C2, C3, C4; not C5 and C6
}

TEST_CASE("A free order puts the keys next to each other that share most levers", "[levers]")
{
    auto const inA = of(inKey("A4:1/4 C#5:1/4 E5:1/4 A6:1/4 |", lines::major("A")));
    std::vector<SetTune> const tunes{inG(), inA, inD()};
    auto const turned = [&](SetOrder order) {
        std::size_t count = 0;
        for (auto const& step : levers::setPlan(example::floor34(), tunes, order))
            count += step.changes.size();
        return count;
    };
    CHECK(turned(SetOrder::AsGiven) == 15); // G to A: C and G, A to D: G back
    CHECK(turned(SetOrder::Free) == 10);    // G, D, A or back: C, then G
}

TEST_CASE("A set costs least of all orders and keys, by trying all", "[levers]")
{
    auto const harp = example::floor34();
    std::vector<SetTune> const tunes{
        of(inKey("G4:1/4 B4:1/4 D5:1/4 C5:1/4 |", lines::major("G")), 3),
        of(inKey("F4:1/4 A4:1/4 C5:1/4 Bb4:1/4 |", lines::major("F")), 3),
        of(inKey("D4:1/4 F#4:1/4 A4:1/4 C#5:1/4 |", lines::major("D")), 3)};
    auto const cost = [&](std::vector<int> const& order, std::vector<std::size_t> const& keys) {
        harp::LeverSetting now;
        int sum = 0;
        for (int tune : order) {
            auto const& fit =
                tunes[static_cast<std::size_t>(tune)].keys[keys[static_cast<std::size_t>(tune)]];
            if (now.empty()) now = fit.setup;
            harp::StringIndex const top =
                std::min(harp.highest(),
                         tunes[static_cast<std::size_t>(tune)].highestString + fit.moved.steps);
            for (harp::StringIndex s = 0; s <= top; ++s) {
                if (now[s] != fit.setup[s]) sum += 10;
                now[s] = fit.atEnd[s];
            }
            sum += fit.rank - tunes[static_cast<std::size_t>(tune)].keys.front().rank;
        }
        return sum;
    };
    int least = 1'000'000;
    std::vector<int> order{0, 1, 2};
    do
        for (std::size_t k = 0; k < 27; ++k)
            least = std::min(least, cost(order, {k % 3, k / 3 % 3, k / 9}));
    while (std::next_permutation(order.begin(), order.end()));

    auto const plan = levers::setPlan(harp, tunes, SetOrder::Free);
    int found = 0;
    for (auto const& step : plan) {
        auto const& keys = tunes[static_cast<std::size_t>(step.tune)].keys;
        found += 10 * static_cast<int>(step.changes.size()) + step.fit.rank - keys.front().rank;
    }
    CHECK(found == least);
}

TEST_CASE("A set with a tune that has no key is none", "[levers]")
{
    CHECK(levers::setPlan(example::floor34(), {inG(), SetTune{}}, SetOrder::AsGiven).empty());
}
