// What the score prefers over many folk tunes, against what harpers do. Common practice, no
// source, unless said: 1-5-8 is the shape to start from, last bars close plainly, thirds stay
// out of the deep bass, and no tune has one shape throughout.

#include "tests/proposal/nottingham.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <iostream>
#include <map>
#include <set>

using namespace proposal;

namespace {

constexpr std::size_t everyTune = 6;

// Shapes chosen, and how often.
using Shapes = std::map<std::string, int>;

struct Taste {
    int tunes = 0;
    int positions = 0;
    Shapes inFullBars;
    Shapes inPartsOfBars;
    Shapes last;
    int lowThirds = 0;
    int ofOneShape = 0; // tunes
    std::size_t candidates = 0;
};

bool fillsBar(arrange::Arrangement const& a, arrange::Position const& p)
{
    auto const bar = static_cast<std::size_t>(p.bar);
    return p.span >= music::barLength(a.tune.bars[bar].meter);
}

// A third close above a root below C3.
bool hasLowThird(arrange::Arrangement const& a, arrange::Voicing const& voicing)
{
    constexpr int c3 = 48;
    return std::ranges::any_of(voicing.notes, [&](arrange::VoicedNote const& n) {
        int const root = music::midi(a.harp.string(voicing.rootString).open);
        return n.degree == 3 && root < c3;
    });
}

void note(Taste& taste, Proposal const& proposal)
{
    arrange::Arrangement const& a = proposal.arrangement;
    std::set<std::string> shapes;
    for (arrange::ArrangedPosition const& p : a.positions) {
        std::string const& shape = p.voicing.pattern;
        ++taste.positions;
        ++(fillsBar(a, p.position) ? taste.inFullBars : taste.inPartsOfBars)[shape];
        shapes.insert(shape + p.voicing.rhythm);
        if (hasLowThird(a, p.voicing)) ++taste.lowThirds;
    }
    for (auto const& list : proposal.lattice.candidates) taste.candidates += list.size();
    ++taste.last[a.positions.back().voicing.pattern];
    ++taste.tunes;
    if (shapes.size() == 1 && a.positions.size() > 4) ++taste.ofOneShape;
}

int share(Shapes const& shapes, std::string const& shape)
{
    int all = 0;
    for (auto const& [name, count] : shapes) all += count;
    auto const found = shapes.find(shape);
    return found == shapes.end() || all == 0 ? 0 : 100 * found->second / all;
}

std::string commonest(Shapes const& shapes)
{
    return std::ranges::max_element(shapes, {}, &Shapes::value_type::second)->first;
}

void print(std::string const& what, Shapes const& shapes)
{
    std::cout << what << ':';
    for (auto const& [name, count] : shapes)
        if (share(shapes, name) > 0)
            std::cout << ' ' << name << ' ' << share(shapes, name) << '%';
    std::cout << '\n';
}

Taste tasteOver(std::vector<nottingham::NamedTune> const& tunes, int level)
{
    Taste taste;
    for (std::size_t i = 0; i < tunes.size(); i += everyTune) {
        Brief brief = scenario::briefFor(tunes[i].tune, level);
        brief.key = BestKey{};
        if (auto const result = propose(brief)) note(taste, *result);
    }
    return taste;
}

} // namespace

TEST_CASE(
    "Over folk tunes 1-5-8 is the commonest shape, varied in every tune and plain at the end",
    "[taste]")
{
    auto const tunes = nottingham::tunesWithChords();
    if (!tunes) {
        WARN("the Nottingham tunes are absent: no taste judged");
        return;
    }
    Taste const taste = tasteOver(*tunes, 3);
    std::cout << taste.tunes << " tunes, " << taste.positions << " positions, "
              << taste.candidates / static_cast<std::size_t>(std::max(1, taste.positions))
              << " candidates each\n";
    print("full bars", taste.inFullBars);
    print("parts of bars", taste.inPartsOfBars);
    print("last", taste.last);

    REQUIRE(taste.tunes > 20);
    CHECK(commonest(taste.inFullBars) == "1-5-8");
    CHECK(share(taste.inFullBars, "1-5-8") >= 30);
    CHECK(share(taste.inFullBars, "1-5-8") <= 75);
    CHECK(taste.ofOneShape == 0);
    CHECK(100 * taste.lowThirds <= taste.positions);
    int plainEnds = 0;
    for (char const* shape : {"1-5-8", "1-8", "1", "1+5", "1-5+8", "1-5", "1+8", "1+5+8"})
        plainEnds += share(taste.last, shape);
    CHECK(plainEnds >= 85);
}
