#include "core/tune/playing.h"
#include "tests/tune/bars.h"

#include <catch2/catch.hpp>

using namespace tune;
using music::Length;
using music::Rational;

namespace {

ChordMark mark(std::string const& symbol, Rational at = 0, std::optional<int> pass = {})
{
    return {{at}, *music::chordFrom(symbol), symbol, pass};
}

// "0@1/2+1/2 G": bar, place, length and chord of each span, with the pass where it has one.
std::vector<std::string> told(Tune const& tune)
{
    std::vector<std::string> out;
    for (ChordSpan const& span : chordSpans(tune)) {
        std::string line = std::to_string(span.bar) + '@' + text(span.at.wholes) + '+' +
                           text(span.length.wholes) + ' ' + plain(span.chord);
        if (span.pass) line += " pass " + std::to_string(*span.pass);
        out.push_back(line);
    }
    return out;
}

using Told = std::vector<std::string>;

} // namespace

TEST_CASE("A chord lasts over bar lines and gives one span a bar", "[chordspans]")
{
    Tune tune = bars::plain(2);
    tune.bars[0].chords = {mark("G")};
    CHECK(told(tune) == Told{"0@0+1 G", "1@0+1 G"});
}

TEST_CASE("Bars before the first chord have no span", "[chordspans]")
{
    Tune tune = bars::plain(2);
    tune.bars[1].chords = {mark("D7", Rational(1, 2))};
    CHECK(told(tune) == Told{"1@1/2+1/2 D7"});
}

TEST_CASE("Chords inside a bar split it", "[chordspans]")
{
    Tune tune = bars::plain(1);
    tune.bars[0].chords = {mark("G"), mark("C", Rational(1, 4)), mark("D", Rational(3, 4))};
    CHECK(told(tune) == Told{"0@0+1/4 G", "0@1/4+1/2 C", "0@3/4+1/4 D"});
}

TEST_CASE("Stacked chords stand for the first and for the second time", "[chordspans]")
{
    // Two symbols over one note, as in an old folk tune collection.
    Tune tune = bars::plain(2);
    tune.bars[0].chords = {mark("C", 0, 1), mark("Em", 0, 2)};
    tune.bars[1].chords = {mark("G")};
    CHECK(told(tune) == Told{"0@0+1 C pass 1", "0@0+1 Em pass 2", "1@0+1 G"});
}

TEST_CASE("A chord for the second time alone leaves the first time as it was", "[chordspans]")
{
    Tune tune = bars::plain(1);
    tune.bars[0].chords = {mark("Em"), mark("G", Rational(1, 2), 2)};
    CHECK(told(tune) == Told{"0@0+1 Em pass 1", "0@0+1/2 Em pass 2", "0@1/2+1/2 G pass 2"});
}

TEST_CASE("A second ending that says nothing begins with the chord that opens the first",
          "[chordspans]")
{
    // Common practice, no source: the last bars of both times mostly end alike.
    Tune tune = bars::plain(3);
    tune.bars[0].chords = {mark("D7")};
    tune.bars[1].chords = {mark("G"), mark("Am", Rational(3, 4))};
    tune.bars[1].endings = {1};
    tune.bars[1].repeatCloses = true;
    tune.bars[2].endings = {2};
    CHECK(told(tune) == Told{"0@0+1 D7", "1@0+3/4 G", "1@3/4+1/4 Am", "2@0+1 G"});
    // Where the first goes on from before, so does the second.
    tune.bars[1].chords = {mark("A7", Rational(1, 2))};
    CHECK(told(tune) == Told{"0@0+1 D7", "1@0+1/2 D7", "1@1/2+1/2 A7", "2@0+1 D7"});
}

TEST_CASE("The endings of a later strain go on with the chord of that strain", "[chordspans]")
{
    Tune tune = bars::plain(5);
    tune.bars[0].chords = {mark("G")};
    tune.bars[0].endings = {1};
    tune.bars[0].repeatCloses = true;
    tune.bars[1].endings = {2};
    tune.bars[1].endingCloses = true;
    tune.bars[2].chords = {mark("Em")};
    tune.bars[3].chords = {mark("D")};
    tune.bars[3].endings = {1};
    tune.bars[3].repeatCloses = true;
    tune.bars[4].endings = {2};
    CHECK(told(tune) == Told{"0@0+1 G", "1@0+1 G", "2@0+1 Em", "3@0+1 D", "4@0+1 D"});
}

TEST_CASE("A first-time chord stands again when the part comes back", "[chordspans]")
{
    CHECK(standsOn(std::nullopt, 3));
    CHECK(standsOn(1, 1));
    CHECK_FALSE(standsOn(1, 2));
    CHECK(standsOn(1, 3));
    CHECK(standsOn(2, 4));
}
