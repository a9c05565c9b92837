#include "tests/sound/spectrum.h"

#include <array>
#include <cmath>
#include <complex>
#include <numbers>

namespace hearing {

double strengthAt(std::span<float const> samples, double hz, int sampleRate)
{
    auto const count = static_cast<double>(samples.size());
    double const step = 2 * std::numbers::pi * hz / sampleRate;
    std::complex<double> const turn = std::polar(1.0, -step);
    std::complex<double> const windowTurn = std::polar(1.0, 2 * std::numbers::pi / count);
    std::complex<double> phase = 1;
    std::complex<double> window = 1;
    std::complex<double> sum = 0;
    for (float const sample : samples) {
        sum += (0.5 - 0.5 * window.real()) * static_cast<double>(sample) * phase;
        phase *= turn;
        window *= windowTurn;
    }
    return 4 * std::abs(sum) / count; // a Hann window halves, the negative frequency again
}

std::optional<Peak> peakNear(std::span<float const> samples, double nearHz, double cents,
                             int sampleRate)
{
    // A quarter of the window's own resolution, so that a peak spans several steps.
    double const step = 0.25 * sampleRate / static_cast<double>(samples.size());
    double const from = nearHz * std::exp2(-cents / 1200);
    double const to = nearHz * std::exp2(cents / 1200);
    std::array<double, 3> around{};
    double best = 0;
    double bestHz = 0;
    double before = strengthAt(samples, from - step, sampleRate);
    double here = strengthAt(samples, from, sampleRate);
    for (double hz = from; hz <= to; hz += step) {
        double const after = strengthAt(samples, hz + step, sampleRate);
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
