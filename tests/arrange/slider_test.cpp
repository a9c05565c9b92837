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

TEST_CASE("The shipped sliders are four or five, each with two ends and something to pull",
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
    CHECK(ids == std::set<std::string>{"fullness", "ease", "colour", "sameness"});
}
