#include "tests/perform/pieces.h"
#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

#include <algorithm>

using namespace hearing;

namespace {

// The first frame at which the sound rises over a thousandth of full scale.
double firstHeard(std::span<float const> samples)
{
    auto const found =
        std::ranges::find_if(samples, [](float s) { return std::abs(s) > 0.001F; });
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

TEST_CASE("Onsets do not drift over five minutes", "[onset]")
{
    if (!canSound()) return;
    double const attack = firstHeard(recordingOf(scheduleOf({pluck(0, 20, 72)}, 0.5)).left);
    double const at = 300.0001;
    auto const recording = recordingOf(scheduleOf({pluck(at, 20, 72)}, at + 1));
    CHECK(std::abs(firstHeard(recording.left) - attack - at) < 0.001);
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
    for (int i = 0; i < 10; ++i) events.push_back(pluck(0, 2 * i, keys[i], loudest));
    auto const recording = recordingOf(scheduleOf(events, 2));
    auto const peak = std::abs(
        *std::ranges::max_element(recording.left, {}, [](float s) { return std::abs(s); }));
    CAPTURE(peak);
    CHECK(peak < 0.95F);
    CHECK(peak > 0.35F); // fonts differ in loudness
}
