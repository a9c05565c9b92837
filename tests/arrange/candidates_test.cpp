#include "core/arrange/candidates.h"

#include "core/pattern/layout.h"
#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace arrange;

namespace {

using Lay = std::variant<Laid, Hindrance>;

std::vector<Laid> voicingsAt(scenes::Example const& x, PositionIndex position)
{
    View const view = x.view(position);
    return playableVoicings(view, figuresFor(x.book, x.level, view.meter, view.spanLength),
                            x.book);
}

// A pattern with its notes at these times; times beyond its notes are left over.
Figure figure(std::string_view pattern, std::vector<music::Rational> const& at,
              View const& view)
{
    Figure out{*pattern::patternFrom(pattern),
               {"example", view.meter, view.spanLength, 0, {}, {}}};
    for (std::size_t i = 0; i < std::min(at.size(), out.pattern.notes.size()); ++i) {
        if (out.rhythm.onsets.empty() || out.rhythm.onsets.back().wholes != at[i]) {
            out.rhythm.onsets.push_back({at[i]});
            out.rhythm.plays.emplace_back();
        }
        out.rhythm.plays.back().push_back(static_cast<int>(i));
    }
    return out;
}

Obstacle obstacle(Lay const& lay)
{
    REQUIRE(std::holds_alternative<Hindrance>(lay));
    return std::get<Hindrance>(lay).what;
}

Laid laidOf(Lay const& lay)
{
    REQUIRE(std::holds_alternative<Laid>(lay));
    return std::get<Laid>(lay);
}

std::set<std::string> names(std::vector<Laid> const& voicings)
{
    std::set<std::string> out;
    for (Laid const& laid : voicings) out.insert(laid.voicing.pattern);
    return out;
}

std::vector<music::Rational> const crotchets{{0}, {1, 4}, {1, 2}, {3, 4}};

} // namespace

TEST_CASE("The left hand can always rest", "[candidates]")
{
    auto x = scenes::example("[G] G2:1/4 G2:1/4 G2:1/2 |");
    auto const voicings = voicingsAt(x, 0);
    REQUIRE(voicings.size() == 1);
    CHECK(voicings.front().rests());
    CHECK(voicings.front().voicing.pattern == "rest");
}

TEST_CASE("A shape stands on every octave of its root below the tune", "[candidates]")
{
    // G2, G3 and, under a tune on B5, G4 as well: 1-5-8 on G4 reaches G5.
    auto x = scenes::example("[G] B5:1 |");
    std::set<harp::StringIndex> roots;
    for (Laid const& laid : voicingsAt(x, 0))
        if (laid.voicing.pattern == "1-5-8") roots.insert(laid.voicing.rootString);
    CHECK(roots == std::set{x.string("G2"), x.string("G3"), x.string("G4")});
}

TEST_CASE("No voicing leaves the harp at either end", "[candidates]")
{
    auto x = scenes::example("[D] z:1 |", "D");
    View const view = x.view(0);
    CHECK(obstacle(laidOn(figure("1-low5", crotchets, view), x.string("D2"), view)) ==
          Obstacle::OffHarp);
    CHECK(obstacle(laidOn(figure("1-5-8", crotchets, view), x.string("D6"), view)) ==
          Obstacle::OffHarp);
}

TEST_CASE("The left hand never plucks a string that the tune plucks or holds", "[candidates]")
{
    auto x = scenes::example("[G] z:1/4 G4:3/4 |");
    View const view = x.view(0);
    harp::StringIndex const g3 = x.string("G3");
    // 1-5-8 on G3: the octave G4 comes while the tune holds it, but not before it.
    CHECK(obstacle(laidOn(figure("1-5-8", crotchets, view), g3, view)) ==
          Obstacle::OnTunesString);
    CHECK(obstacle(laidOn(figure("1-8", crotchets, view), g3, view)) ==
          Obstacle::OnTunesString);
    CHECK(obstacle(laidOn(figure("8", {{1, 2}}, view), g3, view)) == Obstacle::OnTunesString);
    CHECK(std::holds_alternative<Laid>(laidOn(figure("8", {{0}}, view), g3, view)));
}

TEST_CASE("The left hand stays below what the tune plucks or holds", "[candidates]")
{
    auto x = scenes::example("[G] D4:1 |");
    View const view = x.view(0);
    CHECK(obstacle(laidOn(figure("1-5-8", crotchets, view), x.string("G3"), view)) ==
          Obstacle::OnTunesString);
    CHECK(obstacle(laidOn(figure("1-8", crotchets, view), x.string("G3"), view)) ==
          Obstacle::HandsCross);
    CHECK(std::holds_alternative<Laid>(
        laidOn(figure("1-5-8", crotchets, view), x.string("G2"), view)));
}

TEST_CASE("A left-hand note is let go where the tune comes down to its string or below",
          "[candidates]")
{
    auto x = scenes::example("[G] D5:1/2 G3:1/4 F#3:1/4 |");
    View const view = x.view(0);
    Laid const laid = laidOf(laidOn(figure("1-8", {{0}, {1, 4}}, view), x.string("G2"), view));
    CHECK(laid.voicing.notes[1].held == music::Length{{1, 4}}); // until G3 on beat 3
    Laid const low = laidOf(laidOn(figure("5", {{0}}, view), x.string("G2"), view));
    CHECK(low.voicing.notes[0].held == music::Length{1}); // D3 stays below all of it
}

TEST_CASE("A root's string must sound the root as the levers stand", "[candidates]")
{
    // In G the F strings sound F sharp: no root for F, but A and C are there.
    auto x = scenes::example("[F] z:1 |");
    View const view = x.view(0);
    CHECK(obstacle(laidOn(figure("1-5", crotchets, view), x.string("F2"), view)) ==
          Obstacle::RootSilent);
    auto const offered = names(voicingsAt(x, 0));
    CHECK(offered.contains("3"));
    CHECK(offered.contains("5"));
    CHECK(offered.contains("3-5"));
    CHECK(offered.contains("rest"));
    CHECK_FALSE(offered.contains("1"));
    CHECK_FALSE(offered.contains("1-5-8"));
    for (Laid const& laid : voicingsAt(x, 0))
        for (Pluck const& p : laid.plucks) CHECK((p.midi % 12 == 9 || p.midi % 12 == 0));
}

TEST_CASE("Over a slash chord shapes stand on the bass and fill in tones of the chord",
          "[candidates]")
{
    // D over F sharp: F sharp, A, D; the fifth above the bass, C sharp, is no tone of it.
    auto x = scenes::example("[D/F#] z:1 |", "D");
    auto const offered = names(voicingsAt(x, 0));
    CHECK(offered.contains("1-3-8"));
    CHECK(offered.contains("1-6-8"));
    CHECK(offered.contains("1-6-10"));
    CHECK(offered.contains("1+3+6"));
    for (Laid const& laid : voicingsAt(x, 0))
        if (!laid.rests()) CHECK(laid.plucks.front().midi % 12 == 6);
}

TEST_CASE("The left hand keeps its rate also into the next chord", "[candidates]")
{
    auto x = scenes::example("[G] z:1/2 [D] z:1/2 |");
    x.level.leftNotesPerSecond = 2; // at 100 crotchets a minute: one crotchet is 0.6 s
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(std::holds_alternative<Laid>(laidOn(figure("1-5", {{0}, {1, 4}}, view), g2, view)));
    CHECK(obstacle(laidOn(figure("1-5", {{0}, {1, 8}}, view), g2, view)) == Obstacle::TooFast);
    CHECK(obstacle(laidOn(figure("1-5", {{0}, {3, 8}}, view), g2, view)) == Obstacle::TooFast);
}

TEST_CASE("A string is not plucked again before the level allows it", "[candidates]")
{
    auto x = scenes::example("[G] z:1 |");
    x.level.sameStringPerSecond = 1; // crotchets are 0.6 s
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(obstacle(laidOn(figure("1-1", {{0}, {1, 4}}, view), g2, view)) ==
          Obstacle::StringTooSoon);
    CHECK(std::holds_alternative<Laid>(laidOn(figure("1-1", {{0}, {1, 2}}, view), g2, view)));
}

TEST_CASE("What is plucked together lies within the hand or is rolled where the shape rolls",
          "[candidates]")
{
    // Common practice, no source: a tenth is the secure limit for a small hand below middle C.
    auto x = scenes::example("[G] z:1 |");
    x.level.leftStrings = 12;
    x.hand.limitMm = 125; // a ninth of eight gaps at 15 mm, no tenth
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    Figure block = figure("1+5+8+10", {{0}, {0}, {0}, {0}}, view);
    block.pattern.rolls = false;
    CHECK(obstacle(laidOn(block, g2, view)) == Obstacle::BeyondReach);
    CHECK(
        std::holds_alternative<Laid>(laidOn(figure("1+5+8", {{0}, {0}, {0}}, view), g2, view)));

    x.hand = example::mediumHand();
    x.hand.pairs = {{2, 1, 4, 7}, {3, 1, 6, 9}, {4, 1, 6, 11},
                    {3, 2, 2, 4}, {4, 2, 4, 5}, {4, 3, 2, 4}};
    View const wider = x.view(0);
    Figure rolled = figure("1+7+8+10 (4-2-1-1)", {{0}, {0}, {0}, {0}}, wider);
    rolled.pattern.rolls = true;
    CHECK(obstacle(laidOn(rolled, g2, wider)) ==
          Obstacle::BeyondReach); // one finger, two strings
}

TEST_CASE("While it turns a lever the left hand plucks nothing", "[candidates]")
{
    auto x = scenes::example("[G] z:1 |");
    auto const at = [](int n, int d) { return music::Moment{{n, d}}; };
    x.levers.flips = {
        {at(1, 2), at(1, 4), at(3, 4), x.string("F4"), harp::Lever::Down, harp::Side::Left, 0}};
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(obstacle(laidOn(figure("1-5-8", crotchets, view), g2, view)) == Obstacle::HandBusy);
    CHECK(std::holds_alternative<Laid>(
        laidOn(figure("1-5-8", {{0}, {1, 4}, {3, 4}}, view), g2, view)));
    x.levers.flips.front().hand = harp::Side::Right;
    View const right = x.view(0);
    CHECK(std::holds_alternative<Laid>(laidOn(figure("1-5-8", crotchets, right), g2, right)));
}

TEST_CASE("No lever is turned on a string that the left hand still counts", "[candidates]")
{
    auto x = scenes::example("[G] z:1 |");
    auto const at = [](int n, int d) { return music::Moment{{n, d}}; };
    x.levers.flips = {
        {at(3, 4), at(3, 4), at(3, 4), x.string("D3"), harp::Lever::Up, harp::Side::Right, 0}};
    View const view = x.view(0);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(obstacle(laidOn(figure("1-5", {{0}, {1, 2}}, view), g2, view)) ==
          Obstacle::LeverTurned);
    CHECK(std::holds_alternative<Laid>(
        laidOn(figure("1-5-8", {{0}, {1, 4}, {1, 2}}, view), g2, view)));
}

TEST_CASE("A voicing played on several passes sounds the same on all of them", "[candidates]")
{
    // On the second time through, D3 has been raised.
    auto x = scenes::example("[G] z:1 :|");
    auto const second = music::Moment{{1}};
    x.levers.flips = {
        {second, second, second, x.string("D3"), harp::Lever::Up, harp::Side::Right, 1}};
    View const view = x.view(0);
    REQUIRE(view.passes.size() == 2);
    harp::StringIndex const g2 = x.string("G2");
    CHECK(obstacle(laidOn(figure("1-5", crotchets, view), g2, view)) == Obstacle::SoundsVary);
    CHECK(std::holds_alternative<Laid>(laidOn(figure("1-8", crotchets, view), g2, view)));
}

TEST_CASE("Equal notes at equal times are offered once", "[candidates]")
{
    auto x = scenes::example("[G] z:1 |");
    auto const before = voicingsAt(x, 0).size();
    x.book.patterns.push_back(x.book.patterns.back());
    x.book.patterns.back().name = "again";
    CHECK(voicingsAt(x, 0).size() == before);
}
