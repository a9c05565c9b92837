#include "tests/harp/harps.h"
#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

#include <algorithm>
#include <array>

using namespace hearing;

namespace {

struct Measured {
    double cents = 0; // from what is wanted
    bool octaveSure = false;
};

// The fundamental; where a low string has hardly any, the first partial that is heard, brought
// down to it. The octave is sure when the first or third partial is there: a string an octave too
// high has neither.
Measured pitchOf(std::span<float const> samples, double hz)
{
    std::array<Peak, 3> partials{};
    for (std::size_t i = 0; i < partials.size(); ++i) {
        auto const number = static_cast<double>(i + 1);
        if (auto const peak = peakNear(samples, hz * number, 25, sound::sampleRate))
            partials[i] = {peak->hz / number, peak->strength};
    }
    double const strongest = std::ranges::max_element(partials, {}, &Peak::strength)->strength;
    auto const heard = std::ranges::find_if(
        partials, [&](Peak const& peak) { return peak.strength >= 0.03 * strongest; });
    double const odd = std::max(partials[0].strength, partials[2].strength);
    return {centsBetween(hz, heard->hz), odd > 0.03 * strongest};
}

// The furthest that any string of a harp, its lever down or up, is off, in cents.
double furthestOff(sound::Voice const& voice)
{
    constexpr music::Pitch a1{music::Letter::A, 0, 1};
    constexpr music::Pitch c7{music::Letter::C, 0, 7};
    auto const harp = example::harp(a1, c7, example::eFlat);
    REQUIRE(harp.count() == 38);
    struct Sounded {
        double at = 0;
        harp::StringIndex string = 0;
        int key = 0;
    };
    constexpr double apart = 1.3;
    std::vector<Sounded> all;
    for (harp::StringIndex const string : harp.indices())
        for (harp::Lever const lever : {harp::Lever::Down, harp::Lever::Up})
            all.push_back({apart * static_cast<double>(all.size()), string,
                           music::midi(harp::sounding(harp.string(string), lever))});
    std::vector<perform::Event> events;
    for (Sounded const& one : all) {
        events.push_back(pluck(one.at, one.string, one.key));
        events.push_back(damp(one.at + 1.1, one.string));
    }
    auto const recording = sound::renderToMemory(
        perform::onceOnly(scheduleOf(events, apart * static_cast<double>(all.size()))), voice);
    REQUIRE(recording);
    double furthest = 0;
    for (Sounded const& one : all) {
        double const away = one.key - 69 + voice.cents[static_cast<std::size_t>(one.key % 12)] / 100;
        double const hz = voice.a4Hz * std::exp2(away / 12);
        // Long enough to part a string from its neighbours, no longer: high strings fade soon.
        double const window = std::clamp(150 / hz, 0.15, 0.9);
        auto const [cents, octaveSure] = pitchOf(stretch(*recording, one.at + 0.1, window), hz);
        CAPTURE(voice.font, one.string, one.key, cents);
        CHECK(std::abs(cents) < 3);
        CHECK(octaveSure);
        furthest = std::max(furthest, std::abs(cents));
    }
    return furthest;
}

} // namespace

TEST_CASE("Every string of a 38-string harp, lever down and up, sounds within 3 cents with every "
          "font that is there",
          "[pitch]")
{
    // ISO 16: A4 = 440 Hz; equal temperament, f = 440 * 2^((key - 69) / 12).
    if (!canSound()) return;
    for (auto const& font : sound::soundFonts())
        WARN(font.string() << ": furthest off " << furthestOff({font, 440, {}, 0}) << " cents");
}

TEST_CASE("Strings are as true when A is 432 Hz, and in meantone", "[pitch]")
{
    if (!canSound()) return;
    // A quarter of the syntonic comma, 81:80, off each fifth, counted from A.
    double const fifth = 1200 * std::log2(1.5) - 1200 * std::log2(81.0 / 80) / 4;
    std::array<double, 12> cents{};
    for (int step = -6; step <= 5; ++step) { // E flat to G sharp
        int const key = ((9 + 7 * step) % 12 + 12) % 12;
        cents[static_cast<std::size_t>(key)] = (fifth - 700) * step;
    }
    CHECK(furthestOff({{}, 432, cents, 0}) < 3);
}

TEST_CASE("The measuring of pitch tells a tone 5 cents sharp from a true one", "[pitch]")
{
    for (double const offset : {-7.0, 0.0, 5.0, 20.0}) {
        double const hz = 110 * std::exp2(offset / 1200);
        std::vector<float> tone(24000);
        for (std::size_t i = 0; i < tone.size(); ++i)
            tone[i] = static_cast<float>(
                0.5 * std::sin(2 * 3.14159265358979 * hz * static_cast<double>(i) / 48000));
        auto const peak = peakNear(tone, 110, 50, 48000);
        REQUIRE(peak);
        CHECK(centsBetween(110, peak->hz) == Approx(offset).margin(0.2));
        CHECK(peak->strength == Approx(0.5).epsilon(0.01));
    }
}
