#include "core/arrange/roughness.h"

#include "core/music/pitch.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace arrange {

namespace {

constexpr double roughestBands = 0.25;
constexpr double silentBands = 1.2;
constexpr int tabledPartials = 11;
constexpr std::size_t tabledKeys = highestTabled - lowestTabled + 1;

double bandAt(double hz) { return 1.72 * std::pow(hz, 0.65); }

double pureToneRoughness(double hzA, double hzB)
{
    return roughnessAtBands(std::abs(hzA - hzB) / criticalBandHz(hzA, hzB));
}

// Partials at one frequency are one partial of their summed energy.
std::vector<Partial> merged(std::vector<Partial> partials)
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

// One tone of the table: its partials with the widest gap at which each can still beat with a
// lower one.
struct TabledTone {
    std::array<double, tabledPartials> hz{};
    std::array<double, tabledPartials> reachHz{};
};

TabledTone tabledTone(int key)
{
    TabledTone tone;
    for (std::size_t n = 0; n < tabledPartials; ++n) {
        tone.hz[n] = music::frequencyHz(key) * static_cast<double>(n + 1);
        tone.reachHz[n] = silentBands * bandAt(tone.hz[n]);
    }
    return tone;
}

double energyOfOneTone()
{
    double energy = 0;
    for (int n = 1; n <= tabledPartials; ++n) energy += 1.0 / (n * n);
    return energy;
}

double beating(TabledTone const& a, TabledTone const& b, bool same)
{
    double sum = 0;
    for (std::size_t i = 0; i < tabledPartials; ++i) {
        for (std::size_t j = same ? i + 1 : 0; j < tabledPartials; ++j) {
            double const gap = std::abs(a.hz[i] - b.hz[j]);
            if (gap > std::max(a.reachHz[i], b.reachHz[j])) continue;
            double const amplitudes =
                1.0 / (static_cast<double>(i + 1) * static_cast<double>(j + 1));
            sum += amplitudes * pureToneRoughness(a.hz[i], b.hz[j]);
        }
    }
    return sum;
}

using Table = std::array<std::array<float, tabledKeys>, tabledKeys>;

Table tabled()
{
    std::array<TabledTone, tabledKeys> tones;
    for (std::size_t key = 0; key < tabledKeys; ++key)
        tones[key] = tabledTone(lowestTabled + static_cast<int>(key));
    double const energy = energyOfOneTone();
    Table table{};
    for (std::size_t a = 0; a < tabledKeys; ++a) {
        for (std::size_t b = a; b < tabledKeys; ++b) {
            double const value = beating(tones[a], tones[b], a == b) / energy;
            table[a][b] = table[b][a] = static_cast<float>(value);
        }
    }
    return table;
}

std::size_t placeInTable(int midi)
{
    return static_cast<std::size_t>(std::clamp(midi, lowestTabled, highestTabled) -
                                    lowestTabled);
}

} // namespace

std::vector<Partial> harmonicTone(double hz, int partials, double amplitude)
{
    std::vector<Partial> tone;
    for (int n = 1; n <= partials; ++n) tone.push_back({n * hz, amplitude / n});
    return tone;
}

double criticalBandHz(double hzA, double hzB) { return bandAt((hzA + hzB) / 2); }

double roughnessAtBands(double bands)
{
    if (bands > silentBands) return 0;
    double const y = bands / roughestBands;
    double const root = y * std::exp(1 - y);
    return root * root;
}

double roughness(std::vector<Partial> partials)
{
    std::vector<Partial> const all = merged(std::move(partials));
    double beats = 0;
    double energy = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        energy += all[i].amplitude * all[i].amplitude;
        for (std::size_t j = i + 1; j < all.size(); ++j)
            beats +=
                all[i].amplitude * all[j].amplitude * pureToneRoughness(all[i].hz, all[j].hz);
    }
    return energy > 0 ? beats / energy : 0;
}

double sensoryDissonance(std::span<Partial const> partials)
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

double toneRoughness(int midiA, int midiB)
{
    static Table const table = tabled();
    return static_cast<double>(table[placeInTable(midiA)][placeInTable(midiB)]);
}

double roughness(std::span<RingingTone const> tones)
{
    double beats = 0;
    double energy = 0;
    for (std::size_t i = 0; i < tones.size(); ++i) {
        double const amplitude = tones[i].amplitude;
        energy += amplitude * amplitude;
        beats += amplitude * amplitude * toneRoughness(tones[i].midi, tones[i].midi);
        for (std::size_t j = i + 1; j < tones.size(); ++j)
            beats +=
                amplitude * tones[j].amplitude * toneRoughness(tones[i].midi, tones[j].midi);
    }
    return energy > 0 ? beats / energy : 0;
}

} // namespace arrange
