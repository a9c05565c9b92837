#include "core/learning/telling.h"

#include <catch2/catch.hpp>

using namespace learning;

namespace {

// In airs the octave is proposed and the tenth taken, or not.
std::vector<Choice> airs(int tenths, int octaves)
{
    std::vector<Choice> out;
    for (int i = 0; i < tenths + octaves; ++i) {
        Choice choice{"plain", 3, "air", "", {{"1-5-8", {}}, {"1-5-10", {}}}, 0, 0};
        choice.taken = i < tenths ? 1 : 0;
        choice.offers[0].judged[static_cast<std::size_t>(arrange::Term::Variety)] = 0.3;
        choice.offers[1].judged[static_cast<std::size_t>(arrange::Term::Mud)] = 0.5;
        out.push_back(choice);
    }
    return out;
}

} // namespace

TEST_CASE("A habit is told with how often it was kept", "[learning]")
{
    auto const seen = airs(9, 2);
    auto const told = tasteSentences(seen, learnedFrom(seen));
    REQUIRE_FALSE(told.empty());
    CHECK(told.front() == "In airs you take 1-5-10 where 1-5-8 is suggested: 9 of 11 times.");
    CHECK(tasteSentences(airs(2, 0), {}).empty()); // too seldom
    CHECK(tasteSentences(airs(4, 5), {}).empty()); // not more often than not
}

TEST_CASE("What counts less is told in plain words, and how far it is to be trusted",
          "[learning]")
{
    auto const seen = airs(28, 2);
    Learned const learned = learnedFrom(seen);
    REQUIRE(learned.inUse);
    bool said = false;
    for (std::string const& sentence : tasteSentences(seen, learned))
        said = said || sentence.find("You care less about clear low notes") == 0;
    CHECK(said);
    CHECK(tasteStanding(learned) == "Going by your other choices, Sallow would have got 28 of "
                                    "30 right; by the manner as it "
                                    "is, 2.");
    CHECK(tasteStanding(learnedFrom(airs(1, 0))).find("1 choice so far") == 0);
}
