#include "core/arrange/candidates.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace arrange;

namespace {

std::vector<Laid> voicingsAt(scenes::Example const& x, std::size_t position)
{
    View const view = x.view(position);
    return playableVoicings(view, figuresFor(x.book, x.level, view.meter, view.spanLength),
                            x.book);
}

} // namespace

TEST_CASE("The left hand can always rest", "[candidates]")
{
    auto x = scenes::example("[G] G2:1/4 G2:1/4 G2:1/2 |");
    auto const voicings = voicingsAt(x, 0);
    REQUIRE(voicings.size() == 1);
    CHECK(voicings.front().rests());
    CHECK(voicings.front().voicing.pattern == "rest");
}

TEST_CASE("A shape stands on every octave of its root below the tune", "[candidates]")
{
    // G2, G3 and, under a tune on B5, G4 as well; 1-5-8 on G4 reaches G5.
    auto x = scenes::example("[G] B5:1 |");
    std::vector<int> roots;
    for (Laid const& laid : voicingsAt(x, 0))
        if (laid.voicing.pattern == "1-5-8") roots.push_back(laid.voicing.rootString);
    std::ranges::sort(roots);
    auto const last = std::ranges::unique(roots).begin();
    roots.erase(last, roots.end());
    CHECK(roots == std::vector{x.string("G2"), x.string("G3"), x.string("G4")});
}
