#include "core/files/abc/read.h"
#include "core/music/typedchord.h"
#include "core/tune/chordedits.h"
#include "core/tune/playing.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Rational;

namespace {

Tune tuneOf(std::string const& abc)
{
    auto const entries = *files::abcTunes(abc);
    return *files::readAbc(abc, entries.front(), "test");
}

// Invented. Bars 1 and 4 have the same notes.
Tune march()
{
    return tuneOf("X:1\nM:4/4\nL:1/4\nK:G\n\"G\"GABc|\"D\"d2d2|dcBA|\"G\"GABc|\"D\"d2\"G\"G2|]\n");
}

music::Chord chord(char const* symbol) { return *music::chordFrom(symbol); }

// "G . | D . | ...": what sounds on each minim.
std::string row(Tune const& tune)
{
    std::string out;
    for (tune::BarIndex const i : tune.bars.indices())
        for (int half = 0; half < 2; ++half) {
            auto const here = chordHere(tune, {i, Length{Rational(half, 2)}});
            out += (half ? " " : "|") + (here ? plain(here->chord) : std::string("-"));
        }
    return out;
}

} // namespace

TEST_CASE("A chord that is set lasts to the next one and changes no other bar", "[chordedits]")
{
    REQUIRE(row(march()) == "|G G|D D|D D|G G|D G");
    CHECK(row(withChord(march(), {1, Length{Rational(1, 2)}}, chord("Am7"))) ==
          "|G G|D Am7|D D|G G|D G");
    CHECK(row(withChord(march(), {1, {}}, chord("C"))) == "|G G|C C|D D|G G|D G");
    CHECK(row(withChord(march(), {4, {}}, chord("D7"))) == "|G G|D D|D D|G G|D7 G");
    CHECK(withChord(march(), {9, {}}, chord("C")) == march());
    CHECK(withChord(march(), {1, Length{2}}, chord("C")) == march());
    Tune const set = withChord(march(), {1, {}}, chord("C"));
    CHECK(chordHere(set, {1, {}})->origin == ChordOrigin::Set);
    CHECK(chordHere(set, {2, {}})->origin == ChordOrigin::Written);
}

TEST_CASE("The first chord of a tune without any lasts on", "[chordedits]")
{
    Tune bare = march();
    for (Bar& bar : bare.bars) bar.chords.clear();
    CHECK(row(withChord(bare, {1, {}}, chord("D"))) == "|- -|D D|D D|D D|D D");
}

TEST_CASE("No chord rests the hand to the next one", "[chordedits]")
{
    CHECK(row(withChord(march(), {1, {}}, music::noChord())) == "|G G|- -|D D|G G|D G");
    CHECK(row(tuneOf("X:1\nM:4/4\nL:1/4\nK:G\n\"G\"GABc|\"N.C.\"d2d2|dcBA|\"G\"G4|]\n")) ==
          "|G G|- -|- -|G G");
}

TEST_CASE("A chord that is taken out lets the one before go on, in its bar alone",
          "[chordedits]")
{
    CHECK(row(withoutChord(march(), {1, {}})) == "|G G|G G|D D|G G|D G");
    CHECK(row(withoutChord(march(), {4, Length{Rational(1, 2)}})) == "|G G|D D|D D|G G|D D");
}

TEST_CASE("A chord is split into two strokes and joined again", "[chordedits]")
{
    ChordPlace const half{1, Length{Rational(1, 2)}};
    Tune const split = withChordSplit(march(), half);
    CHECK(row(split) == row(march()));
    CHECK(chordSpans(split).size() == chordSpans(march()).size() + 1);
    CHECK(withoutChord(split, half) == march());
    CHECK(withChordSplit(march(), {1, {}}) == march()); // it begins there already
}

TEST_CASE("A change moves by a beat, over the bar line too, until another is in the way",
          "[chordedits]")
{
    Length const beat{Rational(1, 4)};
    Length const back{Rational(-1, 4)};
    auto const later = withChangeMoved(march(), {4, Length{Rational(1, 2)}}, beat);
    REQUIRE(later);
    CHECK(chordHere(*later, {4, Length{Rational(1, 2)}})->length == Length{Rational(3, 4)} -
                                                                        Length{});
    CHECK(plain(chordHere(*later, {4, Length{Rational(3, 4)}})->chord) == "G");
    auto const earlier = withChangeMoved(march(), {3, {}}, back);
    REQUIRE(earlier);
    CHECK(plain(chordHere(*earlier, {2, Length{Rational(3, 4)}})->chord) == "G");
    CHECK(plain(chordHere(*earlier, {2, Length{Rational(1, 2)}})->chord) == "D");
    CHECK_FALSE(withChangeMoved(march(), {4, Length{Rational(1, 2)}}, Length{Rational(-1, 2)}));
    CHECK_FALSE(withChangeMoved(march(), {0, {}}, back));      // before the tune
    CHECK_FALSE(withChangeMoved(march(), {2, {}}, beat));      // no change there
    CHECK_FALSE(withChangeMoved(march(), {4, Length{Rational(1, 2)}}, Length{Rational(1, 2)}));
}

TEST_CASE("A chord is set in every bar with the same notes", "[chordedits]")
{
    CHECK(barsAlike(march(), 0) == std::vector<BarIndex>{0, 3});
    CHECK(row(withChordEverywhere(march(), {0, {}}, chord("Em"))) == "|Em Em|D D|D D|Em Em|D G");
}

TEST_CASE("The chords of a row are put over other bars, and those behind keep theirs",
          "[chordedits]")
{
    // Bars 2 and 3 are D throughout, the second only carried on.
    CHECK(row(withChordRow(march(), 0, chordRow(march(), 1, 2))) == "|D D|D D|D D|G G|D G");
    CHECK(row(withChordRow(march(), 1, chordRow(march(), 4, 4))) == "|G G|D G|D D|G G|D G");
    // A row that begins in the midst of a chord begins with it; what goes beyond the end is
    // left.
    CHECK(row(withChordRow(march(), 3, chordRow(march(), 2, 4))) == "|G G|D D|D D|D D|G G");
    CHECK(chordRow(march(), 7, 9).empty());
    for (ChordMark const& mark :
         withChordRow(march(), 0, chordRow(march(), 4, 4)).bars[0].chords)
        CHECK(originOf(mark) == ChordOrigin::Set);
}

TEST_CASE("Chords that go before an ending stay what its other ending goes on from",
          "[chordedits]")
{
    Tune const tune = tuneOf("X:1\nM:4/4\nL:1/4\nK:G\n"
                             "|:\"G\"GABc|\"D\"d4|1 dcBA:|2 \"G\"G4|]\n");
    REQUIRE(row(tune) == "|G G|D D|D D|G G");
    CHECK(row(withChord(tune, {1, {}}, chord("Am"))) == "|G G|Am Am|D D|G G");
}
