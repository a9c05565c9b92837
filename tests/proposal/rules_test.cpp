#include "core/proposal/rules.h"
#include "tests/proposal/scenario.h"

#include <catch2/catch.hpp>

#include <algorithm>

// Each rule is broken by hand in an arrangement that keeps them all.

using namespace proposal;
using music::Length;
using music::Rational;

namespace {

arrange::Arrangement sound()
{
    return scenario::proposed(scenario::briefFor(scenario::eightBars)).arrangement;
}

bool breaks(arrange::Arrangement const& arrangement, std::string const& part)
{
    auto const broken = brokenRules(arrangement, scenario::tables().book);
    return std::any_of(broken.begin(), broken.end(), [&](std::string const& sentence) {
        return sentence.find(part) != std::string::npos;
    });
}

// The first position is given two notes at its start, from string 5 up by so many strings.
arrange::Arrangement withPair(int gaps, int lowFinger, int highFinger, int rollOrder = 0)
{
    arrange::Arrangement a = sound();
    arrange::Voicing& voicing = a.positions[0].voicing;
    Length const held{Rational(1, 4)};
    voicing = {"1-8", 4, "test", rollOrder > 0, {}};
    voicing.notes.push_back({{}, held, 4, lowFinger, 1, rollOrder});
    voicing.notes.push_back({{},
                             held,
                             harp::StringIndex(4 + gaps),
                             highFinger,
                             1 + gaps,
                             rollOrder > 0 ? rollOrder + 1 : 0});
    return a;
}

} // namespace

TEST_CASE("An arrangement from the solver breaks no rule before it is tampered with", "[rules]")
{
    CHECK(brokenRules(sound(), scenario::tables().book) == std::vector<std::string>{});
    CHECK(brokenRules(withPair(7, 4, 1), scenario::tables().book) ==
          std::vector<std::string>{});
}

TEST_CASE("A left-hand note beyond either end of the strings is found", "[rules]")
{
    arrange::Arrangement a = withPair(7, 4, 1);
    a.positions[0].voicing.notes[0].string = -1;
    CHECK(breaks(a, "bar 1, time 1: left hand: there is no string 0"));
    a.positions[0].voicing.notes[0].string = 34;
    CHECK(breaks(a, "there is no string 35"));
}

TEST_CASE("A lever that stands otherwise than the tune needs is found", "[rules]")
{
    arrange::Arrangement a = sound();
    for (auto& lever : a.levers.setup) lever = harp::Lever::Down;
    CHECK(breaks(a, "is missing")); // the tune no longer sounds as written
}

TEST_CASE("Two notes at once wider than the hand are found, and not when narrow", "[rules]")
{
    CHECK(breaks(withPair(13, 4, 1), "mm apart"));
    CHECK_FALSE(breaks(withPair(7, 4, 1), "mm apart"));
    // Fingers 2 and 1 reach seven gaps of 15 mm at most (trade 3.2), the bass strings lie
    // wider than that.
    CHECK(breaks(withPair(7, 2, 1), "beyond 105 for fingers 2 and 1"));
}

TEST_CASE("A shape wider than the level is found even when broken", "[rules]")
{
    arrange::Arrangement a = withPair(10, 4, 1);
    a.positions[0].voicing.notes[1].at = Length{Rational(1, 2)};
    CHECK(breaks(a, "11 strings wide"));
}

TEST_CASE("The thumb lies on the highest string of what is plucked together", "[rules]")
{
    CHECK(breaks(withPair(7, 1, 4), "finger 1 on string 5 under finger 4"));
    CHECK(breaks(withPair(7, 2, 2), "under finger 2"));
}

TEST_CASE("A roll of a pattern that is not rolled is found", "[rules]")
{
    arrange::Arrangement a = withPair(7, 4, 1, 1);
    a.positions[0].voicing.pattern = "no such pattern";
    CHECK(breaks(a, "not a pattern to roll"));
}

TEST_CASE("Notes faster than the level are found", "[rules]")
{
    arrange::Arrangement a = withPair(7, 4, 1);
    a.positions[0].voicing.notes[1].at = Length{Rational(1, 32)};
    CHECK(breaks(a, "between two notes"));
}

TEST_CASE("A string plucked again too soon is found", "[rules]")
{
    arrange::Arrangement a = withPair(0, 4, 2);
    // Level 3 plays one string 2.5 times a second: 0.4 s. An eighth at 80 lasts 0.375 s.
    a.positions[0].voicing.notes[1].at = Length{Rational(1, 8)};
    CHECK(breaks(a, "string 5 again after 0.38 s"));
}

TEST_CASE("A leap of an octave without the time for it is found", "[rules]")
{
    arrange::Arrangement a = sound();
    // From string 5 on the last quaver of bar 1 to string 13 on the first of bar 2: 0.375 s at
    // 80 crotchets, where level 3 wants 0.5 s and not less than four fifths of it.
    Length const quaver{Rational(1, 8)};
    a.positions[0].voicing = {
        "1", 4, "test", false, {{Length{Rational(7, 8)}, quaver, 4, 4, 1, 0}}};
    a.positions[1].voicing = {"1", 12, "test", false, {{{}, quaver, 12, 4, 1, 0}}};
    CHECK(breaks(a, "bar 2, time 1: left hand: a leap of an octave in 0.38 s"));
    a.positions[1].voicing.notes[0].at = quaver;
    CHECK_FALSE(breaks(a, "a leap of an octave"));
}

TEST_CASE("One string plucked twice at once is found", "[rules]")
{
    CHECK(breaks(withPair(0, 4, 2), "string 5 is plucked twice at once"));
}

TEST_CASE("Crossed hands are found", "[rules]")
{
    arrange::Arrangement a = sound();
    // The tune begins on G5, string 26 of 34 from C2.
    a.positions[0].voicing = {
        "1", 27, "test", false, {{{}, Length{Rational(1, 4)}, 27, 2, 1, 0}}};
    CHECK(breaks(a, "the hands are crossed: left on string 28, right on 26"));
}

TEST_CASE("A pluck by the hand that turns a lever is found, and a counted note that changes",
          "[rules]")
{
    arrange::Arrangement a = withPair(7, 4, 1);
    harp::Flip flip;
    flip.at = music::Moment{Rational(1, 8)};
    flip.freeFrom = music::Moment{Rational(-1, 8)};
    flip.freeTo = music::Moment{Rational(1, 4)};
    flip.string = 4; // its note is counted to 1/4
    flip.to = a.levers.setup[4] == harp::Lever::Up ? harp::Lever::Down : harp::Lever::Up;
    a.levers.flips = {flip};
    CHECK(breaks(a, "plucked by the hand that flips the lever of string 5"));
    CHECK(breaks(a, "the lever of string 5 is flipped while its note is counted"));
}

TEST_CASE("A note taken from the tune or added to it is found", "[rules]")
{
    arrange::Arrangement a = sound();
    a.playing.notes.erase(a.playing.notes.begin());
    CHECK(breaks(a, "is missing"));
    a = sound();
    a.playing.notes.push_back(a.playing.notes.back());
    a.playing.notes.back().pitch.octave -= 1;
    CHECK(breaks(a, "is not a note of the tune"));
}
