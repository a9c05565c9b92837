#include "tests/learning/users.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <iomanip>
#include <iostream>
#include <map>

// The model is the conditional logit of McFadden, "Conditional logit analysis of qualitative
// choice behavior" (1974), with a normal prior. How well it does is measured on arrangers made
// up as users.h says; the aims, 78 of 100 after 20 choices and 90 after 80, are our own.

using namespace learning;

namespace {

using Factors = std::array<double, arrange::termCount>;

Factors factorsOf(Learned const& learned)
{
    Factors out;
    for (std::size_t t = 0; t < out.size(); ++t)
        out[t] = static_cast<double>(learned.leaning.byTerm[t]) / arrange::Leaning::even;
    return out;
}

struct Agreement {
    double right = 0; // share of new chords where the learned best is the user's own
    double extra = 0; // what the learned best costs the user more than her own, points
};

// Of 96 users after so many choices each, on 200 new chords.
Agreement agreement(int choices, double careless)
{
    constexpr int runs = 96;
    constexpr int asked = 200;
    Agreement sum;
    for (unsigned run = 0; run < runs; ++run) {
        std::mt19937 random(1000 + run);
        users::User user = users::user(random, careless);
        std::vector<Choice> seen;
        for (int i = 0; i < choices; ++i) seen.push_back(users::choice(random, user));
        Factors const factor = factorsOf(learnedFrom(seen));
        user.careless = 0;
        std::mt19937 later(77 + run);
        for (int i = 0; i < asked; ++i) {
            Choice const choice = users::choice(later, user);
            std::size_t const found = best(choice, factor);
            sum.right += found == choice.taken ? 1 : 0;
            for (std::size_t t = 0; t < factor.size(); ++t)
                sum.extra += user.own[t] * (choice.offers[found].judged[t] -
                                            choice.offers[choice.taken].judged[t]);
        }
    }
    return {sum.right / (runs * asked), sum.extra / (runs * asked)};
}

constexpr auto mud = static_cast<std::size_t>(arrange::Term::Mud);
constexpr auto variety = static_cast<std::size_t>(arrange::Term::Variety);
constexpr auto reach = static_cast<std::size_t>(arrange::Term::Reach);

Choice between(double first, double second, std::size_t taken)
{
    Choice choice{"plain", 3, "air", "", {{"1-5-8", {}}, {"1-5-10", {}}}, taken, 0};
    choice.offers[0].judged[mud] = first;
    choice.offers[1].judged[variety] = second;
    return choice;
}

} // namespace

TEST_CASE("The more choices are seen, the more often a new one is foretold", "[learning]")
{
    std::cout << "Learning of taste: foretold, extra cost in points\n";
    for (double const careless : {0.0, 0.2}) {
        std::cout << (careless == 0 ? "  consistent:" : "  a fifth at random:") << std::fixed;
        std::map<int, Agreement> at;
        for (int const choices : {0, 5, 10, 20, 40, 80}) {
            at[choices] = agreement(choices, careless);
            std::cout << "  " << choices << ": " << std::setprecision(1)
                      << 100 * at[choices].right << " % " << std::setprecision(2)
                      << at[choices].extra;
        }
        std::cout << '\n';
        if (careless == 0) {
            CHECK(at[20].right >= 0.78);
            CHECK(at[80].right >= 0.90);
            CHECK(at[5].right >= at[0].right);
        } else {
            CHECK(at[80].right > at[0].right + 0.05);
        }
        // A little learning does no harm worth the name.
        for (auto const& [choices, found] : at) {
            CAPTURE(choices, careless);
            CHECK(found.right > at[0].right - 0.01);
            CHECK(found.extra < at[0].extra + 0.02);
        }
    }
}

TEST_CASE("What is in use foretells held-back choices at least as well as the manner",
          "[learning]")
{
    for (unsigned seed = 0; seed < 60; ++seed) {
        std::mt19937 random(seed);
        users::User const user = users::user(random, seed % 3 == 0 ? 1.0 : 0.3);
        std::vector<Choice> seen;
        for (unsigned i = 0; i < 5 + seed % 40; ++i)
            seen.push_back(users::choice(random, user));
        Learned const learned = learnedFrom(seen);
        CAPTURE(seed);
        CHECK(learned.asLearned >= learned.asShipped);
        CHECK(learned.inUse != learned.leaning.isEven());
        for (int const factor : learned.leaning.byTerm) CHECK(factor >= 0);
    }
}

TEST_CASE("Few choices teach nothing, and neither do choices of what was proposed anyway",
          "[learning]")
{
    CHECK_FALSE(learnedFrom({}).inUse);
    std::vector<Choice> const few(fewest - 1, between(1.0, 0.9, 0));
    CHECK(learnedFrom(few).leaning.isEven());
}

TEST_CASE("A term that the arranger takes no heed of loses weight, and no other", "[learning]")
{
    // She takes what the first term speaks against by a point, whatever the second says.
    std::vector<Choice> seen;
    for (int i = 0; i < 30; ++i) seen.push_back(between(1.0, 0.2 + 0.02 * (i % 10), 0));
    Learned const learned = learnedFrom(seen);
    REQUIRE(learned.inUse);
    CHECK(learned.asShipped == 0);
    CHECK(learned.asLearned == 30);
    CHECK(learned.factor[mud] < 0.7);
    CHECK(learned.factor[variety] > 1);
    CHECK(learned.factor[reach] == Approx(1));
    CHECK(learned.spread[mud] < learned.spread[reach]); // seen, so surer
}

TEST_CASE("With one factor and two offers the fit is where the odds and the prior balance",
          "[learning]")
{
    // Two offers that differ by one point in one term, each taken as often as the other: the
    // logit's own best is a factor of 0, the prior pulls it towards 1.
    std::vector<Choice> seen;
    for (int i = 0; i < 40; ++i) {
        Choice choice = between(1.0, 0, static_cast<std::size_t>(i % 2));
        seen.push_back(choice);
    }
    Learned const learned = learnedFrom(seen);
    CHECK(learned.factor[mud] < 0.5);
    CHECK(learned.factor[mud] > 0);
}

TEST_CASE("What guards the hand is never weighed less, however often a stretch is taken",
          "[learning]")
{
    std::vector<Choice> seen;
    for (int i = 0; i < 40; ++i) {
        Choice choice = between(0.0, 0.3, 0);
        choice.offers[0].judged[reach] = 1;
        seen.push_back(choice);
    }
    Learned const learned = learnedFrom(seen);
    CHECK(learned.factor[reach] >= 1);
    CHECK(learned.factor[variety] > 1); // so she may have it
}
