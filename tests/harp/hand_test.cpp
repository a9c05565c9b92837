#include "core/harp/hand.h"
#include "tests/harp/harps.h"

#include <catch2/catch.hpp>

#include <vector>

using namespace harp;

namespace {

// The shape of these degrees with these fingers on a root string of the example harp.
Ease ease(std::vector<PlacedFinger> const& placed)
{
    return easeOf(example::floor34(), example::mediumHand(), placed);
}

constexpr harp::StringIndex root = 7; // C3

} // namespace

TEST_CASE("A tenth from finger 4 to the thumb is easy for a medium hand at 15 mm", "[hand]")
{
    // Trade section 3.2; check 51: a woman of median span holds 10 strings at 15.0 mm.
    CHECK(ease({{root, 4}, {root + 9, 1}}) == Ease::Easy);
    CHECK(ease({{root, 4}, {root + 10, 1}}) == Ease::Stretched);
    CHECK(ease({{root, 4}, {root + 11, 1}}) == Ease::Stretched); // the twelfth, rolled
    CHECK(ease({{root, 4}, {root + 12, 1}}) == Ease::Beyond);
    CHECK(stringsWithin(example::floor34(), 148, root) == 10);
}

TEST_CASE("Every pair of fingers keeps to its own reach", "[hand]")
{
    // Gaps easy and at most, trade section 3.2 (common practice).
    struct Row {
        int low, high, easy, most;
    };
    Row const row = GENERATE(Row{2, 1, 4, 7}, Row{3, 1, 6, 9}, Row{4, 1, 9, 11},
                             Row{3, 2, 2, 4}, Row{4, 2, 4, 6}, Row{4, 3, 2, 4});
    CAPTURE(row.low, row.high);
    for (int gap = 1; gap <= 14; ++gap) {
        Ease const expected = gap <= row.easy   ? Ease::Easy
                              : gap <= row.most ? Ease::Stretched
                                                : Ease::Beyond;
        CHECK(ease({{root, row.low}, {root + gap, row.high}}) == expected);
        CHECK(withinReach(example::floor34(), example::mediumHand(), root, row.low, root + gap,
                          row.high) == (expected != Ease::Beyond));
    }
}

TEST_CASE("The usual fingers of 1-5-8 lie at ease", "[hand]")
{
    // Trade section 4 (common practice): 4-2-1.
    CHECK(ease({{root, 4}, {root + 4, 2}, {root + 7, 1}}) == Ease::Easy);
}

TEST_CASE("Open chords of a tenth and a twelfth are rolled, not held", "[hand]")
{
    // Trade section 4 (common practice): 1-5-8-10 and 1-5-10-12 with 4-3-2-1, rolled.
    Harp const h = example::floor34();
    HandModel const hand = example::mediumHand();
    std::vector<PlacedFinger> const tenth{
        {root, 4}, {root + 4, 3}, {root + 7, 2}, {root + 9, 1}};
    std::vector<PlacedFinger> const twelfth{
        {root, 4}, {root + 4, 3}, {root + 9, 2}, {root + 11, 1}};
    CHECK(easeOf(h, hand, tenth) == Ease::Beyond);
    CHECK(rollable(h, hand, tenth));
    CHECK(rollable(h, hand, twelfth));
    CHECK(!rollable(h, hand, std::vector<PlacedFinger>{{root, 4}, {root + 12, 1}}));
}

TEST_CASE("A shape is as hard as its hardest pair, in whatever order it is given", "[hand]")
{
    CHECK(ease({{root + 7, 1}, {root, 4}, {root + 5, 3}}) == Ease::Beyond); // 4 and 3: a sixth
    CHECK(ease({}) == Ease::Easy);
    CHECK(ease({{root, 2}}) == Ease::Easy);
}

TEST_CASE("No finger holds two strings and no string two fingers", "[hand]")
{
    CHECK(ease({{root, 2}, {root + 1, 2}}) == Ease::Beyond);
    CHECK(ease({{root, 2}, {root, 1}}) == Ease::Beyond);
}

TEST_CASE("A finger crossed under the thumb reaches neighbouring strings only", "[hand]")
{
    // Trade section 3.3: the finger is put under on the next string.
    CHECK(ease({{root, 1}, {root + 1, 2}}) == Ease::Easy);
    CHECK(ease({{root, 1}, {root + 2, 2}}) == Ease::Stretched);
    CHECK(ease({{root, 1}, {root + 3, 2}}) == Ease::Beyond);
}

TEST_CASE("Stretch is what lies beyond the easy reach of the hardest pair", "[hand]")
{
    Harp const h = example::floor34();
    HandModel const hand = example::mediumHand();
    CHECK(stretchMm(h, hand, std::vector<PlacedFinger>{{root, 4}, {root + 7, 1}}) == 0);
    // 10 gaps of 15 mm against 9 and a half.
    CHECK(stretchMm(h, hand, std::vector<PlacedFinger>{{root, 4}, {root + 10, 1}}) ==
          Approx(7.5));
    CHECK(spanMm(h, std::vector<PlacedFinger>{{root + 10, 1}, {root, 4}, {root + 3, 2}}) ==
          Approx(150));
}

TEST_CASE("Strings within a span stop at the top of the harp", "[hand]")
{
    CHECK(stringsWithin(example::floor34(), 135, 0) == 10);
    CHECK(stringsWithin(example::floor34(), 134, 0) == 9);
    CHECK(stringsWithin(example::floor34(), 135, 31) == 3);
}
