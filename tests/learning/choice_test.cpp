#include "core/files/work/document.h"
#include "core/files/work/tastefile.h"
#include "core/learning/choice.h"
#include "core/proposal/proposal.h"
#include "tests/learning/users.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numeric>

using namespace learning;

namespace {

double sum(Offer const& offer)
{
    return std::accumulate(offer.judged.begin(), offer.judged.end(), 0.0);
}

// The second best at a position.
arrange::CandidateIndex second(proposal::Proposal const& p, arrange::PositionIndex position)
{
    return proposal::variants(p, position).at(1).candidate;
}

} // namespace

TEST_CASE("A choice holds what was taken, what stood there and the best of the others",
          "[learning]")
{
    auto const p = scenario::proposed(scenario::briefFor(scenario::eightBars));
    arrange::CandidateIndex const taken = second(p, 2);
    auto const choice = choiceOf(p, 2, taken);
    REQUIRE(choice);
    CHECK(choice->manner == p.brief.weights.style);
    CHECK(choice->level == 3);
    CHECK(choice->offers.size() == offersKept);
    auto const& candidates = p.lattice.candidates[2];
    CHECK(choice->offers[choice->taken].shape == candidates[taken].voicing.pattern);
    CHECK(choice->offers[choice->proposed].shape == p.arrangement.positions[2].voicing.pattern);
    CHECK(choice->taken != choice->proposed);
}

TEST_CASE("What the terms say of an offer adds up to what it costs among its neighbours",
          "[learning]")
{
    auto const p = scenario::proposed(scenario::briefFor(scenario::eightBars));
    constexpr arrange::PositionIndex here = 3;
    arrange::CandidateIndex const taken = second(p, here);
    auto const choice = choiceOf(p, here, taken);
    REQUIRE(choice);
    auto const& stands = p.solution.best.candidates;
    auto const c = static_cast<std::size_t>(taken);
    auto const at = [&](arrange::PositionIndex i) {
        return static_cast<std::size_t>(stands[i]);
    };
    arrange::Points const cost = p.lattice.candidates[here][taken].cost +
                                 p.writtenPairs[here - 1].at(at(here - 1), c) +
                                 p.writtenPairs[here].at(c, at(here + 1));
    CHECK(sum(choice->offers[choice->taken]) == Approx(static_cast<double>(cost) / 1000));
    // What is proposed is the cheapest among neighbours as they are.
    for (Offer const& offer : choice->offers)
        CHECK(sum(offer) >= sum(choice->offers[choice->proposed]) - 1e-9);
}

TEST_CASE(
    "A leaning changes what is proposed, is saved with the work, and does not change what is "
    "learned",
    "[learning]")
{
    auto brief = scenario::briefFor(scenario::eightBars);
    auto const plain = scenario::proposed(brief);
    auto const before = choiceOf(plain, 2, second(plain, 2));
    brief.leaning.byTerm.fill(500);
    brief.leaning.byTerm[static_cast<std::size_t>(arrange::Term::Variety)] = 4000;
    auto const leant = scenario::proposed(brief);
    auto const shapes = [](proposal::Proposal const& p) {
        std::vector<std::string> out;
        for (auto const& position : p.arrangement.positions)
            out.push_back(position.voicing.pattern + position.voicing.rhythm);
        return out;
    };
    CHECK(shapes(plain) != shapes(leant));

    // Saved and opened again it is the same.
    std::string const text = files::documentText({{}, brief}, scenario::tables());
    auto const again = files::readDocument(text, scenario::tables(), "a.sallow");
    REQUIRE(again);
    CHECK(again->brief.leaning == brief.leaning);
    CHECK(shapes(scenario::proposed(again->brief)) == shapes(leant));

    // Offers are judged as the manner judges, whatever is learned already.
    auto const after = choiceOf(leant, 2, second(leant, 2));
    REQUIRE(before);
    REQUIRE(after);
    for (Offer const& a : before->offers)
        for (Offer const& b : after->offers)
            if (a.shape == b.shape && a.judged[0] != 0 && b.judged[0] != 0 &&
                leant.arrangement.positions[1].voicing ==
                    plain.arrangement.positions[1].voicing)
                CHECK(a.judged[0] == Approx(b.judged[0]).margin(0.01));
}

TEST_CASE("A later choice at a place takes the place of the earlier one", "[learning]")
{
    std::mt19937 random(1);
    auto one = users::choice(random, users::user(random));
    one.place = "a/1";
    auto two = one;
    two.taken = (one.taken + 1) % one.offers.size();
    auto other = one;
    other.place = "a/2";
    auto const kept = withChoice(withChoice(withChoice({}, one), other), two);
    REQUIRE(kept.size() == 2);
    CHECK(kept.back() == two);
    std::vector<Choice> many;
    for (std::size_t i = 0; i < choicesKept + 5; ++i) {
        one.place = std::to_string(i);
        many = withChoice(std::move(many), one);
    }
    CHECK(many.size() == choicesKept);
    CHECK(many.front().place == "5");
}

TEST_CASE(
    "What is kept of the taste is read back as it was, damage is told with the file's name",
    "[learning]")
{
    std::mt19937 random(3);
    auto const user = users::user(random);
    files::TasteKept kept{false, {}};
    for (int i = 0; i < 9; ++i) {
        kept.choices.push_back(users::choice(random, user));
        for (Offer& offer : kept.choices.back().offers)
            for (double& points : offer.judged) points = std::round(points * 1000) / 1000;
    }
    std::string const text = files::tasteText(kept);
    auto const read = files::readTaste(text, "taste.json");
    REQUIRE(read);
    CHECK(*read == kept);
    // How the shape fits was called by another name in older files: it is not lost.
    std::string older = text;
    constexpr std::string_view name = "\"shape_fit\":";
    REQUIRE(older.find(name) != std::string::npos);
    for (std::size_t at; (at = older.find(name)) != std::string::npos;)
        older.replace(at, name.size(), "\"liking\":");
    auto const readAgain = files::readTaste(older, "taste.json");
    REQUIRE(readAgain);
    CHECK(*readAgain == kept);
    for (std::string const& damaged :
         {std::string("{"), std::string("[]"), text.substr(0, text.size() / 2),
          std::string(R"({"sallow_taste":1,"on":1,"choices":[]})"),
          std::string(R"({"sallow_taste":9,"on":true,"choices":[]})"),
          std::string(R"({"sallow_taste":1,"on":true,"choices":[{"manner":"plain","level":3,)"
                      R"("kind":"jig","place":"","taken":4,"proposed":0,"offers":[]}]})")}) {
        CAPTURE(damaged);
        auto const refused = files::readTaste(damaged, "taste.json");
        REQUIRE_FALSE(refused);
        CHECK(refused.error().place.find("taste.json") != std::string::npos);
        CHECK(sentence(refused.error()).find("json.exception") == std::string::npos);
    }
}
