// Terms on the chord's tones and the levers that give them. Each case is worked by hand with
// figures of its own, so that the shipped taste can change.

#include "core/arrange/candidates.h"
#include "core/arrange/terms.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;

namespace {

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}};
std::vector<music::Rational> const minims{{0}, {1, 2}};

// Levers set for G: F sharp, all else natural.
scenes::Example inG(std::string_view text)
{
    auto x = scenes::example(text);
    x.weights.taste.quality = {100, 0, 0, 0, 1000, 800, 500, 400, {1, 1, 1, 1}};
    x.weights.taste.levers = {150, 250, 300, 0.6};
    return x;
}

Laid laidOn(View const& view, scenes::Example const& x, std::vector<int> const& degrees,
            char const* root)
{
    return scenes::laid(view, degrees, x.string(root),
                        degrees.size() == 2 ? minims : crotchets);
}

Points qualityOf(char const* chord, std::vector<int> const& degrees, char const* root)
{
    auto const x = inG(std::string("[") + chord + "] z:1 |");
    View const view = x.view(0);
    return quality(view, laidOn(view, x, degrees, root));
}

Points leversOf(char const* chord, std::vector<int> const& degrees, char const* root)
{
    auto const x = inG(std::string("[") + chord + "] z:1 |");
    View const view = x.view(0);
    return levers(view, laidOn(view, x, degrees, root));
}

} // namespace

TEST_CASE("A wrong third, a diminished fifth and a wrong seventh are told apart", "[terms]")
{
    // By hand; the tune rests, so that a third is missed (100) wherever none is stated.
    CHECK(qualityOf("Cm", {1, 5, 10}, "C2") == 1100); // E natural for E flat
    CHECK(qualityOf("F#m", {1, 5, 8}, "F2") == 900);  // C natural: a diminished fifth
    CHECK(qualityOf("G7", {1, 5, 7}, "G2") == 600);   // F sharp for F
    CHECK(qualityOf("Em", {1, 5, 7}, "E2") ==
          100); // its own seventh, D: only the third is missed
    CHECK(qualityOf("Cm", {1, 5, 7}, "C2") ==
          600); // B natural, a major seventh over a minor chord
    CHECK(qualityOf("Em", {1, 5, 8}, "E2") == 100);   // open: only the third is missed
    CHECK(qualityOf("Em", {1, 5, 10}, "E2") == 0);
    CHECK(qualityOf("E5", {1, 5, 8}, "E2") == 0); // a chord without a third is open on purpose
}

TEST_CASE("A diminished chord has its diminished fifth by right", "[terms]")
{
    CHECK(qualityOf("F#dim", {1, 5, 10}, "F2") == 0);
    CHECK(qualityOf("F#dim", {1, 5, 8}, "F2") == 100);
}

TEST_CASE("A seventh of the key is colour, one outside it is a fault", "[terms]")
{
    auto x = inG("[D] F#5:1 |"); // the tune states the third
    View const inScale = x.view(0);
    Laid const shape = scenes::laid(inScale, {1, 5, 7}, x.string("D3"), crotchets);
    CHECK(quality(inScale, shape) == 0);
    CHECK_FALSE(wrongTone(inScale, shape.plucks.back()));
    x.levers.setup[x.string("C4")] = harp::Lever::Up; // C sharp
    View const offScale = x.view(0);
    Laid const sharp = scenes::laid(offScale, {1, 5, 7}, x.string("D3"), crotchets);
    CHECK(quality(offScale, sharp) == 400);
    CHECK(wrongTone(offScale, sharp.plucks.back()) == WrongTone::SeventhOffScale);
}

TEST_CASE("The tune may state the third, and then it is not missed", "[terms]")
{
    auto const x = inG("[G] B4:1 | [G] D5:1 |");
    View const stated = x.view(0);
    View const open = x.view(1);
    CHECK(quality(stated, laidOn(stated, x, {1, 5, 8}, "G2")) == 0);
    CHECK(quality(open, laidOn(open, x, {1, 5, 8}, "G2")) == 100);
    CHECK(quality(open, resting(open)) == 0);
}

TEST_CASE("A wrong tone costs the flip that it would need, or more where no lever has it",
          "[terms]")
{
    // Open strings are those of E flat: E flat by lowering E, C sharp by raising C, but no
    // lever makes A sharp of the A string [trade-1.4].
    CHECK(leversOf("Cm", {1, 5, 10}, "C2") == 150);
    CHECK(leversOf("F#m", {1, 5, 8}, "F2") == 150);
    CHECK(leversOf("F#", {1, 10}, "F2") == 250);
    CHECK(leversOf("F#", {1, 5, 10}, "F2") == 400); // C natural and A natural
    CHECK(leversOf("G", {1, 5, 10}, "G2") == 0);
}

TEST_CASE("Notes close to a flip of the left hand cost by how close they are", "[terms]")
{
    // By hand: 100 crotchets a minute, so that a crotchet lasts 0.6 s, which is no hurry; half
    // of that is half a hurry.
    auto x = inG("[G] G5:1 |");
    harp::Flip flip;
    flip.at = {{5, 8}};
    flip.freeFrom = {{1, 2}};
    flip.freeTo = {{3, 4}};
    flip.string = x.string("C5");
    flip.to = harp::Lever::Up;
    x.levers.flips = {flip};
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(levers(view, scenes::laid(view, {1, 5}, g2, {{0}, {1, 4}})) == 0);
    CHECK(levers(view, scenes::laid(view, {1, 5}, g2, {{0}, {3, 8}})) == 150);
    CHECK(levers(view, scenes::laid(view, {1, 5}, g2, {{0}, {1, 2}})) == 300);
    x.levers.flips.front().hand = harp::Side::Right;
    View const byRight = x.view(0);
    CHECK(levers(byRight, scenes::laid(byRight, {1, 5}, g2, {{0}, {1, 2}})) == 0);
}
