#include "core/arrange/roughness.h"

#include "core/music/pitch.h"
#include "tests/arrange/partials.h"

#include <catch2/catch.hpp>

#include <array>
#include <vector>

using namespace arrange;
using namespace summed;

namespace {

// Tones of 11 partials with amplitudes 1/n, by MIDI key.
double roughnessOf(std::vector<int> const& keys, int partials = 11)
{
    std::vector<Partial> all;
    for (int key : keys)
        for (Partial const& p : harmonicTone(music::frequencyHz(key), partials))
            all.push_back(p);
    return roughness(all);
}

double dissonanceOf(std::vector<double> const& hz, std::vector<double> const& amplitudes)
{
    std::vector<Partial> all;
    for (std::size_t i = 0; i < hz.size(); ++i) all.push_back({hz[i], amplitudes[i]});
    return sensoryDissonance(all);
}

} // namespace

TEST_CASE("Critical bands are as Hutchinson and Knopoff have them", "[roughness]")
{
    // Hutchinson & Knopoff 1978: 1.72 f^0.65 round the mean; values by a published check of the
    // formula (science 1.1).
    CHECK(criticalBandHz(400, 440) == Approx(87.225).margin(0.0005));
    CHECK(criticalBandHz(400, 380) == Approx(83.123).margin(0.0005));
}

TEST_CASE("Two pure tones are roughest a quarter of a critical band apart", "[roughness]")
{
    // Plomp & Levelt 1965 for the quarter; curve of Hutchinson & Knopoff 1978 as transcribed in
    // 1993 and 2006 (science 1.2).
    CHECK(roughnessAtBands(0.25) == Approx(1.0));
    CHECK(roughnessAtBands(1.0) == Approx(0.0397).margin(0.0001));
    CHECK(roughnessAtBands(0.5) == Approx(0.5413).margin(0.0001));
    CHECK(roughnessAtBands(0) == 0);
    CHECK(roughnessAtBands(1.21) == 0);
}

TEST_CASE("Roughness of dyads and triads agrees with published checks", "[roughness]")
{
    // Hutchinson & Knopoff 1978 by a published implementation to three places; four places by
    // our own independent calculation (science 1.2).
    CHECK(roughnessOf({60, 61}, 1) == Approx(0.4988).margin(0.00005));
    CHECK(roughnessOf({69, 70}, 1) == Approx(0.4908).margin(0.00005));
    CHECK(roughnessOf({60, 61}) == Approx(0.4839).margin(0.00005));
    CHECK(roughnessOf({60, 64, 67}) == Approx(0.1202).margin(0.00005));
    CHECK(roughnessOf({60, 63, 67}) == Approx(0.1301).margin(0.00005));
}

TEST_CASE("Roughness of intervals falls as they rise, row by row", "[roughness]")
{
    // Own table of 11 partials 1/n in equal temperament, calculated outside this program
    // (science 1.2): minor second to octave above C2, C3, C4.
    using Row = std::array<double, 12>;
    auto const [lowest, row] = GENERATE(table<int, Row>({
        {36,
         {.4731, .4944, .3512, .2334, .1705, .1732, .1002, .1692, .1828, .2461, .2713, .0264}},
        {48,
         {.4931, .3801, .2123, .1281, .0900, .1256, .0481, .1234, .1057, .1686, .2553, .0088}},
        {60,
         {.4839, .2541, .1117, .0703, .0448, .0968, .0229, .0935, .0572, .1021, .2254, .0021}},
    }));
    for (int semitones = 1; semitones <= 12; ++semitones) {
        CAPTURE(lowest, semitones);
        CHECK(roughnessOf({lowest, lowest + semitones}) ==
              Approx(row[static_cast<std::size_t>(semitones) - 1]).margin(0.00006));
    }
}

TEST_CASE("The open tenth on C2 is about as smooth as a close triad on C3", "[roughness]")
{
    // Own calculation (science 1.2): 1-3-5, 1-5-8, 1-5-10 on C2 and C3.
    CHECK(roughnessOf({36, 40, 43}) == Approx(0.4096).margin(0.00006));
    CHECK(roughnessOf({48, 52, 55}) == Approx(0.2290).margin(0.00006));
    CHECK(roughnessOf({36, 43, 48}) == Approx(0.1281).margin(0.00006));
    CHECK(roughnessOf({48, 55, 60}) == Approx(0.0641).margin(0.00006));
    CHECK(roughnessOf({36, 43, 52}) == Approx(0.2209).margin(0.00006));
    CHECK(roughnessOf({48, 55, 64}) == Approx(0.1155).margin(0.00006));
}

TEST_CASE("Loudness of all tones together leaves roughness as it is", "[roughness]")
{
    std::vector<RingingTone> const loud{{48, 1}, {52, 1}, {55, 0.5}};
    std::vector<RingingTone> const soft{{48, 0.1}, {52, 0.1}, {55, 0.05}};
    CHECK(roughness(loud) == Approx(roughness(soft)));
    CHECK(roughness(std::vector<RingingTone>{}) == 0);
}

TEST_CASE("Tabled roughness of tones is the exact sum but for the partials of octaves",
          "[roughness]")
{
    // The table does not merge partials that coincide: exact without octaves, a little above
    // with.
    CHECK(roughness(std::vector<RingingTone>{{48, 1}, {52, 1}, {55, 1}}) ==
          Approx(roughnessOf({48, 52, 55})).margin(1e-6));
    auto const shape = GENERATE(
        values<std::vector<int>>({{36, 43, 48}, {43, 50, 55}, {48, 55, 60}, {36, 43, 48, 52}}));
    std::vector<RingingTone> tones;
    for (int key : shape) tones.push_back({key, 1});
    CHECK(roughness(tones) >= roughnessOf(shape));
    CHECK(roughness(tones) <= roughnessOf(shape) + 0.04);
}

TEST_CASE("Sensory dissonance agrees with the checks of Sethares' page", "[roughness]")
{
    // Sethares 1993 with the constants of the author's page, as multiples of two equal tones of
    // 440 and 460 Hz (science 1.3).
    double const unit = dissonanceOf({440, 460}, {1, 1});
    CHECK(dissonanceOf({440, 460, 480}, {1, 1, 1}) / unit == Approx(2.9194).margin(0.0001));
    CHECK(dissonanceOf({440, 460, 480}, {1, 2, 3}) / unit == Approx(3.9161).margin(0.0001));
    CHECK(dissonanceOf({440, 460, 480}, {3, 2, 1}) / unit == Approx(3.9194).margin(0.0001));
    CHECK(dissonanceOf({300, 250, 275, 425}, {1.5, 2, 9, 4}) / unit ==
          Approx(4.8657).margin(0.0001));
}
