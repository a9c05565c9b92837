// Melodies played in time come back as they are written. The tunes are invented; the scatter of
// a practised player, about 30 ms, is our judgement (core/perform/playalong.h has the same).
#include "core/files/abc/onebar.h"
#include "core/files/abc/read.h"
#include "core/tune/edit/take.h"
#include "core/tune/edit/whole.h"

#include <catch2/catch.hpp>

#include <random>

using namespace tune;
using music::Length;
using music::Rational;

namespace {

Tune tuneOf(std::string const& head, std::string const& notes)
{
    std::string const abc = "X:1\nT:The Kiln Door\nL:1/8\n" + head + "\n" + notes + "\n";
    return *files::readAbc(abc, files::abcTunes(abc)->front(), "test");
}

// The onsets of a tune as it stands, repeats not played out, in seconds from its first full
// bar.
std::vector<HeardNote> playedExactly(Tune const& tune, double secondsAWhole)
{
    std::vector<HeardNote> out;
    bool const pickUp = pickUpOf(tune).has_value();
    Length at = pickUp ? Length{} - tune.bars.front().length : Length{};
    bool tied = false;
    for (Bar const& bar : tune.bars) {
        for (Note const& note : bar.notes) {
            bool const goesOn = std::exchange(tied, note.tied);
            if (!goesOn && !note.pitches.empty())
                out.push_back({(at + note.at).wholes.toDouble() * secondsAWhole, std::nullopt,
                               music::midi(note.pitches.back())});
        }
        at = at + bar.length;
    }
    return out;
}

std::vector<HeardNote> scattered(std::vector<HeardNote> notes, double sigma, double late,
                                 unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> off(0, sigma);
    for (HeardNote& note : notes) note.at += late + (sigma > 0 ? off(random) : 0.0);
    return notes;
}

// A new tune of rests that it is played into.
Tune blankLike(Tune const& tune)
{
    NewTune wish;
    wish.key = tune.key;
    wish.meter = tune.meter;
    wish.bars = 2;
    return newTune(wish);
}

std::vector<std::string> barsOf(Tune const& tune)
{
    std::vector<std::string> out;
    for (Bar const& bar : tune.bars) {
        out.push_back(files::abcOfBar(bar));
        std::erase(out.back(), ' '); // where beams are broken is not played
    }
    return out;
}

std::vector<std::string> again(Tune const& tune, double wholeSeconds, double sigma, double late,
                               unsigned seed)
{
    Taken const taken =
        quantised(scattered(playedExactly(tune, wholeSeconds), sigma, late, seed), tune.meter,
                  wholeSeconds);
    return barsOf(withTaken(blankLike(tune), 0, taken));
}

struct Melody {
    char const* head;
    char const* notes;
    double secondsAWhole; // a learner's tempo, at which one plays in
};
Melody const melodies[] = {
    {"M:6/8\nK:G", "GAB d2B|ABc e2c|dBG A>BA|G3 D2E|GAB d2e|dBA G3|]", 2.4},
    {"M:6/8\nK:D", "A|dfa afd|gfe d2A|Bcd edc|d3 d2|]", 2.4},
    {"M:4/4\nK:D", "d2fd Adfd|e4 c2A2|d3e f2ed|(3cdc B2 A4|BcdB A2FA|d8|]", 2.6},
    {"M:3/4\nK:Ador", "A2|e4 d2|c2 B3 A|G2 B4|A6|(3ABc d2 e2|a4|]", 2.8},
    {"M:2/4\nK:G", "G2 AB|c>B A2|G/A/B/c/ d2|e2 d2|B2 G2|]", 2.8},
    {"M:9/8\nK:Em", "EGB e2B d2B|efe dBA B3|GBd g2e dBA|E3-E6|]", 2.4},
    {"M:C|\nK:G", "GABd g2fg|edBd e2dB|A2FA dAFA|G2BG G4|]", 2.6},
    {"M:5/4\nK:C", "c2 d2 e2 f2 g2|a4 g2 e4|c2-c8|]", 2.8},
};

} // namespace

TEST_CASE("What is played just in time is written as it was", "[take]")
{
    for (Melody const& melody : melodies) {
        Tune const tune = tuneOf(melody.head, melody.notes);
        CAPTURE(melody.head);
        CHECK(again(tune, melody.secondsAWhole, 0, 0, 1) == barsOf(tune));
        // All of it behind the clicks, by the sound's way through the machine and the hands.
        CHECK(again(tune, melody.secondsAWhole, 0, 0.09, 1) == barsOf(tune));
    }
}

TEST_CASE("With 30 ms of scatter nearly every bar comes back as it is written", "[take]")
{
    int right = 0;
    int all = 0;
    for (unsigned seed = 1; seed <= 40; ++seed)
        for (Melody const& melody : melodies) {
            Tune const tune = tuneOf(melody.head, melody.notes);
            auto const wanted = barsOf(tune);
            auto const got = again(tune, melody.secondsAWhole, 0.030, 0.04, seed);
            all += static_cast<int>(wanted.size());
            for (std::size_t i = 0; i < wanted.size() && i < got.size(); ++i)
                right += got[i] == wanted[i] ? 1 : 0;
        }
    double const rate = static_cast<double>(right) / all;
    CAPTURE(right, all, rate);
    CHECK(rate > 0.96);
}

TEST_CASE("A triplet is told from halves and quarters of the beat", "[take]")
{
    // A crotchet lasts 0.6 s.
    auto const in = [](std::vector<double> const& at) {
        std::vector<HeardNote> played;
        for (double const each : at) played.push_back({each, std::nullopt, 67});
        return quantised(played, {4, 4, false}, 2.4);
    };
    Taken const thirds = in({0, 0.21, 0.39, 0.6});
    CHECK(thirds.triplets == 1);
    CHECK(thirds.notes[1].at == Length{Rational(1, 12)});
    Taken const halves = in({0, 0.29, 0.6});
    CHECK(halves.triplets == 0);
    CHECK(halves.notes[1].at == Length{Rational(1, 8)});
    Taken const quarters = in({0, 0.15, 0.3, 0.45, 0.6});
    CHECK(quarters.triplets == 0);
    CHECK(quarters.notes[3].at == Length{Rational(3, 16)});
}

TEST_CASE("Of strings plucked together the highest is the tune, and a key let go leaves a rest",
          "[take]")
{
    std::vector<HeardNote> const played{{0, 0.55, 55}, {0.01, 0.58, 67}, {1.2, 1.21, 69}};
    Taken const taken = quantised(played, {4, 4, false}, 2.4);
    REQUIRE(taken.notes.size() == 2);
    CHECK(taken.leftOut == 1);
    CHECK(taken.notes[0].midi == 67);
    CHECK(taken.notes[0].length == Length{Rational(1, 4)}); // let go after a crotchet
    CHECK(taken.notes[1].at == Length{Rational(1, 2)});
    CHECK(taken.notes[1].length == Length{Rational(1, 2)}); // a harp's key is let go at once
}

TEST_CASE("What is played into a tune takes the place of its bars alone", "[take]")
{
    Tune const before = tuneOf("M:4/4\nK:G", "G4 B4|A4 c4|B4 d4|G8|]");
    std::vector<HeardNote> played;
    for (int i = 0; i < 4; ++i) played.push_back({0.6 * i, std::nullopt, 74});
    Tune const tune = withTaken(before, 1, quantised(played, {4, 4, false}, 2.4));
    CHECK(barsOf(tune) == std::vector<std::string>{"G4B4", "d2d2d2d2", "B4d4", "G8"});
    SECTION("with a pick-up at the end of the bar before")
    {
        played.insert(played.begin(), {-0.6, std::nullopt, 72});
        CHECK(barsOf(withTaken(before, 1, quantised(played, {4, 4, false}, 2.4))) ==
              std::vector<std::string>{"G4B2c2", "d2d2d2d2", "B4d4", "G8"});
    }
    SECTION("on beyond the end")
    {
        Tune const longer =
            withTaken(before, 3, quantised(playedExactly(before, 2.4), {4, 4, false}, 2.4));
        CHECK(longer.bars.size() == 7);
    }
}

TEST_CASE("Nothing played, and notes beyond any sense, are taken without harm", "[take]")
{
    CHECK(quantised({}, {4, 4, false}, 2.4).notes.empty());
    CHECK(quantised({{0, std::nullopt, 60}}, {4, 4, false}, 0).notes.empty());
    std::mt19937 random(3);
    for (int round = 0; round < 60; ++round) {
        std::vector<HeardNote> played;
        for (int i = 0; i < 120; ++i)
            played.push_back({static_cast<double>(random() % 12000) / 1000 - 1, std::nullopt,
                              static_cast<int>(40 + random() % 50)});
        music::Meter const meter =
            round % 2 ? music::Meter{6, 8, false} : music::Meter{3, 4, false};
        Taken const taken = quantised(played, meter, 2.4);
        for (std::size_t i = 1; i < taken.notes.size(); ++i)
            REQUIRE(taken.notes[i].at >= taken.notes[i - 1].at + taken.notes[i - 1].length);
        NewTune wish;
        wish.meter = meter;
        Tune const tune = withTaken(newTune(wish), 0, taken);
        for (Bar const& bar : tune.bars) {
            Length sum;
            for (Note const& note : bar.notes) {
                REQUIRE(note.at == sum);
                sum = sum + note.length;
            }
            REQUIRE(sum == bar.length);
        }
    }
}
