// Terms of two neighbours, worked by hand with figures of their own.

#include "core/arrange/candidates.h"
#include "core/arrange/neighbours.h"
#include "core/arrange/terms.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace arrange;

namespace {

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}};
std::vector<music::Rational> const minims{{0}, {1, 2}};
std::vector<music::Rational> const atOnce{{0}, {0}, {0}};

struct Pair {
    scenes::Example const& x;
    View before;
    View after;
    Neighbours n;

    explicit Pair(scenes::Example const& example)
        : x(example), before(x.view(0)), after(x.view(1))
    {
        auto const positions = x.positions();
        n = neighboursOf(x.scene(), positions[0], before, positions[1], after);
    }
    Laid first(std::vector<int> const& degrees, char const* root,
               std::vector<music::Rational> const& at = crotchets) const
    {
        return scenes::laid(before, degrees, x.string(root), at);
    }
    Laid second(std::vector<int> const& degrees, char const* root,
                std::vector<music::Rational> const& at = crotchets) const
    {
        return scenes::laid(after, degrees, x.string(root), at);
    }
    Points linking(Laid const& a, Laid const& b) const
    {
        return link(n, ringingAfter(n, a), a, b);
    }
};

std::vector<Seam> seamsOf(scenes::Example const& x)
{
    auto const positions = x.positions();
    std::vector<Seam> seams;
    for (PositionIndex i = 0; i + 1 < positions.size(); ++i) {
        View const before = x.view(i);
        View const after = x.view(i + 1);
        seams.push_back(
            neighboursOf(x.scene(), positions[i], before, positions[i + 1], after).seam);
    }
    return seams;
}

} // namespace

TEST_CASE("Strings in common link two shapes", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.link = {40, 15, 100, 0.6};
    Pair const pair(x);
    Laid const g = pair.first({1, 5, 8}, "G2");                 // G2 D3 G3
    CHECK(pair.linking(g, pair.second({1, 5, 8}, "D2")) == 15); // D3
    CHECK(pair.linking(g, pair.second({1, 5, 8}, "A2")) == 40); // none
    CHECK(pair.linking(g, pair.second({1, 5, 8}, "G2")) == 0);  // all, and faint by then
    CHECK(pair.linking(g, resting(pair.after)) == 0);
}

TEST_CASE("A shared string plucked anew while it is loud is choked", "[terms]")
{
    // By hand: D3 is plucked a quaver, 0.3 s, before the next bar, which begins with it.
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.link = {40, 15, 100, 0.5};
    Pair const pair(x);
    Laid const late = pair.first({1, 5}, "G2", {{0}, {7, 8}});
    double const ring = pair.before.ringSeconds[x.string("D3")];
    double const loud = std::pow(10.0, -3 * 0.3 / ring);
    REQUIRE(loud > 0.5);
    CHECK(pair.linking(late, pair.second({1}, "D3", {{0}})) ==
          std::lround(15 + 100 * (loud - 0.5) / 0.5));
}

TEST_CASE("The thumb's line stays within a third, and the last note leads by step", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.thumbLine = {2, 10, 20, 40};
    Pair const pair(x);
    Laid const g = pair.first({1, 5, 8}, "G2"); // ends on G3
    auto const to = [&](std::vector<int> const& degrees, char const* root) {
        return thumbLine(pair.n, g, pair.second(degrees, root));
    };
    CHECK(to({1, 5, 8}, "A2") == 0);       // A3, a step above
    CHECK(to({1, 5, 8}, "G2") == 20);      // G3 again
    CHECK(to({1, 5, 8}, "D2") == 10 + 40); // three strings down, no step
    CHECK(to({1, 5, 8}, "D3") == 20);      // D4, four strings up; A3 is a step from G3
    // A block has no last note that leads.
    Laid const block = pair.first({1, 5, 8}, "G2", atOnce);
    CHECK(thumbLine(pair.n, block, pair.second({1, 5, 8}, "G2")) == 0);
}

TEST_CASE("1-5-8-7 leads by step where 1-5-8 repeats its last string", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [C] z:1 |");
    x.weights.taste.thumbLine = {7, 10, 20, 40};
    Pair const pair(x);
    Laid const plain = pair.first({1, 5, 8}, "G2");
    Laid const leaning = pair.first({1, 5, 8, 7}, "G2", {{0}, {1, 4}, {1, 2}, {3, 4}});
    Laid const c = pair.second({1, 5, 8}, "C3"); // C3 G3 C4
    CHECK(thumbLine(pair.n, leaning, c) == 0);   // F sharp 3 beside G3
    CHECK(thumbLine(pair.n, plain, c) == 20);
}

TEST_CASE("A seventh falls by a string, or hangs", "[terms]")
{
    // Usual voice leading: the seventh of G7 goes down to the third of C.
    auto x = scenes::example("[G7] z:1 | [C] z:1 |", "C");
    x.weights.taste.thumbLine = {20, 0, 0, 0, 350};
    Pair const pair(x);
    Laid const seventh = pair.first({1, 5, 7}, "G2");                   // ends on F3
    CHECK(thumbLine(pair.n, seventh, pair.second({1, 3, 5}, "C3")) == 0); // has E3
    CHECK(thumbLine(pair.n, seventh, pair.second({1, 5, 8}, "C3")) == 350);
    Laid const onward = pair.first({1, 5, 7, 6}, "G2", {{0}, {1, 4}, {1, 2}, {3, 4}});
    CHECK(thumbLine(pair.n, onward, pair.second({1, 5, 8}, "C3")) == 0);
}

TEST_CASE("A seventh stays where the next chord owns it, and one that leads is liked", "[terms]")
{
    // F sharp over G is the third of D; over C it hangs unless its lower neighbour follows.
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.thumbLine = {20, 0, 0, 0, 350, -100, 0};
    Pair const pair(x);
    Laid const seventh = pair.first({1, 5, 7}, "G2");
    CHECK(thumbLine(pair.n, seventh, pair.second({1, 5, 10}, "D2")) == -100); // F sharp 3
    CHECK(thumbLine(pair.n, seventh, pair.second({1, 5, 8}, "D2")) == 350);
    CHECK(thumbLine(pair.n, seventh, pair.second({1, 2, 3}, "D3")) == -100); // E3
}

TEST_CASE("A ninth on top moves on by a string, or hangs", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [C] z:1 |");
    x.weights.taste.thumbLine = {20, 0, 0, 0, 0, 0, 60};
    Pair const pair(x);
    Laid const ninth = pair.first({1, 5, 9}, "G2");                      // ends on A3
    CHECK(thumbLine(pair.n, ninth, pair.second({1, 5, 8}, "C3")) == 0);  // has G3
    CHECK(thumbLine(pair.n, ninth, pair.second({1, 5, 8}, "C2")) == 60); // ends on C3
}

TEST_CASE("A chord on its fifth is come to and left by step or not at all", "[terms]")
{
    // Usual voice leading of a second inversion; how dear, own taste.
    auto x = scenes::example("[D] z:1 | [G] z:1 |");
    x.weights.taste.bassLine = {{0, 0, 0, 0, 0, 0, 0, 0, 0}, 0, 250};
    Pair const pair(x);
    Laid const d = pair.first({1, 5, 8}, "D3");
    CHECK(bassLine(pair.n, d, pair.second({5, 8, 10}, "G2")) == 0);   // D3 stays
    CHECK(bassLine(pair.n, d, pair.second({5, 8, 10}, "G3")) == 250); // D4
    CHECK(bassLine(pair.n, d, pair.second({1, 5, 8}, "G2")) == 0);
}

TEST_CASE("Both halves of a bar keep one figure", "[terms]")
{
    auto x = scenes::example("[G] z:1/2 [D] z:1/2 | [G] z:1 |");
    x.weights.taste.variety = {};
    x.weights.taste.variety.inBar = 60;
    x.weights.taste.variety.change.fill(1);
    Pair const pair(x);
    REQUIRE(pair.n.sameBar);
    std::vector<music::Rational> const even{{0}, {1, 4}};
    Laid const first = pair.first({1, 5}, "G2", even);
    CHECK(variety(pair.n, first, pair.second({1, 5}, "D2", even)) == 0);
    CHECK(variety(pair.n, first, pair.second({1, 8}, "D2", even)) == 60);
}

TEST_CASE("Basses of chords a step apart do not leap a seventh", "[terms]")
{
    auto x = scenes::example("[C] z:1 | [Bm] z:1 |", "G");
    x.weights.taste.bassLine = {{1, 2, 3, 4, 5, 6, 7, 8, 9}, 300};
    Pair const pair(x);
    Laid const c = pair.first({1, 5, 8}, "C3");
    CHECK(bassLine(pair.n, c, pair.second({1, 5, 8}, "B2")) == 2);
    CHECK(bassLine(pair.n, c, pair.second({1, 5, 8}, "B3")) == 307);
}

TEST_CASE("The bass goes by step or fifth rather than by leaps", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.bassLine = {{1, 2, 3, 4, 5, 6, 7, 8, 9}};
    Pair const pair(x);
    Laid const g = pair.first({1, 5, 8}, "G2");
    auto const to = [&](char const* root) {
        return bassLine(pair.n, g, pair.second({1, 5, 8}, root));
    };
    CHECK(to("G2") == 1);
    CHECK(to("A2") == 2);
    CHECK(to("D2") == 4);
    CHECK(to("D3") == 5);
    CHECK(to("G3") == 8);
    CHECK(to("D4") == 9);
    CHECK(bassLine(pair.n, g, resting(pair.after)) == 0);
}

TEST_CASE("Bars go in pairs, pairs in phrases of four bars, counted from the part", "[terms]")
{
    using enum Seam;
    auto const plain = scenes::example("[G] z:1 | [D] z:1 | [G] z:1 | [D] z:1 | [G] z:1 |");
    CHECK(seamsOf(plain) == std::vector<Seam>{InPair, Pairs, InPair, Phrases});
    auto const halves = scenes::example("[G] z:1/2 [D] z:1/2 | [G] z:1 | [D] z:1 |");
    CHECK(seamsOf(halves) == std::vector<Seam>{InPair, InPair, Pairs});
    auto const repeated = scenes::example("[G] z:1 :| [D] z:1 | [G] z:1 |");
    CHECK(seamsOf(repeated) == std::vector<Seam>{Parts, InPair});
}

TEST_CASE("A figure is kept, varied at its end or changed, by the seam", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.variety = {{1000, 1000, 1000, 1000, 1000},
                               {1, 2, 3, 4},
                               {},
                               {10, 20, 30, 40},
                               {100, 200, 300, 400},
                               {5000, 6000, 7000, 8000},
                               {9, 8, 7, 6}};
    x.weights.taste.variety.change.fill(1);
    x.weights.taste.variety.renewal.fill(1);
    Pair pair(x);
    std::vector<music::Rational> const four{{0}, {1, 4}, {1, 2}, {3, 4}};
    Laid const g = pair.first({1, 5, 8}, "G2");
    Laid const same = pair.second({1, 5, 8}, "D2");
    Laid const leaning = pair.second({1, 5, 8, 7}, "D2", four);
    Laid const other = pair.second({1, 8, 5}, "D2");
    Laid const slower = pair.second({1, 5}, "D2", minims);
    pair.n.seam = Seam::InPair;
    CHECK(variety(pair.n, g, same) == 1);
    CHECK(variety(pair.n, g, leaning) == 10);
    CHECK(variety(pair.n, g, other) == 100);
    CHECK(variety(pair.n, g, slower) == 5100);
    CHECK(variety(pair.n, g, resting(pair.after)) == 9);
    pair.n.seam = Seam::Phrases;
    CHECK(variety(pair.n, g, same) == 3);
    CHECK(variety(pair.n, g, leaning) == 30);
    pair.n.sameChord = true;
    CHECK(variety(pair.n, g, pair.second({1, 5, 8}, "G2")) == 1003);
    // A figure kept inside a phrase costs on another chord too, where the level asks for
    // change.
    x.weights.taste.variety.keepsInside.fill(7);
    Pair kept(x);
    kept.n.seam = Seam::Pairs;
    CHECK(variety(kept.n, kept.first({1, 5, 8}, "G2"), kept.second({1, 5, 8}, "D2")) == 2 + 7);
    kept.n.seam = Seam::Phrases;
    CHECK(variety(kept.n, kept.first({1, 5, 8}, "G2"), kept.second({1, 5, 8}, "D2")) == 3);
}

TEST_CASE("A beginner is not asked for change, and pays more for it", "[terms]")
{
    auto x = scenes::example("[G] z:1 | [D] z:1 |");
    x.weights.taste.variety = {{}, {1, 2, 3, 4}, {}, {}, {100, 200, 300, 400}};
    x.weights.taste.variety.change = {2.5, 0, 1, 0, 0};
    x.weights.taste.variety.renewal = {0, 0, 1, 0, 0};
    auto const told = [&](int level, std::vector<int> const& second) {
        x.level.number = level;
        Pair const pair(x);
        return variety(pair.n, pair.first({1, 5, 8}, "G2"), pair.second(second, "D2"));
    };
    CHECK(told(3, {1, 5, 8}) == 1);
    CHECK(told(1, {1, 5, 8}) == 0);
    CHECK(told(3, {1, 8, 5}) == 100);
    CHECK(told(1, {1, 8, 5}) == 250);
}

TEST_CASE("A third on the last light beat leads the bass up to the chord a fourth higher", "[terms]")
{
    // By hand: G2 D3 B2, then C3: B2 is a step below it. Over D3 it hangs, as a seventh would.
    auto x = scenes::example("[G] z:1 | [C] z:1 | [G] z:1 | [D] z:1 |");
    x.weights.taste.thumbLine = {20, 0, 0, 0, 350, -60, 0};
    x.weights.taste.bassLine = {{0, -40, 15, 10, 12, 40, 160, 60, 200}, 0, 0};
    auto const positions = x.positions();
    auto const bass = [&](PositionIndex at, std::vector<int> const& degrees,
                          std::vector<music::Rational> const& onsets, char const* next) {
        View const before = x.view(at);
        View const after = x.view(at + 1);
        Neighbours const n =
            neighboursOf(x.scene(), positions[at], before, positions[at + 1], after);
        return bassLine(n, scenes::laid(before, degrees, x.string("G2"), onsets),
                        scenes::laid(after, {1, 5, 8}, x.string(next), crotchets));
    };
    std::vector<music::Rational> const light{{0}, {1, 2}, {3, 4}};
    CHECK(bass(0, {1, 5, 8}, light, "C3") == 10); // a fourth up, from G2
    CHECK(bass(0, {1, 5, 3}, light, "C3") == -40); // inside a pair of bars it is a step, no more
    CHECK(bass(0, {1, 5, 3}, crotchets, "C3") == -40 + 350); // the half bar is no place for it
    CHECK(bass(2, {1, 5, 3}, light, "D3") == 15 + 350);
    // From one pair of bars to the next it is liked.
    auto y = scenes::example("[D] z:1 | [G] z:1 | [C] z:1 | [D] z:1 |");
    y.weights.taste = x.weights.taste;
    auto const of = y.positions();
    View const before = y.view(1);
    View const after = y.view(2);
    Neighbours const n = neighboursOf(y.scene(), of[1], before, of[2], after);
    REQUIRE(n.seam == Seam::Pairs);
    CHECK(bassLine(n, scenes::laid(before, {1, 5, 3}, y.string("G2"), light),
                   scenes::laid(after, {1, 5, 8}, y.string("C3"), crotchets)) == -40 - 60);
}
