// What the arranger decided stays with its bar and note when the tune is edited.

#include "core/proposal/edited.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

using namespace proposal;

namespace {

std::string const fourBars =
    "X:1\nT:Four\nM:4/4\nL:1/4\nK:G\n\"G\"GABc|\"C\"cdef|\"D\"dcBA|\"G\"G4|]\n";

Brief decided()
{
    Brief brief = scenario::briefFor(fourBars);
    for (tune::BarIndex const bar : {tune::BarIndex(0), tune::BarIndex(1), tune::BarIndex(3)}) {
        Lock lock;
        lock.bar = bar;
        lock.root = *music::pitchFrom("G3");
        brief.locks.push_back(lock);
    }
    brief.changes.push_back({{1, 2, 0, false}, tune::Change::OctaveLower});
    brief.changes.push_back({{2, 0, 0, false}, tune::Change::LeftOut});
    return brief;
}

std::vector<int> lockedBars(Brief const& brief)
{
    std::vector<int> out;
    for (Lock const& lock : brief.locks) out.push_back(lock.bar);
    return out;
}

} // namespace

TEST_CASE("Bars put in move what stands behind them", "[proposal][edited]")
{
    Brief const brief = decided();
    tune::Tune longer = brief.tune;
    longer.bars.insert(longer.bars.begin() + 1, longer.bars[0]);
    Brief const now = withEditedTune(brief, longer, {1, 1});
    CHECK(lockedBars(now) == std::vector<int>{0, 2, 4});
    REQUIRE(now.changes.size() == 2);
    CHECK(now.changes[0].place.bar == 2);
    CHECK(now.changes[1].place.bar == 3);
    CHECK(now.tune.bars.size() == 5);
}

TEST_CASE("What was about a bar taken out goes with it", "[proposal][edited]")
{
    Brief const brief = decided();
    tune::Tune shorter = brief.tune;
    shorter.bars.erase(shorter.bars.begin() + 1);
    Brief const now = withEditedTune(brief, shorter, {1, -1});
    CHECK(lockedBars(now) == std::vector<int>{0, 2});
    REQUIRE(now.changes.size() == 1);
    CHECK(now.changes[0].place.bar == 1);
}

TEST_CASE("What was about a note stays while a note stands at its beat", "[proposal][edited]")
{
    Brief const brief = decided();
    tune::Tune other = brief.tune;
    other.bars[1].notes.erase(other.bars[1].notes.begin()); // the third note is the second now
    other.bars[2].notes.erase(other.bars[2].notes.begin()); // the one that was left out is gone
    Brief const now = withEditedTune(brief, other);
    REQUIRE(now.changes.size() == 1);
    CHECK(now.changes[0].place.bar == 1);
    CHECK(now.changes[0].place.note == 1);
}

TEST_CASE("Kept shapes go along with a tune that is moved to another key", "[proposal][edited]")
{
    Brief const brief = decided();
    auto const up = music::between(*music::pitchFrom("G3"), *music::pitchFrom("A3"));
    Brief const now = withEditedTune(brief, tune::transposed(brief.tune, up), {}, up);
    REQUIRE(now.locks.front().root);
    CHECK(*now.locks.front().root == *music::pitchFrom("A3"));
}
