#pragma once

#include "core/arrange/roughness.h"

#include <algorithm>
#include <cmath>
#include <vector>

// Roughness summed over partials, the long way: what the tables are checked against.
namespace summed {

struct Partial {
    double hz = 0;
    double amplitude = 1;
};

// A plucked string's at whole multiples of the fundamental with amplitudes 1/n.
inline std::vector<Partial> harmonicTone(double hz, int count = 11)
{
    std::vector<Partial> tone;
    for (int n = 1; n <= count; ++n) tone.push_back({n * hz, 1.0 / n});
    return tone;
}

// Partials at one frequency are one partial of their summed energy.
inline std::vector<Partial> merged(std::vector<Partial> partials)
{
    std::ranges::sort(partials, {}, &Partial::hz);
    std::vector<Partial> out;
    for (Partial const& p : partials) {
        bool const coincides = !out.empty() && std::abs(p.hz - out.back().hz) < 1e-6 * p.hz;
        if (coincides)
            out.back().amplitude = std::hypot(out.back().amplitude, p.amplitude);
        else
            out.push_back(p);
    }
    return out;
}

// By Hutchinson and Knopoff, of everything sounding at once [hk78].
inline double roughness(std::vector<Partial> partials)
{
    std::vector<Partial> const all = merged(std::move(partials));
    double beats = 0;
    double energy = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        energy += all[i].amplitude * all[i].amplitude;
        for (std::size_t j = i + 1; j < all.size(); ++j)
            beats += all[i].amplitude * all[j].amplitude *
                     arrange::roughnessAtBands(std::abs(all[i].hz - all[j].hz) /
                                               arrange::criticalBandHz(all[i].hz, all[j].hz));
    }
    return energy > 0 ? beats / energy : 0;
}

// The same by Sethares, with the constants of the author's page and the smaller amplitude of
// each pair (2005 form), times 5 [seth93]. A referee for the model above.
inline double sensoryDissonance(std::vector<Partial> const& partials)
{
    double sum = 0;
    for (std::size_t i = 0; i < partials.size(); ++i) {
        for (std::size_t j = i + 1; j < partials.size(); ++j) {
            double const low = std::min(partials[i].hz, partials[j].hz);
            double const gap = std::abs(partials[i].hz - partials[j].hz);
            double const x = 0.24 / (0.0207 * low + 18.96) * gap;
            double const loudness = std::min(partials[i].amplitude, partials[j].amplitude);
            sum += 5 * loudness * (std::exp(-3.51 * x) - std::exp(-5.75 * x));
        }
    }
    return sum;
}

} // namespace summed
