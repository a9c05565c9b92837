// How a tune is found by its first notes, typed or played. All tunes are invented.
#include "core/collection/firstnotes.h"
#include "tests/collection/tunes.h"

#include <catch2/catch.hpp>

using namespace collection;

namespace {

std::optional<int> typed(char const* notes, TuneEntry const& tune)
{
    return unlikeness(*firstNotesFrom(notes), tune);
}

} // namespace

TEST_CASE("First notes are read as letters, as ABC, and as degrees", "[firstnotes]")
{
    using As = FirstNotes::As;
    CHECK(firstNotesFrom("g a b d") == FirstNotes{As::Letters, {4, 5, 6, 1}});
    CHECK(firstNotesFrom("GABd") == firstNotesFrom("g a b d"));
    CHECK(firstNotesFrom("G2AB | d4") == firstNotesFrom("g a b d")); // lengths of ABC
    CHECK(firstNotesFrom("F# Bb c") == FirstNotes{As::Letters, {3, 6, 0}});
    CHECK(firstNotesFrom("1 2 3 5") == FirstNotes{As::Degrees, {0, 1, 2, 4}});
    CHECK(firstNotesFrom("1-5-8") == FirstNotes{As::Degrees, {0, 4, 0}});
    CHECK(firstNotesFrom("F♯ A") == FirstNotes{As::Letters, {3, 5}});
    CHECK(firstNotesFrom("")->notes.empty());
    CHECK_FALSE(firstNotesFrom("solo"));
    CHECK(firstNotesFrom("gabdgabdgabdgabdgabd")->notes.size() == mostFirstNotes);
}

TEST_CASE("A tune's first notes are found in its key and in any other", "[firstnotes]")
{
    TuneEntry const reel = tunes::entry(tunes::reel);
    CHECK(typed("gabdg", reel) == 0);
    CHECK(typed("1 2 3 5 8", reel) == 0);
    CHECK(typed("defad", reel) == 1);     // the same in D
    CHECK(typed("4 5 6 8 4", reel) == 1); // the same from the fourth degree on
    CHECK_FALSE(typed("gbadg", reel));
    CHECK(unlikeness(firstNotesPlayed({67, 69, 71, 74, 79}), reel) == 0);
    CHECK(unlikeness(firstNotesPlayed({55, 57, 59, 62, 67}), reel) == 0); // an octave lower
    CHECK(unlikeness(firstNotesPlayed({63, 65, 67, 70, 75}), reel) == 1); // in E flat
    // Played keys tell a third from a minor one; letters are strings, which do not.
    CHECK_FALSE(unlikeness(firstNotesPlayed({67, 69, 70, 74, 79}), reel));
}

TEST_CASE("A pick-up may be missing from either side", "[firstnotes]")
{
    TuneEntry const inD = tunes::entry(tunes::inD);
    REQUIRE(inD.pickUp == 2);
    CHECK(typed("abdef", inD) == 0);
    CHECK(typed("defad", inD) == 1); // she leaves it out
    CHECK(typed("gabdg", inD) == 2); // and plays it in G
    TuneEntry const reel = tunes::entry(tunes::reel);
    CHECK(typed("degabdgf", reel) == 6); // she has one of two notes, the tune has none
}

TEST_CASE("Another rhythm is the same tune: notes are repeated or held", "[firstnotes]")
{
    TuneEntry const inD = tunes::entry(tunes::inD); // d twice
    CHECK(typed("defadcd", inD) == 3);
    TuneEntry const reel = tunes::entry(tunes::reel);
    CHECK(typed("gabdggfg", reel) == 2);
    CHECK(typed("gaabdg", reel) == 2);
}

TEST_CASE("Among six notes or more one may be another one", "[firstnotes]")
{
    TuneEntry const reel = tunes::entry(tunes::reel);
    auto const wrong = typed("gabcgf", reel);
    REQUIRE(wrong);
    CHECK(*wrong > *typed("defadc", reel));
    CHECK_FALSE(typed("gabcg", reel)); // too few to tell
}

TEST_CASE("One or two notes are looked for as they are", "[firstnotes]")
{
    TuneEntry const reel = tunes::entry(tunes::reel);
    CHECK(typed("g", reel) == 0);
    CHECK_FALSE(typed("a", reel));
    CHECK(typed("ga", reel) == 0);
    CHECK_FALSE(typed("de", reel));
    CHECK(typed("1", reel) == 0);
}

TEST_CASE("A tune without notes is never found by them", "[firstnotes]")
{
    CHECK_FALSE(typed("g", TuneEntry{}));
    CHECK_FALSE(unlikeness(FirstNotes{}, tunes::entry(tunes::reel)));
}
