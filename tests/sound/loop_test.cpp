// A passage that goes round: what is rendered where one round leads to the next.
#include "app/sound/performance.h"
#include "core/perform/practice.h"
#include "tests/perform/pieces.h"
#include "tests/sound/hearing.h"
#include "tests/sound/spectrum.h"

#include <algorithm>
#include <vector>

using namespace hearing;

namespace {

constexpr int seconds = sound::sampleRate;

// The live path: round and round, in the pieces that a device asks for.
std::vector<float> live(perform::Course course, double lasting, int frames = 256)
{
    auto synth = sound::HarpSynth::open({});
    REQUIRE(synth);
    sound::Performance performance(std::move(*synth));
    performance.begin(std::move(course), {});
    auto const total = static_cast<std::size_t>(std::lround(lasting * seconds));
    std::vector<float> left(total + static_cast<std::size_t>(frames));
    std::vector<float> right(left.size());
    for (std::size_t done = 0; done < total; done += static_cast<std::size_t>(frames))
        performance.render(left.data() + done, right.data() + done, frames);
    left.resize(total);
    return left;
}

// The first frame after `from` that is louder than `level`.
std::size_t firstAbove(std::vector<float> const& sound, std::size_t from, float level)
{
    auto const begin = sound.begin() + static_cast<std::ptrdiff_t>(from);
    auto const found =
        std::find_if(begin, sound.end(), [level](float x) { return std::abs(x) > level; });
    return static_cast<std::size_t>(found - sound.begin());
}

float steepest(std::vector<float> const& sound, std::size_t from, std::size_t to)
{
    float most = 0;
    for (std::size_t i = from + 1; i < to; ++i)
        most = std::max(most, std::abs(sound[i] - sound[i - 1]));
    return most;
}

// Four seconds, begun at every second; the last pluck rings over the seam.
perform::Schedule fourBeats()
{
    return scheduleOf({pluck(0, 20, 60), pluck(1, 21, 62), pluck(2, 22, 64), pluck(3, 23, 65)},
                      4);
}

} // namespace

TEST_CASE("Where a loop turns back the first note comes exactly one round later", "[loop]")
{
    if (!canSound()) return;
    // One short low note a round, so that its onset stands alone.
    auto schedule = scheduleOf({pluck(0.5, 20, 60), damp(0.9, 20)}, 1.5);
    auto const sound = live(perform::onceOnly(schedule, true), 4.5);
    constexpr float level = 0.002F;
    std::size_t const first = firstAbove(sound, 0, level);
    std::size_t const second = firstAbove(sound, 3 * seconds / 2 + seconds / 4, level);
    std::size_t const third = firstAbove(sound, 3 * seconds + seconds / 4, level);
    CAPTURE(first, second, third);
    CHECK(std::abs(static_cast<double>(second - first) - 1.5 * seconds) <= 1);
    CHECK(std::abs(static_cast<double>(third - second) - 1.5 * seconds) <= 1);
}

TEST_CASE("A loop sounds sample for sample like the same bars written out one after another",
          "[loop]")
{
    if (!canSound()) return;
    perform::Schedule const once = fourBeats();
    perform::Schedule twice = once;
    for (perform::Event event : once.events) {
        event.at += 4;
        twice.events.push_back(event);
    }
    twice.counted = twice.ringing = 8;
    auto const looped = live(perform::onceOnly(once, true), 7.9);
    auto const straight = live(perform::onceOnly(twice), 7.9);
    CHECK(std::ranges::equal(looped, straight));
}

TEST_CASE("The seam of a loop has no gap and no click", "[loop]")
{
    if (!canSound()) return;
    auto const sound = live(perform::onceOnly(fourBeats(), true), 8);
    auto const seam = static_cast<std::size_t>(4 * seconds);
    auto const near = static_cast<std::size_t>(seconds / 10);
    // No gap: no millisecond around the seam is silent, for the last note rings on.
    std::size_t const ms = seconds / 1000;
    for (std::size_t at = seam - near; at + ms < seam + near; at += ms) {
        auto const begin = sound.begin() + static_cast<std::ptrdiff_t>(at);
        CHECK(std::any_of(begin, begin + static_cast<std::ptrdiff_t>(ms),
                          [](float x) { return std::abs(x) > 1e-4F; }));
    }
    // No click: no step from sample to sample is steeper than at the plucks within the round.
    float const atSeam = steepest(sound, seam - near, seam + near);
    float within = 0;
    for (std::size_t beat = 1; beat < 4; ++beat)
        within =
            std::max(within, steepest(sound, beat * seconds - near, beat * seconds + near));
    CAPTURE(atSeam, within);
    CHECK(atSeam <= within * 1.5F);
}

TEST_CASE("A practice file has the same seam as the loop that is heard", "[loop]")
{
    if (!canSound()) return;
    perform::Hearing hearing;
    hearing.countIn = true;
    auto const arrangement = pieces::twoBars();
    auto const looped = perform::course(arrangement, hearing, {{}, true, false});
    auto const written = perform::course(arrangement, hearing, {{1, 1, 1}, false, false});
    double const lasting = written.round(0).counted + 8; // two rounds
    auto const live2 = live(looped, lasting);
    auto const recording = sound::renderToMemory(written);
    REQUIRE(recording);
    REQUIRE(recording->left.size() > live2.size());
    CHECK(std::equal(live2.begin(), live2.end(), recording->left.begin()));
}

TEST_CASE(
    "What no longer sounds in the other setting is damped at the flip, what does rings on",
    "[loop]")
{
    if (!canSound()) return;
    auto synth = sound::HarpSynth::open({});
    REQUIRE(synth);
    sound::Performance performance(std::move(*synth));
    std::vector<float> left(seconds), right(seconds);
    auto const loudness = [&](int frames) {
        performance.render(left.data(), right.data(), frames);
        double sum = 0;
        for (int i = 0; i < frames; ++i) {
            auto const x = static_cast<double>(left[static_cast<std::size_t>(i)]);
            sum += x * x;
        }
        return std::sqrt(sum / frames);
    };
    auto const a = perform::onceOnly(scheduleOf({pluck(0, 20, 60)}, 8));
    auto const b = perform::onceOnly(scheduleOf({pluck(4, 25, 69)}, 8));
    performance.begin(a, {});
    loudness(seconds / 2);
    double const before = loudness(seconds / 10);
    performance.begin(a, {0, 0.6});
    CHECK(loudness(seconds / 10) > before * 0.5);
    performance.begin(b, {0, 0.7});
    loudness(seconds / 2); // the room dies away
    CHECK(loudness(seconds / 10) < before * 0.05);
}

TEST_CASE("A and B change places at the same beat, within one buffer", "[loop]")
{
    // B has the same bars with another left hand: what is heard up to the flip is A's, from the
    // next buffer on B's, to the very sample's time.
    if (!canSound()) return;
    constexpr int frames = 256;
    auto a = pieces::twoBars();
    auto b = pieces::twoBars();
    for (auto& position : b.positions)
        for (auto& note : position.voicing.notes) ++note.string;
    perform::Hearing left;
    left.right = false;
    auto const courseOf = [&](arrange::Arrangement const& of) {
        return perform::course(of, left, {{}, true, false});
    };
    auto synth = sound::HarpSynth::open({});
    REQUIRE(synth);
    sound::Performance performance(std::move(*synth));
    std::vector<float> out;
    std::vector<float> other(frames);
    auto const render = [&](double until) {
        while (static_cast<double>(out.size()) < until * sound::sampleRate) {
            out.resize(out.size() + frames);
            performance.render(out.data() + out.size() - frames, other.data(), frames);
        }
    };
    performance.begin(courseOf(a), {});
    render(3.9); // the second bar, with another bass, begins at 4 s
    auto const before = performance.progress();
    performance.begin(courseOf(b), {before.round, before.at});
    auto const after = performance.progress();
    CHECK(after.at == Approx(before.at).margin(1.0 / sound::sampleRate)); // the same place
    CHECK(static_cast<double>(out.size()) / sound::sampleRate ==
          Approx(before.at).margin(static_cast<double>(frames) / sound::sampleRate));
    render(6);
    // The second bar's bass is B's D3 in A's place, a moment's attack after its beat.
    std::span<float const> const all(out);
    auto const strength = [&](double from, double hz) {
        return strengthAt(all.subspan(static_cast<std::size_t>(from * sound::sampleRate), 9600),
                          hz, sound::sampleRate);
    };
    constexpr double c3 = 130.813;
    constexpr double d3 = 146.832;
    CHECK(strength(4.05, d3) > 10 * strength(4.05, c3));
    double loudest = 0;
    std::size_t onset = 0;
    for (std::size_t i = 4 * sound::sampleRate - 2400; i < 4 * sound::sampleRate + 2400; i += 48) {
        double const rise = level(all.subspan(i, 480)) - level(all.subspan(i - 480, 480));
        if (rise > loudest) {
            loudest = rise;
            onset = i;
        }
    }
    CHECK(static_cast<double>(onset) / sound::sampleRate == Approx(4).margin(0.02));
}
