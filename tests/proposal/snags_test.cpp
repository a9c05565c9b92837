#include "core/proposal/proposal.h"
#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace proposal;
using tune::Way;

namespace {

// C sharp as a lower neighbour of D in bars 1 and 3, beside C natural; and as a passing note in
// bar 2. Invented for these tests.
std::string const turns = "X:1\nT:The Stile\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
                          "\"G\"dcd^c dBGB|\"C\"e2c^c \"D\"d2f2|\"G\"dcd^c dBGB|\"D\"A2c2 \"G\"G4|]\n";

Brief brief(int level = 2) { return scenario::briefFor(turns, level); }

Snag const& snagIn(Proposal const& proposal, int bar)
{
    auto const found = std::find_if(proposal.snags.begin(), proposal.snags.end(),
                                    [bar](Snag const& s) { return s.place.bar == bar; });
    REQUIRE(found != proposal.snags.end());
    return *found;
}

std::size_t indexOf(Proposal const& proposal, int bar)
{
    return static_cast<std::size_t>(&snagIn(proposal, bar) - proposal.snags.data());
}

void checkSound(Proposal const& proposal)
{
    CHECK(brokenRules(proposal.arrangement, proposal.brief.book) == std::vector<std::string>{});
    for (Snag const& snag : proposal.snags) {
        CHECK_FALSE(snag.what.empty());
        CHECK(std::any_of(snag.ways.begin(), snag.ways.end(),
                          [&](SnagWay const& way) { return way.way == snag.way; }));
        CHECK(std::is_sorted(snag.ways.begin(), snag.ways.end(),
                             [](SnagWay const& a, SnagWay const& b) { return a.cost < b.cost; }));
    }
}

} // namespace

TEST_CASE("A snag does not stop a proposal: neighbours are played plain, a passing note is held, "
          "and the tune as read stays",
          "[snags]")
{
    Proposal const p = scenario::proposed(brief());
    checkSound(p);
    REQUIRE(p.snags.size() == 3);
    CHECK(snagIn(p, 0).way == Way::Plain);
    CHECK(snagIn(p, 1).way == Way::Held);
    CHECK(snagIn(p, 2).way == Way::Plain);
    CHECK(snagIn(p, 0).group == snagIn(p, 2).group); // like figures alike
    CHECK(snagIn(p, 0).written == music::Pitch{music::Letter::C, 1, 5});
    CHECK(snagIn(p, 0).needsSeconds > snagIn(p, 0).timeSeconds);
    CHECK(p.brief.tune == scenario::tuneOf(turns));
    CHECK(p.arrangement.levers.flips.empty());
    CHECK(snagSentences(p).size() == 2);
    CHECK(snagSentences(p).front().find("Bars 1 and 3: C♯5 played plain, as C5") == 0);
}

TEST_CASE("The root of a chord is not played a semitone off where another way is open",
          "[snags]")
{
    // In D with a bar of C, for a player who flips no levers: C5 on the string of C sharp over
    // the chord of C is out of tune with it. Common practice, no source.
    Proposal const p = scenario::proposed(
        scenario::briefFor("X:1\nT:The Loose Slate\nM:6/8\nL:1/8\nQ:3/8=80\nK:D\n"
                           "\"D\"d2f fed|\"A\"c2e edc|\"C\"eg=c eg=c|\"D\"def d3|"
                           "\"A\"cea ecA|\"D\"dfa d3|]\n",
                           1));
    checkSound(p);
    CHECK(snagIn(p, 2).written == music::Pitch{music::Letter::C, 0, 5});
    CHECK(snagIn(p, 2).way != Way::Plain);
}

TEST_CASE(
    "The third of a major chord is not played plain as the minor third beside the home note",
    "[snags]")
{
    // In D with bars of C, for a player who flips no levers: C natural over A before the last D
    // turns the close into A minor; the D before it is held instead. Common practice, no
    // source.
    Proposal const p = scenario::proposed(
        scenario::briefFor("X:1\nT:The Withy Stile\nM:6/8\nL:1/8\nQ:3/8=80\nK:D\n"
                           "\"D\"def d2A|\"C\"=c2e =c2e|\"C\"=c2G E2G|\"D\"def d2A|"
                           "\"C\"=c2e =c2e|\"G\"B2B \"A\"ddc|\"D\"d3 d3|]\n",
                           1));
    checkSound(p);
    Snag const& close = snagIn(p, 5);
    CHECK(close.written == music::Pitch{music::Letter::C, 1, 5});
    CHECK(close.way == Way::Held);
}

TEST_CASE("At no level and on no harp does what the tune asks stop a proposal", "[snags]")
{
    // A chromatic line over two octaves; a compass beyond every harp; six flats.
    std::vector<std::string> const hard{
        turns,
        "X:1\nM:4/4\nL:1/8\nQ:1/4=140\nK:C\n\"C\"C^CD^D EF^FG|\"F\"^GA^AB c^cd^d|"
        "\"G7\"e^de^d eBdc|\"C\"c4 z4|]\n",
        "X:1\nM:4/4\nL:1/4\nQ:1/4=90\nK:G\n\"G\"G,,,Gg'g''|\"D\"D,,df''d''''|\"G\"G4|]\n",
        "X:1\nM:3/4\nL:1/4\nQ:1/4=90\nK:Gb\n\"Gb\"GBd|\"Db\"dAF|\"Gb\"G3|]\n",
        "X:1\nM:6/8\nL:1/8\nQ:3/8=120\nK:A\n\"A\"A=GA \"E\"EGB|\"D\"d=cd \"A\"A^ABA|\"A\"A6|]\n"};
    for (std::string const& abc : hard)
        for (char const* harp : {"lap22", "floor34"})
            for (int level = 1; level <= 5; ++level)
                for (bool const best : {false, true}) {
                    CAPTURE(abc, harp, level, best);
                    Brief asked = scenario::briefFor(abc, level);
                    asked.harp = *files::harpFrom(scenario::tables(), harp);
                    if (best) asked.key = BestKey{};
                    auto const p = propose(asked);
                    REQUIRE(p);
                    checkSound(*p);
                }
}

TEST_CASE("A way is chosen for one snag or for all alike, outlives the level, and is taken back",
          "[snags]")
{
    Proposal const first = scenario::proposed(brief());
    Brief const all = withSnagWay(first, indexOf(first, 0), Way::LeaveOut, true);
    Proposal const leftOut = scenario::proposed(all);
    checkSound(leftOut);
    CHECK(snagIn(leftOut, 0).way == Way::LeaveOut);
    CHECK(snagIn(leftOut, 2).way == Way::LeaveOut);
    CHECK(snagIn(leftOut, 2).decided);
    CHECK(snagIn(leftOut, 1).way == Way::Held);
    CHECK_FALSE(snagIn(leftOut, 1).decided);
    Brief const one = withSnagWay(leftOut, indexOf(leftOut, 2), Way::Plain, false);
    Proposal const mixed = scenario::proposed(one);
    checkSound(mixed);
    CHECK(snagIn(mixed, 0).way == Way::LeaveOut);
    CHECK(snagIn(mixed, 2).way == Way::Plain);
    Brief other = all;
    other.level = *files::levelFrom(scenario::tables(), 1);
    CHECK(snagIn(scenario::proposed(other), 0).way == Way::LeaveOut);
    Brief const back = withoutSnagChoice(leftOut, indexOf(leftOut, 2));
    CHECK(back.snagChoices.empty());
    CHECK(scenario::proposed(back).snags == first.snags);
}

TEST_CASE("One way is taken for all snags that can go it, or a brief that has any is refused",
          "[snags]")
{
    for (Way const way : {Way::Plain, Way::Held, Way::LeaveOut, Way::Octave}) {
        CAPTURE(tune::wayId(way));
        Brief asked = brief();
        asked.mending.only = way;
        Proposal const p = scenario::proposed(asked);
        checkSound(p);
        REQUIRE(p.snags.size() == 3);
        for (Snag const& snag : p.snags) CHECK(snag.way == way);
    }
    Brief refused = brief();
    refused.mending.refuse = true;
    auto const p = propose(refused);
    REQUIRE_FALSE(p);
    CHECK(p.error().code == base::FaultCode::NoMomentForFlip);
}

TEST_CASE("A chromatic note alone does not move a tune from its key, one that comes often may",
          "[snags]")
{
    // A neighbour weighs less than another key; common practice, no source.
    Brief asked = scenario::briefFor("X:1\nT:The Gap\nM:4/4\nL:1/8\nQ:1/4=100\nK:G\n"
                                     "\"G\"dcd^c dBGB|\"C\"e2c2 \"D\"d2f2|\"D\"A2c2 \"G\"G4|]\n",
                                     2);
    asked.key = BestKey{};
    Proposal const p = scenario::proposed(asked);
    CHECK(p.moved == music::Interval{});
    CHECK(p.snags.size() == 1);
}

TEST_CASE("Another key, tempo and level are offered, tried and never taken unasked", "[snags]")
{
    // Slow notes beside a C sharp: the first level turns no lever while playing, the next ones do.
    Proposal const p = scenario::proposed(scenario::briefFor(
        "X:1\nM:4/4\nL:1/4\nQ:1/4=60\nK:G\n\"G\"dBGB|\"C\"e2c2|\"A\"e2^c2|\"D\"d4|"
        "\"C\"c2e2|\"G\"G4|]\n",
        1));
    auto const ways = wholeTuneWays(p, scenario::tables().levels);
    REQUIRE_FALSE(ways.empty());
    for (WholeTuneWay const& way : ways) {
        CAPTURE(way.sentence);
        auto const other = propose(way.brief);
        REQUIRE(other);
        CHECK(static_cast<int>(other->snags.size()) == way.snagsLeft);
        CHECK(other->snags.size() < p.snags.size());
    }
}

TEST_CASE("Where a lever is turned as a chord begins, the left hand plays after the flip",
          "[snags]")
{
    // F natural on the last quaver of bar 1, F sharp on the second of bar 2. Invented.
    Brief brief = scenario::briefFor("X:1\nT:The Loft Ladder\nM:6/8\nL:1/8\nQ:3/8=80\nK:C\n"
                                     "\"C\"gag g2f|\"D\"e^fg a3|\"Am\"aAa g2e|\"C\"c3 c3|]\n",
                                     3);
    brief.harp = *files::harpFrom(scenario::tables(), "lap26");
    Proposal const p = scenario::proposed(brief);
    checkSound(p);
    auto const& levers = p.arrangement.levers.flips;
    auto const sharp = std::ranges::find_if(levers, [](harp::Flip const& flip) {
        return flip.to == harp::Lever::Up && flip.hand == harp::Side::Left;
    });
    REQUIRE(sharp != levers.end());
    music::Length const bar{music::Rational(3, 4)};
    REQUIRE(sharp->freeFrom < music::Moment{} + bar);
    auto const& second = p.arrangement.positions[1].voicing.notes;
    REQUIRE_FALSE(second.empty());
    CHECK(second.front().at == music::Length{music::Rational(3, 8)}); // on the second beat
    CHECK(std::ranges::none_of(p.snags, [](Snag const& snag) { return snag.leftRests; }));
}

TEST_CASE(
    "Where the tune comes down to the root, the left hand may have the fifth below, at a close "
    "it rests, and another key is offered",
    "[snags]")
{
    Brief brief = scenario::briefFor("X:1\nT:Under the Sill\nM:4/4\nL:1/8\nQ:1/4=100\nK:A\n"
                                     "\"A\"A2c2 \"D\"d2c2|\"A\"A,2A2 c2A2|\"A\"c2A2 \"E\"B2e2|"
                                     "\"A\"c2BA GFED|\"A\"A,2A2 A4|]\n",
                                     3);
    brief.harp = *files::harpFrom(scenario::tables(), "lap26");
    brief.key = AsWritten{};
    Proposal const p = scenario::proposed(brief);
    checkSound(p);
    auto const priceOf = [&p](arrange::PositionIndex position, std::string_view pattern) {
        auto const& list = p.lattice.candidates[position];
        auto const found = std::ranges::find_if(
            list, [&](arrange::Candidate const& c) { return c.voicing.pattern == pattern; });
        REQUIRE(found != list.end());
        return found->cost;
    };
    REQUIRE(p.lattice.positions[2].bar == 1);
    CHECK(priceOf(2, "low5") < priceOf(2, "rest")); // E below the tune's A
    REQUIRE(p.snags.size() == 1);
    Snag const& rest = p.snags.front();
    CHECK(rest.hand == harp::Side::Left);
    CHECK(rest.place.bar == 4);
    CHECK(rest.what.find("the tune goes down to string 6") != std::string::npos);
    auto const ways = wholeTuneWays(p, scenario::tables().levels);
    auto const key = std::ranges::find(ways, Way::Key, &WholeTuneWay::way);
    REQUIRE(key != ways.end());
    CHECK(key->snagsLeft == 0);
    CHECK(key->tried->snags.empty());
}

TEST_CASE("A pick-up without a left hand is no snag", "[snags]")
{
    // The drone of a tune without chords begins with the pick-up of the second strain.
    Brief brief = scenario::briefFor("X:1\nT:The Low Lintel\nM:4/4\nL:1/8\nK:G\n"
                                     "|:D2|G2B2 d2B2|A2c2 B2A2|G2B2 d2B2|A2F2 G2:|\n"
                                     "|:B,2|D2G2 B2G2|A2F2 D2F2|G2B2 d2B2|A2F2 G2:|\n",
                                     3);
    brief.harp = *files::harpFrom(scenario::tables(), "lap26");
    Proposal const p = scenario::proposed(brief);
    CHECK(std::ranges::none_of(p.snags,
                               [](Snag const& snag) { return snag.hand == harp::Side::Left; }));
}
