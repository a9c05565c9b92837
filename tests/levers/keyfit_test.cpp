#include "core/levers/keyfit.h"

#include "core/levers/leverplan.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"
#include "tests/levers/timeline.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using levers::KeyFit;
using lines::level;
using lines::major;

namespace {

constexpr tune::Tempo slow{{music::Rational(1, 4)}, 60};

std::vector<KeyFit> fitsOf(tune::Tune const& tune, harp::Harp const& harp)
{
    return levers::keyFits(tune, harp, slow, level(1));
}

KeyFit movedBy(std::vector<KeyFit> const& fits, int semitones)
{
    auto const fit = std::find_if(fits.begin(), fits.end(), [semitones](KeyFit const& f) {
        return f.moved.semitones == semitones;
    });
    REQUIRE(fit != fits.end());
    return *fit;
}

tune::Tune plainTune(std::string_view key)
{
    return lines::tune("D5:1/4 E5:1/4 F#5:1/4 G5:1/4 | A5:1/2 D5:1/2 |", major(key));
}

} // namespace

TEST_CASE("A tune that lies well stays in its written key and octave", "[levers]")
{
    auto const fits = fitsOf(plainTune("D"), example::floor34());
    CHECK(fits.front().possible);
    CHECK(fits.front().key == major("D"));
    CHECK(fits.front().moved == music::Interval{0, 0});
    CHECK(fits.front().flips == 0);
    CHECK(fits.front().roomBelow == 22); // C2 to C5 are 22 strings
}

TEST_CASE("An E flat harp offers a major tune in eight keys and no other", "[levers]")
{
    // E flat B flat F C G D A E [trade-1.4].
    std::set<std::string> keys;
    for (KeyFit const& fit : fitsOf(plainTune("D"), example::floor34()))
        if (fit.possible) keys.insert(plain(fit.key));
    CHECK(keys == std::set<std::string>{"Eb", "Bb", "F", "C", "G", "D", "A", "E"});
}

TEST_CASE("Every move from an octave and a half below to as far above is judged once",
          "[levers]")
{
    auto const fits = fitsOf(plainTune("D"), example::floor34());
    std::set<int> moves;
    for (KeyFit const& fit : fits) moves.insert(fit.moved.semitones);
    CHECK(moves.size() == fits.size());
    CHECK(*moves.begin() == -18);
    CHECK(*moves.rbegin() == 18);
}

TEST_CASE("A tune written beyond the tuning moves to a key near it", "[levers]")
{
    // A flat major is one flat too many for E flat tuning; G, A and B flat lie within a tone.
    auto const tune = lines::tune("Ab4:1/4 C5:1/4 Db5:1/4 Eb5:1/4 | Ab5:1/1 |", major("Ab"));
    auto const fits = fitsOf(tune, example::floor34());
    CHECK(fits.front().possible);
    CHECK(std::abs(fits.front().moved.semitones) <= 2);
    KeyFit const written = movedBy(fits, 0);
    CHECK_FALSE(written.possible);
    REQUIRE(written.why);
    CHECK(written.why->code == base::FaultCode::KeyBeyondTuning);
}

TEST_CASE("A key is respelt where only the other spelling lies within the levers", "[levers]")
{
    // C tuning gives C sharp major, all levers up, but no D flat major [trade-1.4].
    auto const harp = example::harp(example::c2, example::a6, {music::Letter::C, 0});
    auto const tune = lines::tune("Db5:1/4 Eb5:1/4 F5:1/2 |", major("Db"));
    KeyFit const fit = movedBy(fitsOf(tune, harp), 0);
    CHECK(fit.possible);
    CHECK(fit.key == major("C#"));
    CHECK(fit.moved == music::Interval{-1, 0});
}

TEST_CASE("Moving by a fifth keeps the spelling of the tune's degrees", "[levers]")
{
    KeyFit const fit = movedBy(fitsOf(plainTune("D"), example::floor34()), -7);
    CHECK(fit.key == major("G"));
    CHECK(fit.moved == music::Interval{-4, -7});
}

TEST_CASE("Minor and modal tunes keep their mode when they move", "[levers]")
{
    auto tune = lines::tune("E5:1/4 F#5:1/4 G5:1/4 A5:1/4 |", *music::keyFrom("Edor"));
    for (KeyFit const& fit : fitsOf(tune, example::floor34()))
        CHECK(fit.key.mode == music::Mode::Dorian);
}

TEST_CASE("A low tune on a small harp moves up to leave the left hand room", "[levers]")
{
    // 22 strings from C3 [trade-1.1]; at its written place the tune leaves four strings below.
    auto const harp =
        example::harp({music::Letter::C, 0, 3}, {music::Letter::C, 0, 6}, example::eFlat);
    auto const tune = lines::tune("G3:1/4 A3:1/4 B3:1/4 D4:1/4 |", major("G"));
    auto const fits = fitsOf(tune, harp);
    CHECK(fits.front().moved == music::Interval{7, 12});
    CHECK(fits.front().roomBelow == 11);
    CHECK(movedBy(fits, 0).roomBelow == 4);
}

TEST_CASE("Another key wins only where the written one asks for many flips", "[levers]")
{
    // C natural and C sharp in turn: E flat harps have G sharp and A flat on two strings, so
    // that a fifth lower or higher no lever moves.
    auto const tune =
        lines::tune("C5:1/2 C#5:1/2 | C5:1/2 C#5:1/2 | C5:1/2 C#5:1/2 | C5:1/1 |", major("C"));
    auto const fits = fitsOf(tune, example::floor34());
    CHECK(fits.front().flips == 0);
    CHECK(fits.front().key != major("C"));
    CHECK(movedBy(fits, 0).flips == 6);
    // A single accidental is no reason to leave the key.
    auto const once = lines::tune("C5:1/2 D5:1/2 | C#5:1/2 D5:1/2 |", major("C"));
    CHECK(fitsOf(once, example::floor34()).front().moved == music::Interval{});
}

TEST_CASE("What a fit promises is what the moved tune's plan gives", "[levers]")
{
    auto const harp = example::floor34();
    auto const tune =
        lines::tune("C5:1/2 D5:1/2 | C#5:1/2 D5:1/2 | C5:1/4 Bb4:1/4 A4:1/2 |", major("F"));
    for (KeyFit const& fit : fitsOf(tune, harp)) {
        CAPTURE(fit.moved.semitones);
        auto const moved = tune::transposed(tune, fit.moved);
        CHECK(moved.key == fit.key);
        auto const plan = lines::timelineFor(harp, moved, tune::played(moved), slow, level(1));
        REQUIRE(bool(plan) == fit.possible);
        if (!plan) {
            CHECK(plan.error() == *fit.why);
            continue;
        }
        CHECK(static_cast<int>(plan->flips.size()) == fit.flips);
        CHECK(plan->setup == fit.setup);
    }
}
