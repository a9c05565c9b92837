#include "core/pattern/layout.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace pattern;
using music::Length;
using music::Meter;
using music::Rational;

namespace {

Length wholes(int numerator, int denominator) { return {Rational(numerator, denominator)}; }

Rhythm rhythm(std::string name, Meter meter, Length span, std::vector<Length> onsets,
              std::vector<std::vector<int>> plays)
{
    return {std::move(name), meter, span, 3, std::move(onsets), std::move(plays)};
}

PatternBook book()
{
    Length const eighth = wholes(1, 8);
    Length const quarter = wholes(1, 4);
    PatternBook b;
    b.rhythms = {
        rhythm("quavers", {2, 4}, wholes(1, 2), {{}, eighth, quarter}, {{0}, {1}, {2}}),
        rhythm("bass and chord", {2, 4}, wholes(1, 2), {{}, quarter}, {{0}, {1, 2}}),
        rhythm("hold", {4, 4}, wholes(1, 1), {{}, quarter, wholes(1, 2)}, {{0}, {1}, {2}})};
    return b;
}

std::vector<std::string> names(std::string_view pattern, Meter meter, Length span)
{
    std::vector<std::string> all;
    for (Rhythm const& r : rhythmsFor(book(), *patternFrom(pattern), meter, span))
        all.push_back(r.name);
    return all;
}

using Names = std::vector<std::string>;
using Plays = std::vector<std::vector<int>>;

} // namespace

TEST_CASE("The book's rhythms for a meter and span come first", "[layout]")
{
    CHECK(names("1-5-8", {4, 4}, wholes(1, 1)) == Names{"hold"});
    CHECK(names("1-5-8", {2, 4}, wholes(1, 2)) == Names{"quavers", "bass and chord"});
    CHECK(names("1-5-8", {4, 4, true}, wholes(1, 1)) == Names{"hold"}); // written as C
}

TEST_CASE("Half a bar of 4/4 goes like a bar of 2/4", "[layout]")
{
    auto const found = rhythmsFor(book(), *patternFrom("1-5-8"), {4, 4}, wholes(1, 2));
    REQUIRE(found.size() == 2);
    CHECK(found[0].name == "quavers");
    CHECK(found[0].meter == Meter{4, 4});
}

TEST_CASE("Half a bar of 2/2 does not go like a bar of 2/4, whose beat is shorter", "[layout]")
{
    CHECK(names("1-5-8", {2, 2}, wholes(1, 2)) == Names{"first 2 notes"});
}

TEST_CASE("Notes that the pattern plucks together stay together", "[layout]")
{
    CHECK(names("1-5+8", {2, 4}, wholes(1, 2)) == Names{"bass and chord"});
    auto const found = rhythmsFor(book(), *patternFrom("1-5+8"), {3, 4}, wholes(3, 4));
    REQUIRE(found.size() == 1);
    CHECK(found[0].plays == Plays{{0}, {1, 2}});
    auto const block = rhythmsFor(book(), *patternFrom("1+5+8"), {4, 4}, wholes(1, 1));
    REQUIRE(block.size() == 1);
    CHECK(block[0].onsets == std::vector{Length{}});
    CHECK(block[0].plays == Plays{{0, 1, 2}});
}

TEST_CASE("Only a block is plucked all at once", "[layout]")
{
    Rhythm const held = rhythm("held", {4, 4}, wholes(1, 1), {{}}, {{0, 1, 2}});
    CHECK(fits(held, *patternFrom("1+5+8")));
    CHECK(!fits(held, *patternFrom("1-5-8")));
    CHECK(!fits(held, *patternFrom("1-5+8")));
    CHECK(!fits(held, *patternFrom("1+5")));
}

TEST_CASE("Where the book is silent the notes fall on beats or on halves or thirds of them",
          "[layout]")
{
    PatternBook const none;
    Pattern const p = *patternFrom("1-5-8");
    auto const onsets = [&](Meter meter, Length span) {
        return rhythmsFor(none, p, meter, span).at(0).onsets;
    };
    CHECK(onsets({5, 4}, wholes(5, 4)) == std::vector{Length{}, wholes(1, 4), wholes(1, 2)});
    CHECK(onsets({6, 8}, wholes(3, 8)) == std::vector{Length{}, wholes(1, 8), wholes(1, 4)});
    CHECK(onsets({2, 4}, wholes(1, 2)) == std::vector{Length{}, wholes(1, 8), wholes(1, 4)});
    CHECK(onsets({9, 8}, wholes(9, 8)) == std::vector{Length{}, wholes(3, 8), wholes(3, 4)});
}

TEST_CASE("In a span too short for all its notes a pattern keeps its first ones", "[layout]")
{
    PatternBook const none;
    auto const found = rhythmsFor(none, *patternFrom("1-5-8-9"), {4, 4}, wholes(1, 4));
    REQUIRE(found.size() == 1);
    CHECK(found[0].plays == Plays{{0}, {1}});
    CHECK(found[0].notes == 4);
}

TEST_CASE("Every span of every meter has a rhythm that begins at once and stays inside",
          "[layout]")
{
    PatternBook const b = book();
    for (std::string_view text : {"1", "1-5", "1-5-8", "1+5+8", "1-5+8-5+8", "1-5-8-9-10"}) {
        Pattern const p = *patternFrom(text);
        for (Meter meter : {Meter{2, 4}, Meter{3, 4}, Meter{4, 4}, Meter{2, 2}, Meter{6, 8},
                            Meter{9, 8}, Meter{12, 8}, Meter{5, 4}, Meter{7, 8}, Meter{3, 2}})
            for (int sixteenths = 1; sixteenths <= 24; ++sixteenths) {
                Length const span = wholes(sixteenths, 16);
                CAPTURE(text, meter.beats, meter.unit, sixteenths);
                auto const found = rhythmsFor(b, p, meter, span);
                REQUIRE(!found.empty());
                for (Rhythm const& r : found) {
                    CHECK(r.onsets.front() == Length{});
                    CHECK(r.onsets.back() < span);
                    CHECK(r.onsets.size() == r.plays.size());
                    CHECK(std::is_sorted(r.onsets.begin(), r.onsets.end()));
                    CHECK(fits(r, p));
                }
            }
    }
}
