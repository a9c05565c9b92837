#pragma once

#include <optional>
#include <span>

// Measuring instruments for sound: what a rendered note is, judged without the program's own
// knowledge of it.
namespace hearing {

// Strength of one frequency in the samples (Hann window, discrete Fourier sum), full scale sine
// about 1.
double strengthAt(std::span<float const> samples, double hz, int sampleRate);

// The frequency of the strongest spectral peak within so many cents of `nearHz`, refined by a
// parabola over the logarithms of three bins; none when the greatest strength lies at the rim,
// which is the slope of something else.
struct Peak {
    double hz = 0;
    double strength = 0;
};
std::optional<Peak> peakNear(std::span<float const> samples, double nearHz, double cents,
                             int sampleRate);

double centsBetween(double fromHz, double toHz);

// Root of the mean square.
double level(std::span<float const> samples);

} // namespace hearing
