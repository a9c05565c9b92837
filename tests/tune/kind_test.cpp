#include "core/tune/kind.h"
#include "tests/tune/bars.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Meter;
using music::Rational;

namespace {

// Eight bars of notes of these lengths, the last of them as it is said.
Tune strain(Meter meter, std::vector<Rational> const& lengths,
            std::vector<Rational> const& last = {})
{
    Tune out;
    out.meter = meter;
    constexpr int count = 8;
    for (int b = 0; b < count; ++b) {
        Bar bar;
        bar.meter = meter;
        Rational at{0};
        bool const closes = b + 1 == count && !last.empty();
        for (Rational const length : closes ? last : lengths) {
            bar.notes.push_back(bars::note(at, length, 35));
            at = at + length;
        }
        bar.length = Length{at};
        out.bars.push_back(std::move(bar));
    }
    out.bars.back().closes = BarLine::Final;
    return out;
}

std::vector<Rational> times(int count, Rational length)
{
    return std::vector<Rational>(static_cast<std::size_t>(count), length);
}

} // namespace

TEST_CASE("A tune is the dance that its rhythm field names, then the one in its title", "[kind]")
{
    Tune tune = strain({4, 4}, times(4, {1, 4}));
    tune.title = "A March of Nobody's";
    CHECK(kindOf(tune) == Kind::March);
    tune.rhythm = "Slow Air";
    CHECK(kindOf(tune) == Kind::Air);
}

TEST_CASE("A word inside another is no dance, nor one that does not fit the meter", "[kind]")
{
    Tune tune = strain({3, 4}, times(3, {1, 4}));
    tune.title = "The Fair at No Place"; // no air
    CHECK(kindOf(tune) == Kind::Waltz);
    tune.title = "The Reel of No Place"; // no reel goes in three
    CHECK(kindOf(tune) == Kind::Waltz);
}

TEST_CASE("Meter and notes tell the kind where no word does", "[kind]")
{
    // Counts a bar over labelled tunes of tune books: reel 7.5, march 4, jig 5.7, waltz 3.
    CHECK(kindOf(strain({4, 4}, times(8, {1, 8}))) == Kind::Reel);
    CHECK(kindOf(strain({4, 4}, times(4, {1, 4}))) == Kind::March);
    CHECK(kindOf(strain({6, 8}, times(6, {1, 8}))) == Kind::Jig);
    CHECK(kindOf(strain({9, 8}, times(9, {1, 8}))) == Kind::SlipJig);
    CHECK(kindOf(strain({2, 4}, times(4, {1, 8}))) == Kind::Polka);
    CHECK(kindOf(strain({3, 2}, times(3, {1, 2}))) == Kind::TripleHornpipe);
    CHECK(kindOf(strain({5, 4}, times(5, {1, 4}))) == Kind::Other);
    CHECK(kindOf(strain({6, 8}, {{1, 4}, {1, 8}, {1, 4}, {1, 8}})) == Kind::SingleJig);
}

TEST_CASE("Snaps make a strathspey, dots or three even crotchets at the close a hornpipe",
          "[kind]")
{
    std::vector<Rational> const snap{{1, 16}, {3, 16}, {1, 4}, {1, 16}, {3, 16}, {1, 4}};
    CHECK(kindOf(strain({4, 4}, snap)) == Kind::Strathspey);
    std::vector<Rational> dotted;
    for (int beat = 0; beat < 4; ++beat) {
        dotted.emplace_back(3, 16);
        dotted.emplace_back(1, 16);
    }
    CHECK(kindOf(strain({4, 4}, dotted)) == Kind::Hornpipe);
    CHECK(kindOf(strain({4, 4}, times(8, {1, 8}), times(4, {1, 4}))) == Kind::Hornpipe);
}

TEST_CASE("A reel in quavers is counted in minims, not in crotchets", "[kind]")
{
    Tune const reel = strain({4, 4}, times(8, {1, 8}));
    CHECK(usualTempo(reel).beat == Length{Rational(1, 2)});
    CHECK(usualTempo(reel).beatsPerMinute == 55);
}

TEST_CASE("Tied notes are one note where a tune is told by how many it has", "[kind]")
{
    // Four crotchets a bar, each written as two quavers tied: heard, it is a march and no reel.
    Tune tied = strain({4, 4}, times(8, {1, 8}));
    for (Bar& bar : tied.bars)
        for (NoteIndex i = 0; i < bar.notes.size(); i += 2) bar.notes[i].tied = true;
    CHECK(kindOf(tied) == Kind::March);
    CHECK(usualTempo(tied) == usualTempo(strain({4, 4}, times(4, {1, 4}))));
    // Waltz bars of six quavers would be an air; over the bar line, too, a tie is no new note.
    Tune waltz = strain({3, 4}, times(6, {1, 8}));
    CHECK(kindOf(waltz) == Kind::Air);
    for (Bar& bar : waltz.bars) bar.notes.back().tied = true;
    CHECK(kindOf(waltz) == Kind::Waltz);
    // Other pitches are no ties.
    for (Bar& bar : tied.bars)
        for (NoteIndex i = 1; i < bar.notes.size(); i += 2) bar.notes[i].pitches[0].octave += 1;
    CHECK(kindOf(tied) == Kind::Reel);
}

TEST_CASE("A dance keeps its pulse and an air has none", "[kind]")
{
    CHECK(pulseOf(Kind::Waltz, {3, 4}) == Length{Rational(1, 4)});
    CHECK(pulseOf(Kind::Jig, {6, 8}) == Length{Rational(3, 8)});
    CHECK(pulseOf(Kind::Reel, {4, 4}) == Length{Rational(1, 2)});
    CHECK_FALSE(pulseOf(Kind::Air, {3, 4}));
}
