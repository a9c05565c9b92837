#include "core/arrange/slider.h"

#include "core/files/tables/tables.h"
#include "tests/places.h"

#include <catch2/catch.hpp>

#include <set>

using namespace arrange;

namespace {

int weightOf(Weights const& weights, Term term)
{
    return weights.byTerm[static_cast<std::size_t>(term)];
}

} // namespace

TEST_CASE("A slider pulls weights with it or against it, by hand-worked figures", "[slider]")
{
    Weights weights;
    weights.byTerm.fill(800);
    Slider const ease{"ease", "Ease", "", "", {{Term::Reach, 1000}, {Term::Mud, -500}}};
    auto const at = [&](int percent) { return turned(weights, withSlider({}, ease, percent)); };
    CHECK(weightOf(at(150), Term::Reach) == 1200); // 800 * 1.5
    CHECK(weightOf(at(150), Term::Mud) == 600);    // 800 * (1 - 0.5 * 0.5)
    CHECK(weightOf(at(0), Term::Reach) == 0);
    CHECK(weightOf(at(200), Term::Mud) == 400);
    CHECK(weightOf(at(150), Term::Travel) == 800);
    CHECK(at(100).byTerm == weights.byTerm);
}

TEST_CASE("A slider pulls at figures of the taste, all numbers of one together", "[slider]")
{
    Weights weights;
    weights.taste.shapeFit.missingRichness = 70;
    weights.taste.shapeFit.mostNotes = {2, 3, 3, 5, 6};
    weights.taste.shapeFit.unhurriedSeconds = {1.0, 0.6, 0.4, 0.36, 0.3};
    weights.taste.thumbLine.seventhLeads = -100;
    Slider const slider{"any",
                        "Any",
                        "",
                        "",
                        {},
                        {{"shape_fit", "missing_richness", 1000},
                         {"shape_fit", "most_notes", 500},
                         {"shape_fit", "unhurried_seconds", -450},
                         {"thumb_line", "seventh_leads", 1000}}};
    auto const at = [&](int percent) {
        return turned(weights, withSlider({}, slider, percent)).taste;
    };
    CHECK(at(150).shapeFit.missingRichness == 105); // 70 * 1.5
    CHECK(at(0).shapeFit.missingRichness == 0);
    CHECK(at(200).shapeFit.mostNotes == ByLevel<int>{3, 5, 5, 8, 9}); // by 1.5, rounded
    CHECK(at(200).shapeFit.unhurriedSeconds[2] == Approx(0.22));
    CHECK(at(200).thumbLine.seventhLeads == -200);
    CHECK(at(100).shapeFit.missingRichness == 70);
}

TEST_CASE("A slider in the middle stands in no list, and a list has each slider once",
          "[slider]")
{
    Slider const ease{"ease", "Ease", "", "", {}};
    auto list = withSlider({}, ease, 150);
    list = withSlider(list, ease, 170);
    CHECK(list.size() == 1);
    CHECK(percentOf(list, "ease") == 170);
    CHECK(percentOf(list, "colour") == 100);
    CHECK(withSlider(list, ease, 100).empty());
    CHECK(percentOf(withSlider(list, ease, 900), "ease") == 200);
}

TEST_CASE("The shipped sliders are five, each with two ends and something to pull",
          "[slider]")
{
    auto const tables = files::readTables(places::shared());
    REQUIRE(tables);
    std::set<std::string> ids;
    for (Slider const& s : tables->sliders) {
        CAPTURE(s.id);
        ids.insert(s.id);
        CHECK(!s.less.empty());
        CHECK(!s.more.empty());
        CHECK(!s.pulls.empty());
    }
    CHECK(ids == std::set<std::string>{"fullness", "ease", "colour", "sameness", "movement"});
}
