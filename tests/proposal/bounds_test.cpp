// What a tune may be, each bound from both sides.

#include "core/proposal/keywish.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

using namespace proposal;
using base::FaultCode;

namespace {

tune::Tune barsOf(std::size_t count, std::size_t notes, std::size_t chords)
{
    tune::Tune tune = scenario::briefFor(scenario::eightBars).tune;
    tune::Bar bar = tune.bars[1];
    REQUIRE_FALSE(bar.notes.empty());
    REQUIRE_FALSE(bar.chords.empty());
    bar.notes = tune::Notes(static_cast<int>(notes), bar.notes.front());
    bar.chords.resize(chords, bar.chords.front());
    tune.bars = tune::Bars(static_cast<int>(count), bar);
    return tune;
}

} // namespace

TEST_CASE("A tune is refused beyond a bound and no sooner, with its sizes and what to do",
          "[bounds]")
{
    CHECK_FALSE(tooLong(barsOf(mostBars, 1, 1)));
    CHECK_FALSE(tooLong(barsOf(100, mostNotes / 100, 1)));
    CHECK_FALSE(tooLong(barsOf(1, mostInBar, 1)));
    CHECK_FALSE(tooLong(barsOf(1, 1, mostChords)));

    for (auto const& [tune, most] :
         {std::pair(barsOf(mostBars + 1, 1, 1), std::size_t{mostBars}),
          std::pair(barsOf(101, mostNotes / 101 + 1, 1), mostNotes),
          std::pair(barsOf(1, mostInBar + 1, 1), std::size_t{mostInBar}),
          std::pair(barsOf(1, 1, mostChords + 1), mostChords)}) {
        auto const fault = tooLong(tune);
        REQUIRE(fault);
        CHECK(fault->code == FaultCode::TuneTooLong);
        CHECK(base::sentence(*fault).find("split it") != std::string::npos);
        CHECK(base::sentence(*fault).find("at most " + std::to_string(most)) !=
              std::string::npos);
        // At once, before anything is planned.
        Brief brief = scenario::briefFor(scenario::eightBars);
        brief.tune = tune;
        auto const refused = propose(brief);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().code == FaultCode::TuneTooLong);
    }
}
