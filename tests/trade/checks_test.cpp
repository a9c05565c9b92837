#include "core/files/tables/tables.h"
#include "core/files/textfile.h"
#include "core/harp/hand.h"
#include "core/harp/levers.h"
#include "core/music/pitch.h"
#include "core/perform/schedule.h"
#include "core/sheet/sheet.h"
#include "core/tune/playing.h"
#include "tests/arrange/partials.h"
#include "tests/harp/harps.h"
#include "tests/levers/lines.h"
#include "tests/places.h"
#include "tests/sheet/measure.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>
#include <numbers>

// Check values of the trade that no other room has a place for. Each names the row of the
// collected list and where the value is from.

namespace {

using summed::Partial;

double roughnessOf(std::vector<int> const& keys)
{
    std::vector<Partial> all;
    for (int key : keys)
        for (Partial const& p : summed::harmonicTone(music::frequencyHz(key))) all.push_back(p);
    return summed::roughness(all);
}

double dissonanceOf(std::vector<double> const& hz)
{
    std::vector<Partial> all;
    for (double f : hz) all.push_back({f, 1});
    return summed::sensoryDissonance(all);
}

// Equivalent rectangular bandwidth in Hz (Glasberg & Moore 1990), from memory.
double erbHz(double hz) { return 24.7 * (4.37 * hz / 1000 + 1); }

// Critical bandwidth in Hz (Zwicker & Terhardt 1980), from memory.
double zwickerBandHz(double hz)
{
    double const kHz = hz / 1000;
    return 25 + 75 * std::pow(1 + 1.4 * kHz * kHz, 0.69);
}

// How strong partial n is in a string pulled aside at a share of its length and let go: the
// sine coefficient of the triangle, by adding up, knowing no formula for it.
double partialOfPluck(double share, int n)
{
    constexpr int steps = 20'000;
    double sum = 0;
    for (int i = 0; i < steps; ++i) {
        double const x = (i + 0.5) / steps;
        double const shape = x < share ? x / share : (1 - x) / (1 - share);
        sum += shape * std::sin(n * std::numbers::pi * x) / steps;
    }
    return std::abs(2 * sum);
}

harp::Harp evenHarp() { return example::floor34(); } // 15 mm throughout

} // namespace

TEST_CASE("22 strings lie between C3 and C6 and 38 between A1 and C7", "[trade]")
{
    // Rows 5 and 6 (derived).
    CHECK(example::harp({music::Letter::C, 0, 3}, {music::Letter::C, 0, 6}, example::eFlat)
              .count() == 22);
    CHECK(example::harp({music::Letter::A, 0, 1}, {music::Letter::C, 0, 7}, example::eFlat)
              .count() == 38);
}

TEST_CASE("A span of 201 mm has 10 strings in comfort at 15 mm", "[trade]")
{
    // Row 51: span of Boyle et al. 2015; 0.92 of it from thumb to finger 4, 0.80 of that in
    // comfort (derived [trade-3.2]).
    double const comfort = 201 * 0.92 * 0.80;
    CHECK(harp::stringsWithin(evenHarp(), comfort, 7) == 10);
    auto const tables = files::readTables(places::shared());
    REQUIRE(tables);
    auto const hand = files::handFrom(*tables, "medium");
    REQUIRE(hand);
    CHECK(hand->comfortMm == Approx(comfort).margin(1));
}

TEST_CASE("The critical band of the score lies between the published bands at 1000 Hz",
          "[trade]")
{
    // Rows 54 and 55: Glasberg & Moore 1990; Zwicker & Terhardt 1980.
    CHECK(erbHz(100) == Approx(35.5).margin(0.05));
    CHECK(erbHz(1000) == Approx(132.6).margin(0.05));
    CHECK(zwickerBandHz(1000) == Approx(162.2).margin(0.05));
    CHECK(arrange::criticalBandHz(1000, 1000) > erbHz(1000));
    CHECK(arrange::criticalBandHz(1000, 1000) < zwickerBandHz(1000));
}

TEST_CASE("The band of Hutchinson and Knopoff is 97.7 Hz wide at 500 Hz", "[trade]")
{
    // Row 56: Hutchinson & Knopoff 1978.
    CHECK(arrange::criticalBandHz(500, 500) == Approx(97.7).margin(0.05));
}

TEST_CASE("Two tones over 440 Hz are roughest 25.8 Hz apart and smooth in unison", "[trade]")
{
    // Rows 57 and 58: Sethares 1993.
    double worst = 0;
    double worstGap = 0;
    for (double gap = 0; gap < 100; gap += 0.05)
        if (double const d = dissonanceOf({440, 440 + gap}); d > worst) {
            worst = d;
            worstGap = gap;
        }
    CHECK(worstGap == Approx(25.8).margin(0.1));
    CHECK(dissonanceOf({440, 440}) == Approx(0).margin(1e-9));
}

TEST_CASE("On C3 the octave is smoothest, then fifth, fourth, thirds and the second",
          "[trade]")
{
    // Row 59 (computed outside this program).
    double last = -1;
    for (int semitones : {12, 7, 5, 4, 3, 2}) {
        double const rough = roughnessOf({48, 48 + semitones});
        CAPTURE(semitones);
        CHECK(rough > last);
        last = rough;
    }
}

TEST_CASE("A minor third gets rougher below C3, the lowest where books allow it", "[trade]")
{
    // Row 60: Lowell & Pullig 2003 by way of an open article. The table of limits was fitted so
    // that C3 stands at the border; below it every semitone is rougher.
    double const border = roughnessOf({48, 51});
    for (int low = 36; low < 48; ++low) CHECK(roughnessOf({low, low + 3}) > border);
    for (int low = 49; low < 61; ++low) CHECK(roughnessOf({low, low + 3}) < border);
}

TEST_CASE("On C2 the close triad is rougher than 1-5-8", "[trade]")
{
    // Row 61 (computed outside this program: 5.2 against 3.3 in another model).
    CHECK(roughnessOf({36, 40, 43}) > roughnessOf({36, 43, 48}) * 5.2 / 3.3);
}

TEST_CASE("A string plucked at its half has no even partials, at a third no third one",
          "[trade]")
{
    // Rows 64 and 65 (physics): the shape of an ideal pluck, taken apart.
    for (int n : {2, 4, 6}) CHECK(partialOfPluck(0.5, n) < 1e-6 * partialOfPluck(0.5, 1));
    CHECK(partialOfPluck(0.5, 3) > 0.1 * partialOfPluck(0.5, 1));
    CHECK(partialOfPluck(1.0 / 3, 3) < 1e-4 * partialOfPluck(1.0 / 3, 1));
    // The envelope that the roughness of the score is made with, 1/n of the force on the board,
    // is n times the displacement: no partial of any pluck exceeds it by more than it is at 1.
    auto const tone = summed::harmonicTone(100, 6);
    for (int n = 1; n <= 6; ++n)
        CHECK(partialOfPluck(0.38, n) * n / partialOfPluck(0.38, 1) <=
              tone[static_cast<std::size_t>(n) - 1].amplitude / tone[0].amplitude * 1.1);
}

TEST_CASE("A harmonic at half the string sounds an octave up: one octave string above",
          "[trade]")
{
    // Row 66 (open orchestration pages): half the length is twice the frequency, which is what
    // the string seven above sounds.
    auto const harp = evenHarp();
    double const whole = music::frequencyHz(music::midi(harp.string(7).open));
    double const octave = music::frequencyHz(music::midi(harp.string(14).open));
    CHECK(octave == Approx(2 * whole));
}

TEST_CASE("C4 is 261.63 Hz and MIDI key 60", "[trade]")
{
    // Row 67: ISO 16:1975, MIDI 1.0.
    CHECK(music::midi({music::Letter::C, 0, 4}) == 60);
    CHECK(music::frequencyHz(60) == Approx(261.63).margin(0.005));
    CHECK(music::frequencyHz(69) == Approx(440));
}

TEST_CASE("AABB of eight-bar parts is 32 bars and 33.1 s at 58 bars a minute", "[trade]")
{
    // Row 68 (a manual of country dancing).
    std::string part;
    for (int bar = 0; bar < 7; ++bar) part += "G4:1/2 B4:1/2 | ";
    part += "G4:1/1 :| ";
    auto tune = lines::tune(part + part, lines::major("G"));
    tune.bars[0].repeatOpens = true;
    tune.bars[8].repeatOpens = true;
    auto const playing = tune::played(tune);
    CHECK(playing.bars.size() == 32);
    // 58 bars of four crotchets are 232 crotchets a minute.
    CHECK(playing.total.wholes.toDouble() * 240 / 232 == Approx(33.1).margin(0.05));
}

TEST_CASE("185 session tunes: D 83, G 47, A 28, E 24 and B 3, all in one or two sharps, which "
          "F and C levers give from C",
          "[trade]")
{
    // Rows 71 and 72 (an open survey page): home note, sharps, how many tunes.
    struct Counted {
        char home;
        int sharps;
        int tunes;
    };
    Counted const survey[] = {{'D', 2, 62}, {'D', 1, 21}, {'G', 1, 46}, {'G', 2, 1},
                              {'A', 1, 23}, {'A', 2, 5},  {'E', 2, 13}, {'E', 1, 11},
                              {'B', 2, 3}};
    std::map<char, int> byHome;
    std::map<int, int> bySharps;
    auto const harp = example::harp(example::c2, example::a6, {music::Letter::C, 0}, "CF");
    auto const onlyF = example::harp(example::c2, example::a6, {music::Letter::C, 0}, "F");
    for (Counted const& row : survey) {
        byHome[row.home] += row.tunes;
        bySharps[row.sharps] += row.tunes;
        // The mode of that home note with so many sharps.
        bool found = false;
        for (music::Mode const mode : music::allModes) {
            music::Key const key{*music::pitchNameFrom(std::string(1, row.home)), mode};
            if (music::signature(key) != row.sharps) continue;
            found = true;
            CHECK(harp::settingFor(harp, key));
            CHECK(bool(harp::settingFor(onlyF, key)) == (row.sharps == 1));
        }
        CHECK(found);
    }
    CHECK(byHome == std::map<char, int>{{'D', 83}, {'G', 47}, {'A', 28}, {'E', 24}, {'B', 3}});
    CHECK(bySharps == std::map<int, int>{{1, 101}, {2, 84}});
}

TEST_CASE("Sheets are A4, 210 by 297 mm, or Letter, 215.9 by 279.4 mm", "[trade]")
{
    // Row 75: ISO 216, ANSI.
    auto const font = measure::musicFont();
    if (!font) return;
    auto const tune = lines::tune("G4:1/2 B4:1/2 |", lines::major("G"));
    sheet::SheetStyle style;
    auto const size = [&] {
        auto const document = sheet::leadSheet(tune, *font, style);
        REQUIRE_FALSE(document.pages.empty());
        return std::pair(document.pages[0].widthMm, document.pages[0].heightMm);
    };
    CHECK(size() == std::pair(210.0, 297.0));
    style.paper = sheet::Paper::Letter;
    CHECK(size() == std::pair(215.9, 279.4));
}
