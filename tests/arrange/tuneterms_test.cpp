// Terms on the left hand beside the tune and from pass to pass, worked by hand with figures of
// their own.

#include "core/arrange/candidates.h"
#include "core/arrange/terms.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;

namespace {

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}};
std::vector<music::Rational> const minims{{0}, {1, 2}};
std::vector<music::Rational> const once{{0}};

} // namespace

TEST_CASE("Thirds, sixths and tenths keep better company with the tune than octaves", "[terms]")
{
    // Octave 100, fifth 40, third and sixth nothing.
    auto x = scenes::example("[G] G4:1 |");
    x.weights.taste.melodyCompany = {{100, 60, 60, 0, 0, 40, 60}, 0, 0};
    View const view = x.view(0);
    auto const with = [&](char const* pitch) {
        return melodyCompany(view, scenes::laid(view, {1}, x.string(pitch), once));
    };
    CHECK(with("G2") == 100);
    CHECK(with("C3") == 40);
    CHECK(with("E3") == 0); // a tenth
    CHECK(with("B2") == 0); // a sixth and an octave
    CHECK(melodyCompany(view, resting(view)) == 0);
    // The mean over onsets: octave, fifth, octave.
    CHECK(melodyCompany(view, scenes::laid(view, {1, 4, 8}, x.string("G2"), crotchets)) == 80);
}

TEST_CASE("Contrary motion costs nothing, the tune's own way most", "[terms]")
{
    auto x = scenes::example("[G] G4:1/2 A4:1/2 |");
    x.weights.taste.melodyCompany = {{}, 40, 16};
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    auto const of = [&](std::vector<int> const& degrees) {
        return melodyCompany(view, scenes::laid(view, degrees, g2, minims));
    };
    CHECK(of({8, 1}) == 0);
    CHECK(of({1, 1}) == 8); // over two onsets
    CHECK(of({1, 5}) == 20);
}

TEST_CASE("No way is judged where the tune holds its note", "[terms]")
{
    auto x = scenes::example("[G] G4:1 |");
    x.weights.taste.melodyCompany = {{}, 40, 16};
    View const view = x.view(0);
    CHECK(melodyCompany(view, scenes::laid(view, {1, 5, 8}, x.string("G2"), crotchets)) == 0);
}

TEST_CASE("Passes that vary begin thin and end full, written passes are not judged", "[terms]")
{
    // Room for three notes: two are wanted on the first pass, four on the second.
    auto x = scenes::example("[G] z:1 | [D] z:1 :|");
    x.weights.taste.shapeFit.mostNotes.fill(3);
    x.weights.taste.shapeFit.unhurriedSeconds.fill(0.5);
    x.weights.taste.passes = {1, 1, 100, 50};
    auto const byPass = positionsByPass(x.tune, x.playing);
    REQUIRE(byPass.size() == 4);
    auto const viewAt = [&](PositionIndex position) {
        return viewOf(x.scene(), byPass[position], longestNote(x.playing));
    };
    View const first = viewAt(0);
    View const second = viewAt(2);
    CHECK(first.turn == Turn{1, 2});
    CHECK(second.turn == Turn{2, 2});
    harp::StringIndex const g2 = x.string("G2");
    auto const of = [&](View const& view, std::vector<int> const& degrees,
                        std::vector<music::Rational> const& at) {
        return passes(view, scenes::laid(view, degrees, g2, at));
    };
    std::vector<music::Rational> const four{{0}, {1, 4}, {1, 2}, {3, 4}};
    CHECK(of(first, {1, 5}, minims) == 0);
    CHECK(of(first, {1, 5, 8}, crotchets) == 100);
    CHECK(of(second, {1, 5, 8, 9}, four) == 0);
    CHECK(of(second, {1, 5}, minims) == 100);
    View const written = x.view(0);
    CHECK(written.turn == Turn{1, 1});
    CHECK(of(written, {1, 5, 8, 9}, four) == 0);
}
