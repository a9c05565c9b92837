#include "core/tune/repeatsigns.h"

#include "core/tune/playing.h"
#include "tests/tune/bars.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace tune;

TEST_CASE("A repeat back to a double bar line gets its opening sign, and is played as before",
          "[repeatsigns]")
{
    // ABC 2.1, section 4.8 (from memory): back to the latest double bar line.
    Tune tune = bars::plain(5);
    tune.bars[1].closes = BarLine::Double;
    tune.bars[3].repeatCloses = true;
    Tune const signedTune = withRepeatSigns(tune);
    CHECK(signedTune.bars[2].repeatOpens);
    CHECK(std::ranges::count(signedTune.bars, true, &Bar::repeatOpens) == 1);
    CHECK(played(signedTune).bars == played(tune).bars);
}

TEST_CASE("A repeat from the beginning needs no sign, and a repeat with one gets no second",
          "[repeatsigns]")
{
    Tune tune = bars::plain(4);
    tune.bars[1].repeatCloses = true;
    tune.bars[2].repeatOpens = true;
    tune.bars[3].repeatCloses = true;
    CHECK(withRepeatSigns(tune) == tune);
}

TEST_CASE("Endings go back to the sign too", "[repeatsigns]")
{
    Tune tune = bars::plain(6);
    tune.bars[1].closes = BarLine::Double;
    tune.bars[4].endings = {1};
    tune.bars[4].repeatCloses = true;
    tune.bars[5].endings = {2};
    CHECK(withRepeatSigns(tune).bars[2].repeatOpens);
}
