#include "core/explain/whynot.h"

#include "tests/arrange/scenes.h"

#include <catch2/catch.hpp>

using namespace arrange;
using namespace explain;

// Each refusal names the string, the beat or the figure that a harper would point at, and what
// would help. The scenes are those of the tests of the rules themselves.

namespace {

std::string why(scenes::Example const& x, std::string_view shape, PositionIndex position = 0)
{
    auto const refusal =
        whyNot(x.scene(), x.positions().at(position), *pattern::patternFrom(shape));
    return refusal ? sentence(*refusal) : "playable";
}

// A rhythm for shapes of three notes that does not depend on the shipped tables.
void addRhythm(scenes::Example& x, std::vector<music::Length> at)
{
    pattern::Rhythm rhythm{"example", {4, 4}, {1}, static_cast<int>(at.size()), at, {}};
    for (int i = 0; i < static_cast<int>(at.size()); ++i) rhythm.plays.push_back({i});
    x.book.rhythms.push_back(rhythm);
}

} // namespace

TEST_CASE("A shape that can be played is not refused", "[whynot]")
{
    CHECK(why(scenes::example("[G] B5:1 |"), "1-5-8") == "playable");
}

TEST_CASE("The string that the tune holds is named with its beat", "[whynot]")
{
    // Over a tune on D3 nothing of 1-5-8 on G2 can pass its fifth, D3 itself; on G3 and above
    // the hands would cross from the first note on.
    auto x = scenes::example("[G] D3:1 |");
    CHECK(why(x, "1-5-8") == "On beat 2, the tune is on D3, a string that this shape needs: "
                             "choose a narrower shape or a "
                             "higher key.");
}

TEST_CASE("Crossed hands are told with both strings", "[whynot]")
{
    auto x = scenes::example("[G] C3:1 |");
    CHECK(why(x, "1-5-8") == "On beat 2, it would pluck D3, above the tune's C3, so the hands "
                             "would cross: choose a narrower shape or a "
                             "higher key.");
}

TEST_CASE("A root that the levers do not give is told with what its string sounds", "[whynot]")
{
    // In G the F strings sound F sharp.
    auto x = scenes::example("[F] z:1 |");
    std::string const told = why(x, "1-5-8");
    CAPTURE(told);
    CHECK(told.find("string of its root sounds F\u266f") != std::string::npos);
    CHECK(told.find("choose another key") != std::string::npos);
}

TEST_CASE("A level that asks for less is named with its number", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    x.level.number = 2;
    x.level.leftStrings = 8;
    CHECK(why(x, "1-5-10") ==
          "It spans 10 strings, and level 2 allows 8: choose a higher level.");
    CHECK(why(x, "1-5-8-9 (4-2-1-2u)").find("It spans 9 strings") == 0);
    x.level.leftStrings = 12;
    CHECK(why(x, "1-5-10") ==
          "It is a level 3 pattern, and your level is 2: choose a higher level.");
}

TEST_CASE("A meter that the book has the shape not for is named", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    pattern::Pattern waltz = *pattern::patternFrom("1-8-5");
    waltz.meters = {"3/4", "6/8"};
    auto const refusal = whyNot(x.scene(), x.positions().front(), waltz);
    REQUIRE(refusal);
    CHECK(refusal->reason == "the pattern book gives it for 3/4, 6/8, and this bar is in 4/4");
}

TEST_CASE("Haste is told with the beat and the level's figure", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    addRhythm(x, {{0}, {{1, 16}}, {{1, 8}}});
    x.level.leftNotesPerSecond = 4; // semiquavers at 100 are 0.15 s apart
    CHECK(why(x, "1-5-8") ==
          "After beat 1, its notes are faster than 4 a second, the limit for the left "
          "hand at level 3: play slower, or choose a higher level or a pattern with fewer "
          "notes.");
}

TEST_CASE("A string that comes again too soon is named", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    addRhythm(x, {{0}, {{1, 4}}, {{1, 2}}});
    x.level.sameStringPerSecond = 0.5;
    CHECK(why(x, "1-5-1").find("string is plucked again sooner than level 3 allows") !=
          std::string::npos);
    CHECK(why(x, "1-5-1").find("On beat 3, the G2 string") == 0);
}

TEST_CASE("A reach is told in strings and millimetres", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    x.hand.limitMm = 60;
    std::string const told = why(x, "1+5+8");
    CHECK(told.find("From ") == 0);
    CHECK(told.find(" mm, more than this hand can reach") != std::string::npos);
    CHECK(told.find("choose a narrower shape, or pluck its notes one after another") !=
          std::string::npos);
}

TEST_CASE("A lever that the hand turns, or that turns under a note, is named", "[whynot]")
{
    auto x = scenes::example("[G] z:1 |");
    addRhythm(x, {{0}, {{1, 4}}, {{1, 2}}});
    auto const at = [](int n, int d) { return music::Moment{{n, d}}; };
    x.levers.flips = {
        {at(1, 2), at(1, 4), at(3, 4), x.string("F4"), harp::Lever::Down, harp::Side::Left, 0}};
    CHECK(why(x, "1-5-8").find("On beat 3, the left hand is flipping the lever of F") == 0);
    x.levers.flips = {
        {at(3, 4), at(3, 4), at(3, 4), x.string("G3"), harp::Lever::Up, harp::Side::Right, 0}};
    // The tune on B3 leaves G2 as the only root, whose octave is the string that is turned.
    auto low = scenes::example("[G] B3:1 |");
    low.book.rhythms = x.book.rhythms;
    low.levers.flips = x.levers.flips;
    CHECK(why(low, "1-3-8").find("The lever of G") == 0);
    CHECK(why(low, "1-3-8").find("is flipped on beat 4, while its note is still needed") !=
          std::string::npos);
}

TEST_CASE("A chord too short for the notes is told with its room", "[whynot]")
{
    auto x = scenes::example("[G] z:1/4 [D] z:3/4 |");
    CHECK(why(x, "1-5-8-5") == "It has 4 notes, and this chord has room for 2: choose a "
                               "shorter pattern, or write your own.");
}
