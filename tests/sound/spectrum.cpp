#include "tests/sound/spectrum.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace hearing {

namespace {

// Faded in and out (Hann window), so that what lies beside a frequency is not heard in it.
std::vector<double> faded(std::span<float const> samples)
{
    double const turn = 2 * std::numbers::pi / static_cast<double>(samples.size());
    std::vector<double> out(samples.size());
    for (std::size_t i = 0; i < samples.size(); ++i)
        out[i] = (0.5 - 0.5 * std::cos(turn * static_cast<double>(i))) *
                 static_cast<double>(samples[i]);
    return out;
}

// One frequency of a sound by a resonator tuned to it (Goertzel 1958).
double resonance(std::vector<double> const& sound, double hz, int sampleRate)
{
    double const twice = 2 * std::cos(2 * std::numbers::pi * hz / sampleRate);
    double last = 0;
    double beforeLast = 0;
    for (double const sample : sound)
        beforeLast = std::exchange(last, sample + twice * last - beforeLast);
    double const power = last * last + beforeLast * beforeLast - twice * last * beforeLast;
    // A Hann window halves, the negative frequency again.
    return 4 * std::sqrt(std::max(0.0, power)) / static_cast<double>(sound.size());
}

} // namespace

double strengthAt(std::span<float const> samples, double hz, int sampleRate)
{
    return resonance(faded(samples), hz, sampleRate);
}

std::optional<Peak> peakNear(std::span<float const> samples, double nearHz, double cents,
                             int sampleRate)
{
    // A quarter of the window's own resolution, so that a peak spans several steps.
    double const step = 0.25 * sampleRate / static_cast<double>(samples.size());
    double const from = nearHz * std::exp2(-cents / 1200);
    double const to = nearHz * std::exp2(cents / 1200);
    std::vector<double> const sound = faded(samples);
    std::array<double, 3> around{};
    double best = 0;
    double bestHz = 0;
    double before = resonance(sound, from - step, sampleRate);
    double here = resonance(sound, from, sampleRate);
    for (double hz = from; hz <= to; hz += step) {
        double const after = resonance(sound, hz + step, sampleRate);
        if (here > best && here >= before && here >= after) {
            best = here;
            bestHz = hz;
            around = {std::log(before), std::log(here), std::log(after)};
        }
        before = here;
        here = after;
    }
    if (best == 0) return std::nullopt;
    double const bend = around[0] - 2 * around[1] + around[2];
    double const offset = bend == 0 ? 0 : 0.5 * (around[0] - around[2]) / bend;
    return Peak{bestHz + offset * step, best};
}

double centsBetween(double fromHz, double toHz) { return 1200 * std::log2(toHz / fromHz); }

double level(std::span<float const> samples)
{
    double sum = 0;
    for (float const sample : samples) sum += static_cast<double>(sample) * sample;
    return samples.empty() ? 0 : std::sqrt(sum / static_cast<double>(samples.size()));
}

} // namespace hearing
