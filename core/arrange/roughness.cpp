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

double criticalBandHz(double hzA, double hzB) { return bandAt((hzA + hzB) / 2); }

double roughnessAtBands(double bands)
{
    if (bands > silentBands) return 0;
    double const y = bands / roughestBands;
    double const root = y * std::exp(1 - y);
    return root * root;
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
