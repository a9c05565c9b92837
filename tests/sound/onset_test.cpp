#include "app/sound/performance.h"
#include "tests/perform/pieces.h"
#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

#include <algorithm>

using namespace hearing;

namespace {

// The first frame at which the sound rises over what is left of damped strings: three thousandths
// of full scale.
double firstHeard(std::span<float const> samples)
{
    auto const found =
        std::ranges::find_if(samples, [](float s) { return std::abs(s) > 0.003F; });
    return static_cast<double>(found - samples.begin()) / sound::sampleRate;
}

} // namespace

TEST_CASE("A pluck sounds within a millisecond of its time, wherever a block begins", "[onset]")
{
    // How long the font's own attack takes is measured on a pluck at the border of a block; the
    // others lie anywhere. 1 ms is the variation a player does not notice (Wessel and Wright,
    // 2001).
    if (!canSound()) return;
    double const attack = firstHeard(recordingOf(scheduleOf({pluck(0, 20, 72)}, 0.5)).left);
    CHECK(attack < 0.01);
    double worst = 0;
    for (int i = 0; i < 25; ++i) {
        double const at = 0.25 + 0.000237 * i;
        auto const recording = recordingOf(scheduleOf({pluck(at, 20, 72)}, 0.75));
        worst = std::max(worst, std::abs(firstHeard(recording.left) - attack - at));
    }
    CAPTURE(worst);
    CHECK(worst < 0.001);
}

namespace {

// How far off each pluck is that comes alone, in seconds; `attack`: how long the font's own takes.
double furthestOff(sound::Recording const& recording, std::vector<double> const& at,
                   double attack)
{
    double worst = 0;
    for (double const time : at) {
        auto const heard = stretch(recording, time - 0.02, 0.05);
        worst = std::max(worst, std::abs(firstHeard(heard) - 0.02 - attack));
    }
    return worst;
}

} // namespace

TEST_CASE("Onsets do not drift over five minutes at three tempi", "[onset][slow]")
{
    // Plucks that are damped before the next, so that each begins in silence: the first beat of
    // every fourth bar of a tune that lasts 300 s.
    if (!canSound()) return;
    double const attack = firstHeard(recordingOf(scheduleOf({pluck(0, 20, 72)}, 0.5)).left);
    for (double const tempo : {47.0, 101.0, 173.0}) {
        double const beat = 60 / tempo;
        std::vector<perform::Event> events;
        std::vector<double> at;
        for (int i = 0; 16 * beat * i < 300; ++i) {
            at.push_back(16 * beat * i + 0.25);
            events.push_back(pluck(at.back(), 20, 72));
            events.push_back(damp(at.back() + 0.3, 20));
        }
        auto const recording = recordingOf(scheduleOf(events, 302));
        double const worst = furthestOff(recording, at, attack);
        CAPTURE(tempo, worst);
        CHECK(worst < 0.001);
    }
}

TEST_CASE("Onsets are in their place after a change of tempo in the middle", "[onset]")
{
    if (!canSound()) return;
    double const attack = firstHeard(recordingOf(scheduleOf({pluck(0, 20, 72)}, 0.5)).left);
    auto const at = [](double beat) {
        std::vector<perform::Event> events;
        for (int i = 0; i < 12; ++i) {
            events.push_back(pluck(i * beat, 20, 72));
            events.push_back(damp((i + 0.5) * beat, 20));
        }
        return scheduleOf(events, 12 * beat);
    };
    auto synth = sound::HarpSynth::open({});
    REQUIRE(synth);
    sound::Performance performance(std::move(*synth));
    sound::Recording heard;
    auto const render = [&heard, &performance](double until) {
        std::vector<float> left(64);
        std::vector<float> right(64);
        while (static_cast<double>(heard.left.size()) < until * sound::sampleRate) {
            performance.render(left.data(), right.data(), 64);
            heard.left.insert(heard.left.end(), left.begin(), left.end());
        }
    };
    auto const slow = at(1.03);
    auto const quick = at(0.61);
    performance.begin(perform::onceOnly(slow), {});
    render(4.4); // four beats and a part of the fifth
    double const changed = static_cast<double>(heard.left.size()) / sound::sampleRate;
    double const there = perform::samePlace(slow, performance.progress().at, quick);
    performance.begin(perform::onceOnly(quick), {0, there});
    render(7);
    std::vector<double> onsets;
    for (int beat = 1; beat <= 4; ++beat) onsets.push_back(1.03 * beat);
    for (int beat = 5; beat <= 7; ++beat) onsets.push_back(changed + 0.61 * beat - there);
    double const worst = furthestOff(heard, onsets, attack);
    CAPTURE(worst);
    CHECK(worst < 0.001);
}

TEST_CASE("Ten strings plucked together on a first beat stay below full scale", "[level]")
{
    // Four fingers of each hand, and two strings more that ring, all as hard as any note of a
    // schedule: louder than a tune comes.
    if (!canSound()) return;
    auto const scheduled = perform::scheduled(pieces::twoBars(), {}).events;
    int const loudest =
        std::ranges::max_element(scheduled, {}, &perform::Event::velocity)->velocity;
    std::vector<perform::Event> events;
    int const keys[] = {36, 43, 48, 52, 60, 64, 67, 72, 76, 79};
    for (int i = 0; i < 10; ++i)
        events.push_back(pluck(0, harp::StringIndex(2 * i), keys[i], loudest));
    for (auto const& font : sound::soundFonts()) {
        auto const recording = sound::renderToMemory(
            perform::onceOnly(scheduleOf(events, 2)), {font, 440, {}, 1});
        REQUIRE(recording);
        auto const peak = std::abs(*std::ranges::max_element(
            recording->left, {}, [](float s) { return std::abs(s); }));
        CAPTURE(font, peak);
        CHECK(peak < 0.95F);
        CHECK(peak > 0.45F);
    }
}
