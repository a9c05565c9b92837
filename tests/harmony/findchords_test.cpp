#include "core/harmony/findchords.h"
#include "core/tune/chordorigin.h"
#include "core/tune/playing.h"
#include "tests/harmony/tunes.h"

#include <catch2/catch.hpp>

using namespace harmony;
using music::Length;
using music::Rational;

namespace {

std::string row(Suggestion const& found)
{
    std::string out;
    for (FoundChord const& chord : found.chords)
        out += (chord.unit.opensBar ? "|" : " ") + plain(chord.chord);
    return out;
}

} // namespace

TEST_CASE("A plain jig in G closes on D and G, and begins and ends at home", "[chords]")
{
    // Common practice: a strain in major begins on I and closes V I.
    Suggestion const found = suggestChords(scenes::learned(), scenes::jig());
    REQUIRE(found.chords.size() == 32);
    INFO(row(found));
    CHECK(plain(found.chords.front().chord) == "G");
    CHECK(plain(found.chords[13].chord) == "D");
    CHECK(plain(found.chords[14].chord) == "G");
    CHECK(plain(found.chords.back().chord) == "G");
}

TEST_CASE("Found chords stand in the tune as found, one where each begins", "[chords]")
{
    tune::Tune const tune = withFoundChords(scenes::learned(), scenes::jig());
    REQUIRE(hasChords(tune));
    for (tune::Bar const& bar : tune.bars)
        for (tune::ChordMark const& mark : bar.chords) {
            CHECK(originOf(mark) == tune::ChordOrigin::Found);
        }
    // Every full bar has a chord from its first beat, so that no span is silent.
    for (tune::BarIndex i = 1; i < tune.bars.size(); ++i) {
        if (tune.bars[i].upbeat.wholes > Rational(0)) continue;
        auto const spans = tune::chordSpans(tune);
        CHECK(std::any_of(spans.begin(), spans.end(), [i](tune::ChordSpan const& span) {
            return span.bar == static_cast<int>(i) && span.at == Length{};
        }));
    }
    // To look again changes nothing.
    CHECK(withFoundChords(scenes::learned(), tune) == tune);
}

TEST_CASE("Chords that the arranger has set stay and pull their neighbours along", "[chords]")
{
    tune::Tune tune = withFoundChords(scenes::learned(), scenes::jig());
    music::Chord const set = *music::chordFrom("Em7");
    tune.bars[5].chords = {tune::chordMark({}, set, tune::ChordOrigin::Set)};
    tune::Tune const again = withFoundChords(scenes::learned(), tune);
    REQUIRE_FALSE(again.bars[5].chords.empty());
    CHECK(again.bars[5].chords.front().chord == set);
    CHECK(originOf(again.bars[5].chords.front()) == tune::ChordOrigin::Set);
    Suggestion const found = suggestChords(scenes::learned(), tune);
    CHECK(found.chords[8].kept);
    CHECK(found.chords[8].sure() > 0.99);
    CHECK(std::find(found.leastSure.begin(), found.leastSure.end(), 8) == found.leastSure.end());
}

TEST_CASE("Written chords are set aside unless they are to be kept", "[chords]")
{
    tune::Tune tune = scenes::jig();
    tune.bars[1].chords = {{Length{}, *music::chordFrom("Bb"), "Bb", std::nullopt}};
    CHECK(plain(suggestChords(scenes::learned(), tune).chords[0].chord) != "Bb");
    ChordWishes wishes;
    wishes.keepWritten = true;
    CHECK(plain(suggestChords(scenes::learned(), tune, wishes).chords[0].chord) == "Bb");
}

TEST_CASE("A last bar that says no chord closes at home, where its notes do", "[chords]")
{
    auto const ends = [](char const* body, char const* key = "G") {
        auto const home = homeAtEnd(
            scenes::tuneOf(std::string("X:1\nM:3/4\nL:1/4\nK:") + key + "\n" + body + "\n"));
        return home ? plain(*home) : std::string("none");
    };
    CHECK(ends("\"G\"GBd|\"D7\"cAF|G3|]") == "G");
    CHECK(ends("\"Am\"Ace|\"E7\"e^GB|A3|]", "Am") == "Am");
    CHECK(ends("\"Em\"EGB|\"D\"dAF|E3|]", "Edor") == "Em");
    CHECK(ends("\"D7\"cAF|\"G\"GBd|G3|]") == "none");  // G goes on
    CHECK(ends("\"G\"GBd|\"D7\"cAF|A3|]") == "none");  // not at home
    CHECK(ends("\"G\"GBd|\"D7\"cAF|FG2|]") == "none"); // F sharp is none of its notes
    CHECK(ends("GBd|cAF|G3|]") == "none");
    CHECK(ends("\"G\"GBd|\"D7\"cAF|\"Em\"G3|]") == "none");
}

TEST_CASE("A strain that was left without letters gets chords, the lettered one stays",
          "[chords]")
{
    tune::Tune const jig = scenes::jig();
    auto const lettered = [&jig](tune::BarIndex until) {
        tune::Tune tune = jig;
        for (tune::BarIndex b = 0; b < until; ++b)
            tune.bars[b].chords = {tune::chordMark({}, *music::chordFrom(b % 2 ? "D" : "G"),
                                                   tune::ChordOrigin::Written)};
        return tune;
    };
    tune::BarIndex const bars = jig.bars.beyond();
    REQUIRE(bars >= 16);
    tune::Tune const half = lettered(bars - 8);
    REQUIRE(unletteredBars(half) == std::vector{std::pair{bars - 8, bars - 1}});
    tune::Tune const filled = withUnletteredFilled(scenes::learned(), half);
    for (tune::BarIndex b = 0; b < bars; ++b) {
        if (b < bars - 8) CHECK(filled.bars[b].chords == half.bars[b].chords);
        for (tune::ChordMark const& mark : filled.bars[b].chords)
            CHECK((originOf(mark) == tune::ChordOrigin::Found) == (b >= bars - 8));
    }
    CHECK(plain(filled.bars.back().chords.back().chord) == "G");
    // A tune that is too long for chords to be found is left as it is.
    tune::Tune endless = lettered(bars);
    while (endless.bars.size() < 20'000) endless.bars.push_back(jig.bars[2]);
    endless = withUnletteredFilled(scenes::learned(), std::move(endless));
    CHECK(endless.bars.back().chords.empty());
    // Seven bars may be one chord; a tune with a letter here and there is a drone by choice.
    CHECK(unletteredBars(lettered(bars - 7)).empty());
    CHECK(unletteredBars(lettered(2)).empty());
    CHECK(withUnletteredFilled(scenes::learned(), lettered(bars)) == lettered(bars));
}

TEST_CASE("The ways differ: few plain chords, open fifths, one drone", "[chords]")
{
    tune::Tune const tune = scenes::jig();
    auto const by = [&tune](Way way) {
        ChordWishes wishes;
        wishes.way = way;
        return suggestChords(scenes::learned(), tune, wishes);
    };
    for (FoundChord const& chord : by(Way::Open).chords) CHECK(chord.chord.suffix == "5");
    for (FoundChord const& chord : by(Way::Drone).chords) CHECK(plain(chord.chord) == "G5");
    for (FoundChord const& chord : by(Way::Plainer).chords) {
        std::string const name = plain(chord.chord);
        CHECK((name == "G" || name == "C" || name == "D"));
    }
    CHECK(row(by(Way::Richer)) != row(by(Way::Usual)));
    for (Way way : allWays) CHECK(wayFrom(wayId(way)) == way);
}

TEST_CASE("A chord set in the middle of a half bar leaves the one before it where it was",
          "[chords]")
{
    tune::Tune tune = scenes::tuneOf(
        "X:1\nM:4/4\nL:1/4\nK:G\nGBdB|GBdB|FADF|G4||\n");
    tune = withFoundChords(scenes::learned(), tune);
    music::Chord const set = *music::chordFrom("E7");
    tune.bars[0].chords.push_back(
        tune::chordMark(Length{Rational(3, 4)}, set, tune::ChordOrigin::Set));
    tune::Tune const again = withFoundChords(scenes::learned(), tune);
    REQUIRE(again.bars[0].chords.size() >= 2);
    CHECK(again.bars[0].chords.front().at == Length{});
    CHECK(again.bars[0].chords.back().chord == set);
    // The next bar does not go on with it.
    REQUIRE_FALSE(again.bars[1].chords.empty());
    CHECK(again.bars[1].chords.front().at == Length{});
}

TEST_CASE("Every chord has likely others with reasons, and the least sure come first", "[chords]")
{
    Suggestion const found = suggestChords(scenes::learned(), scenes::jig());
    for (FoundChord const& chord : found.chords) {
        REQUIRE(chord.likely.size() == 5);
        double sum = 0;
        for (std::size_t i = 0; i < chord.likely.size(); ++i) {
            CHECK_FALSE(chord.likely[i].reason.empty());
            if (i > 0) CHECK(chord.likely[i].probability <= chord.likely[i - 1].probability);
            sum += chord.likely[i].probability;
        }
        CHECK(sum <= 1.01);
    }
    for (std::size_t i = 1; i < found.leastSure.size(); ++i)
        CHECK(found.chords[found.leastSure[i - 1]].sure() <=
              found.chords[found.leastSure[i]].sure());
}

TEST_CASE("A dorian tune goes home to its minor tonic and a tone below", "[chords]")
{
    // Practice of teachers [trade-7]: dorian i and VII, without a raised seventh. Invented tune.
    tune::Tune const tune = scenes::tuneOf(
        "X:1\nM:4/4\nL:1/8\nK:Ador\n"
        "A2AB c2BA|G2GA B2AG|A2AB cdec|dBGB A4|A2AB c2BA|G2GA B2AG|EFGA BcdB|cAGB A4||\n");
    Suggestion const found = suggestChords(scenes::learned(), tune);
    INFO(row(found));
    CHECK(plain(found.chords.front().chord) == "Am");
    CHECK(plain(found.chords[2].chord) == "G");
    CHECK(plain(found.chords.back().chord) == "Am");
    for (FoundChord const& chord : found.chords) CHECK(plain(chord.chord) != "E");
}

TEST_CASE("A tune of nothing but a pick-up, of rests, or without bars has no harm done",
          "[chords]")
{
    CHECK(suggestChords(scenes::learned(), tune::Tune{}).chords.empty());
    tune::Tune rests = scenes::tuneOf("X:1\nM:4/4\nL:1/4\nK:C\nC4|C4|\n");
    for (tune::Bar& bar : rests.bars) bar.notes.front().pitches.clear();
    CHECK(suggestChords(scenes::learned(), rests).chords.size() == 4);
}
