#include "core/files/abc/onebar.h"
#include "core/files/abc/read.h"
#include "core/files/abc/write.h"
#include "core/tune/edit/typing.h"
#include "core/tune/edit/whole.h"
#include "tests/tune/oddbars.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Rational;

namespace {

Typing rests(int bars)
{
    NewTune wish;
    wish.key = {{music::Letter::G, 0}, music::Mode::Ionian};
    wish.bars = bars;
    Typing typing;
    typing.tune = newTune(wish);
    return typing;
}

Typing typedAll(Typing typing, std::string_view signs)
{
    for (char sign : signs) typing = typed(std::move(typing), sign).typing;
    return typing;
}

// "GABc2d | z6": all bars.
std::string row(Typing const& typing)
{
    std::string out;
    for (Bar const& bar : typing.tune.bars)
        out += (out.empty() ? "" : " | ") + files::abcOfBar(bar);
    return out;
}

} // namespace

TEST_CASE("Letters write notes one after another and go on over the bar line", "[typing]")
{
    Typing const typing = typedAll(rests(2), "gabc2d1b");
    CHECK(row(typing) == "GABcd2 | Bz5");
    CHECK(typing.at == NoteAt{1, 1});
    CHECK(typing.length == Length{Rational(1, 8)});
    CHECK(oddBars(typing.tune).empty());
}

TEST_CASE("Leaps that go on upwards or downwards stay where a tune can be read again",
          "[typing]")
{
    for (std::string const leaps : {"dfa", "dbg"}) { // each nearest to the one before
        NewTune wish;
        wish.bars = 12;
        Typing typing;
        typing.tune = newTune(wish);
        for (int i = 0; i < 24; ++i)
            for (char const sign : leaps) typing = typed(std::move(typing), sign).typing;
        for (Bar const& bar : typing.tune.bars)
            for (Note const& note : bar.notes)
                for (music::Pitch const& pitch : note.pitches)
                    CHECK((pitch.octave >= 0 && pitch.octave <= 8));
        std::string const abc = files::abcOfTune(typing.tune);
        auto const entries = files::abcTunes(abc);
        REQUIRE(entries);
        CHECK(files::readAbc(abc, entries->front(), "leaps"));
    }
}

TEST_CASE("A letter behind the last bar begins a new one", "[typing]")
{
    Typing const typing = typedAll(rests(1), "3gg1a");
    CHECK(row(typing) == "G3G3 | Az5");
    CHECK(typing.tune.bars.size() == 2);
    CHECK(typing.tune.bars.back().closes == BarLine::Final);
}

TEST_CASE("Lengths are set by digits, halved, doubled and dotted", "[typing]")
{
    CHECK(row(typedAll(rests(1), "g2ga")) == "GG2A2z");
    CHECK(row(typedAll(rests(1), "1/gg")) == "G/2G/2z5");
    CHECK(row(typedAll(rests(1), "1.gg")) == "G3/2G3/2z3");
    CHECK(row(typedAll(rests(1), "1..g")) == "Gz5");
    CHECK(row(typedAll(rests(1), "1**g")) == "G4z2");
    // Of a note that the caret was moved to.
    Typing typing = typedAll(rests(1), "gab");
    typing = stroked(typing, Stroke::BarBefore).typing;
    CHECK(row(typedAll(typing, "2")) == "G2ABz2");
    CHECK(row(typedAll(typing, ".")) == "G3/2ABz5/2");
}

TEST_CASE("Octaves and pitches are changed of the note just typed or at the caret", "[typing]")
{
    CHECK(row(typedAll(rests(1), "ga'")) == "Gaz4");
    CHECK(row(typedAll(rests(1), "ga,b")) == "GA,B,z3");
    Typing typing = typedAll(rests(1), "gab");
    typing = stroked(typing, Stroke::Left).typing;
    typing = stroked(typing, Stroke::Left).typing;
    CHECK(typing.at == NoteAt{0, 1});
    CHECK(row(stroked(typing, Stroke::Up).typing) == "GBBz3");
    CHECK(row(stroked(typing, Stroke::SemitoneDown).typing) == "G_ABz3");
    CHECK(row(stroked(typing, Stroke::OctaveUp).typing) == "GaBz3");
    CHECK(stroked(typing, Stroke::Up).what == "B4 in bar 1");
}

TEST_CASE("Accidentals, ties, triplets and grace notes are typed as in ABC", "[typing]")
{
    CHECK(row(typedAll(rests(1), "g^gg=g")) == "G^GG=Gz2");
    CHECK(row(typedAll(rests(2), "3gg-3g")) == "G3G3- | G3z3");
    CHECK(row(typedAll(rests(1), "g-a")) == "GAz4"); // no tie to another pitch
    CHECK(row(typedAll(rests(1), "(3gab c")) == "(3:2:3GABcz3");
    CHECK(row(typedAll(rests(1), "g{ag}bc")) == "G{AG}Bcz3");
    Typing typing = stroked(typedAll(rests(1), "gab"), Stroke::BarBefore).typing;
    CHECK(row(typedAll(typing, "{a}")) == "{A}GABz3");
}

TEST_CASE("Delete makes a note a rest, and takes a rest out", "[typing]")
{
    Typing typing = typedAll(rests(1), "gabcde");
    typing = withCaret(typing, {0, 1});
    typing = stroked(typing, Stroke::Delete).typing;
    CHECK(row(typing) == "GzBcde");
    typing = stroked(typing, Stroke::Delete).typing;
    CHECK(row(typing) == "GBcdez");
    CHECK(row(stroked(typedAll(rests(1), "gab"), Stroke::BackSpace).typing) == "GAzz3");
    CHECK(stroked(rests(1), Stroke::BackSpace).what.empty());
}

TEST_CASE("What is played on a string is written, and the next bar is one key away", "[typing]")
{
    Typing typing = played(rests(2), *music::pitchFrom("F#5")).typing;
    CHECK(row(typing) == "fz5 | z6");
    typing = typed(typing, '|').typing;
    CHECK(typing.at == NoteAt{1, 0});
    CHECK(row(typedAll(rests(3), "3gb|2g|3b")) == "G3B3 | G2z4 | B3z3");
    CHECK(typed(typing, '?').typing == typing);
    CHECK(typed(typing, '2').what.empty());
}

TEST_CASE("Lengths have names", "[typing]")
{
    CHECK(lengthWords(Length{Rational(1, 8)}) == "quaver");
    CHECK(lengthWords(Length{Rational(3, 8)}) == "dotted crotchet");
    CHECK(lengthWords(Length{Rational(5, 8)}) == "5/8 of a whole note");
}

TEST_CASE("One bar is read from a line of ABC, and faults have their column", "[typing]")
{
    Bar bar = rests(1).tune.bars[0];
    auto const read = files::barFromAbc("GA^B (3cde f", bar);
    REQUIRE(read);
    CHECK(read->notes.size() == 7);
    CHECK(read->notes[6].pitches[0] == *music::pitchFrom("F#5"));
    CHECK(read->tuplets.size() == 1);
    bar.notes = read->notes;
    bar.tuplets = read->tuplets;
    CHECK(files::abcOfBar(bar) == "GA^B (3:2:3cde f");
    CHECK(files::barFromAbc("", bar).error().place == "column 1");
    CHECK(files::barFromAbc("z6", bar));
    auto const two = files::barFromAbc("GAB|cde", bar);
    REQUIRE_FALSE(two);
    CHECK(two.error().place == "column 5");
    auto const bad = files::barFromAbc("GA\"Hq\"B", bar);
    if (!bad) CHECK(bad.error().place.starts_with("column "));
    auto const odd = files::barFromAbc("GA?B", bar);
    REQUIRE(odd);
    CHECK(odd->said.starts_with("column 3"));
}
