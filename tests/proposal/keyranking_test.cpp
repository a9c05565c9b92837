#include "core/levers/keyfit.h"
#include "core/proposal/keyranking.h"
#include "core/proposal/keywish.h"
#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace proposal;

namespace {

Brief bestOf(std::string const& abc)
{
    Brief brief = scenario::briefFor(abc);
    brief.key = BestKey{};
    return brief;
}

} // namespace

TEST_CASE("The first key told is the one a proposal takes, at the same cost", "[proposal]")
{
    auto const brief = bestOf(scenario::eightBars);
    auto const keys = rankedKeys(brief);
    auto const proposal = scenario::proposed(brief);
    REQUIRE(keys.front().cost);
    CHECK(keys.front().fit.moved == proposal.moved);
    CHECK(*keys.front().cost == proposal.solution.best.cost);
}

TEST_CASE("Every key's cost is that of the proposal there", "[proposal]")
{
    auto const brief = bestOf(scenario::eightBars);
    int asked = 0;
    for (RankedKey const& key : rankedKeys(brief)) {
        if (!key.cost || key.fit.flips > 0 || ++asked > 6) continue;
        Brief there = brief;
        there.tune = tune::transposed(brief.tune, key.fit.moved);
        there.key = AsWritten{};
        CAPTURE(key.fit.moved.semitones);
        CHECK(*key.cost == scenario::proposed(there).solution.best.cost);
    }
    CHECK(asked > 3);
}

TEST_CASE("Keys by cost rise, each move stands once, and the impossible stand last",
          "[proposal]")
{
    Brief brief = bestOf(scenario::eightBars);
    brief.mending.refuse = true;
    auto const keys = rankedKeys(brief, KeyOrder::ByCost);
    std::set<int> moves;
    bool possibleEnded = false;
    arrange::Points last = 0;
    for (RankedKey const& key : keys) {
        CHECK(moves.insert(key.fit.moved.semitones).second);
        CHECK_FALSE(key.reason.empty());
        if (!key.possible()) {
            possibleEnded = true;
            CHECK(key.why);
            continue;
        }
        CHECK_FALSE(possibleEnded);
        CHECK(*key.cost >= last);
        last = *key.cost;
    }
    CHECK(moves.size() == 37); // six semitones and an octave each way, and the written pitch
}

TEST_CASE("The best key alone is the first of all keys, whatever is given up on the way",
          "[proposal][snags]")
{
    auto const tunes = nottingham::everyTune();
    if (!tunes) {
        WARN("SKIPPED: the folk tunes are absent: no keys compared");
        return;
    }
    constexpr std::size_t every = 41;
    int withSnags = 0;
    int moved = 0;
    for (std::size_t i = 0; i < tunes->size(); i += every)
        for (int const level : {1, 3}) {
            Brief brief = scenario::briefFor((*tunes)[i].tune, level);
            brief.harp = *files::harpFrom(scenario::tables(), "lap26");
            CAPTURE((*tunes)[i].name, level);
            auto const best = [&brief](levers::KeysAsked asked) {
                return levers::keyFits(brief.tune, brief.harp, tempoWished(brief), brief.level,
                                       brief.weights.ways, asked)
                    .front();
            };
            levers::KeyFit const alone = best(levers::KeysAsked::TheBest);
            levers::KeyFit const first = best(levers::KeysAsked::All);
            CHECK(alone.reason == first.reason);
            CHECK(alone.rank == first.rank);
            withSnags += first.snags > 0 ? 1 : 0;
            moved += first.moved.semitones % 12 != 0 ? 1 : 0;
        }
    CHECK(withSnags > 0);
    CHECK(moved > 0);
}

TEST_CASE("Notes that would be lost are counted: a C sharp beside C on one string is one",
          "[proposal]")
{
    Brief brief = bestOf("X:1\nT:The Narrow Bridge\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
                         "\"G\"G2B2 d2B2|\"C\"c^cd2 \"G\"B4|\"G\"G8|]\n");
    // Where snags are mended it is one snag of the key; where they are refused, a note lost.
    for (RankedKey const& key : rankedKeys(brief))
        if (key.fit.moved == music::Interval{}) {
            CHECK(key.possible());
            CHECK(key.fit.snags == 1);
            CHECK(key.reason.find("1 snag") != std::string::npos);
        }
    brief.mending.refuse = true;
    auto const keys = rankedKeys(brief);
    auto const unmoved = std::find_if(keys.begin(), keys.end(), [](RankedKey const& key) {
        return key.fit.moved == music::Interval{};
    });
    REQUIRE(unmoved != keys.end());
    CHECK_FALSE(unmoved->possible());
    CHECK(unmoved->notesLost == 1);
    CHECK(unmoved->reason.find("1 note would have to be left out") != std::string::npos);
    // A key beyond the tuning is not a matter of single notes.
    for (RankedKey const& key : keys)
        if (key.why && key.why->code == base::FaultCode::KeyBeyondTuning)
            CHECK_FALSE(key.notesLost);
}

TEST_CASE("D mixolydian is offered the set-up of one sharp", "[proposal]")
{
    // Row 74 of the trade's check values: A dorian, D mixolydian and E aeolian share one sharp.
    auto const keys = rankedKeys(bestOf("X:1\nT:The Low Ford\nM:4/4\nL:1/4\nK:Dmix\n"
                                        "\"D\"d2 A2|\"C\"c2 G2|\"D\"A2 d2|]\n"));
    REQUIRE(keys.front().fit.moved == music::Interval{});
    auto const brief = bestOf(scenario::eightBars);
    auto const oneSharp = *harp::settingFor(brief.harp, *music::keyFrom("G"));
    CHECK(keys.front().fit.setup == oneSharp);
    CHECK(keys.front().leversRaised == 19); // row 25: G major from E flat tuning, 34 strings
    CHECK(keys.front().fit.key.mode == music::Mode::Mixolydian);
}

TEST_CASE("A tune without chords has its keys, too, at the cost of its drone", "[proposal]")
{
    auto const keys =
        rankedKeys(bestOf("X:1\nT:The Bare Bank\nM:4/4\nL:1/4\nK:G\nG2 B2|d4|]\n"));
    CHECK(keys.front().possible());
    CHECK(keys.front().cost);
}
