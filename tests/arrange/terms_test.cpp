#include "core/arrange/terms.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;

namespace {

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}, {3, 4}};

} // namespace

TEST_CASE("An octave lies in easy reach and a tenth low down stretches", "[terms]")
{
    // Common practice, no source: a tenth is comfortable round middle C. By hand: thumb and
    // fourth finger of the example hand lie easy up to nine gaps and a half, 142.5 mm; a
    // twelfth, 11 gaps of 15 mm, is 22.5 mm wider: a point and a half in a block, half of that
    // one by one.
    auto const x = scenes::example("[G] z:1 |");
    View const view = x.view(0);
    int const g2 = x.string("G2");
    CHECK(reach(view, scenes::laid(view, {1, 5, 8}, g2, crotchets)) == 0);
    Laid block = scenes::laid(view, {1, 12}, g2, {{0}, {0}});
    block.plucks[1].finger = 1;
    CHECK(reach(view, block) == 1500);
    Laid broken = scenes::laid(view, {1, 12}, g2, {{0}, {1, 2}});
    broken.plucks[1].finger = 1;
    CHECK(reach(view, broken) == 750);
}

TEST_CASE("Notes at the level's limit a second cost a point", "[terms]")
{
    // By hand: at 100 crotchets a minute crotchets come 1.67 a second, quavers 3.33.
    auto x = scenes::example("[G] z:1 |");
    x.level.leftNotesPerSecond = 10.0 / 3;
    View const view = x.view(0);
    int const g2 = x.string("G2");
    CHECK(rate(view, scenes::laid(view, {1, 5, 8}, g2, crotchets)) == 0);
    CHECK(rate(view, scenes::laid(view, {1, 5, 8}, g2, {{0}, {1, 8}, {1, 4}})) == 1000);
}
