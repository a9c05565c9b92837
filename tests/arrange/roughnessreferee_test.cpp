// A second model of roughness, by Vassilakis, asked about the first [vass01].

#include "core/arrange/roughness.h"
#include "core/music/pitch.h"
#include "tests/arrange/partials.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

using namespace arrange;
using namespace summed;

namespace {

using Dyads = std::array<double, 12>; // minor second to octave above C4

// Published for tones of six partials 1/n (thesis 2001, p. 208-210; science 1.4).
constexpr Dyads published{40.383, 27.617, 18.117, 16.002, 11.446, 12.826,
                          6.179,  10.103, 5.782,  6.214,  6.996,  1.589};
constexpr int c4 = 60;
constexpr int partials = 6;

std::vector<Partial> tonesOf(std::vector<int> const& keys)
{
    std::vector<Partial> all;
    for (int key : keys)
        for (Partial const& p : harmonicTone(music::frequencyHz(key), partials))
            all.push_back(p);
    return all;
}

double fluctuationOf(Partial const& a, Partial const& b)
{
    double const smaller = std::min(a.amplitude, b.amplitude);
    double const s = 0.24 / (0.0207 * std::min(a.hz, b.hz) + 18.96);
    double const apart = std::abs(a.hz - b.hz);
    return std::pow(a.amplitude * b.amplitude, 0.1) * 0.5 *
           std::pow(2 * smaller / (a.amplitude + b.amplitude), 3.11) *
           (std::exp(-3.5 * s * apart) - std::exp(-5.75 * s * apart));
}

double byReferee(std::vector<int> const& keys)
{
    std::vector<Partial> const all = tonesOf(keys);
    double sum = 0;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) sum += fluctuationOf(all[i], all[j]);
    return sum;
}

// Place of each value, 0 for the largest.
std::vector<int> placesOf(Dyads const& values)
{
    std::vector<int> places;
    for (double value : values)
        places.push_back(static_cast<int>(
            std::ranges::count_if(values, [value](double other) { return other > value; })));
    return places;
}

// Spearman's rank correlation: 1 for the same order, -1 for the reverse.
double sameOrder(Dyads const& a, Dyads const& b)
{
    std::vector<int> const placesA = placesOf(a);
    std::vector<int> const placesB = placesOf(b);
    double squares = 0;
    for (std::size_t i = 0; i < a.size(); ++i) squares += std::pow(placesA[i] - placesB[i], 2);
    constexpr double n = 12;
    return 1 - 6 * squares / (n * (n * n - 1));
}

} // namespace

TEST_CASE("The second roughness model gives its published dyads but for fifth and octave",
          "[roughness]")
{
    // The publication scales by a factor of its own and used measured frequencies, which we do
    // not have: with exact multiples, fifth and octave lose the slow beats of partials that
    // nearly coincide, and the others agree within an eighth.
    constexpr double scale = 99;
    constexpr std::size_t fifth = 6;
    constexpr std::size_t octave = 11;
    for (std::size_t i = 0; i < published.size(); ++i) {
        double const ours = scale * byReferee({c4, c4 + static_cast<int>(i) + 1});
        CAPTURE(i + 1, ours);
        if (i == fifth || i == octave)
            CHECK(ours < published[i]);
        else
            CHECK(ours == Approx(published[i]).epsilon(0.125));
    }
}

TEST_CASE("Both roughness models of the score order dyads much as the published third does",
          "[roughness]")
{
    Dyads rough{};
    Dyads dissonant{};
    for (int i = 0; i < 12; ++i) {
        auto const tones = tonesOf({c4, c4 + i + 1});
        rough[static_cast<std::size_t>(i)] = roughness(tones);
        dissonant[static_cast<std::size_t>(i)] = sensoryDissonance(tones);
    }
    CAPTURE(sameOrder(rough, published), sameOrder(dissonant, published));
    CHECK(sameOrder(rough, published) > 0.7);
    CHECK(sameOrder(dissonant, published) > 0.7);
    for (Dyads const& dyads : {rough, dissonant}) {
        CHECK(placesOf(dyads)[0] == 0);   // the minor second is roughest
        CHECK(placesOf(dyads)[11] == 11); // the octave smoothest
    }
}

TEST_CASE("Close triads are rougher than open shapes for every roughness model", "[roughness]")
{
    for (int root : {36, 41, 48}) {
        CAPTURE(root);
        std::vector<int> const close{root, root + 4, root + 7};
        for (std::vector<int> const& open :
             {std::vector<int>{root, root + 7, root + 12}, {root, root + 7, root + 16}}) {
            CHECK(byReferee(close) > byReferee(open));
            CHECK(roughness(tonesOf(close)) > roughness(tonesOf(open)));
            CHECK(sensoryDissonance(tonesOf(close)) > sensoryDissonance(tonesOf(open)));
        }
    }
}
