#include "app/sound/fontpitch.h"

#include "app/sound/synth.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <map>
#include <mutex>
#include <numbers>
#include <span>
#include <vector>

namespace sound {

namespace {

constexpr int lowestKey = 24;
constexpr int highestKey = 104;
constexpr int middleFrom = 48; // C3 to B5, where most of a tune and its left hand lie
constexpr int middleTo = 84;
constexpr int partialsHeard = 3;
constexpr int velocity = 80;
constexpr double skipped = 0.1;    // of the pluck's own noise, in seconds
constexpr double furthest = 50;    // cents; more is another note
constexpr double weakest = 0.03;   // a partial as strong as this beside the strongest is heard

double hzOf(int key) { return 440 * std::exp2((key - 69) / 12.0); }
double centsBetween(double from, double to) { return 1200 * std::log2(to / from); }

// One frequency in a stretch of sound, with its phase at the stretch's beginning (Hann window).
std::complex<double> partAt(std::span<float const> samples, double hz)
{
    auto const count = static_cast<double>(samples.size());
    std::complex<double> const turn = std::polar(1.0, -2 * std::numbers::pi * hz / sampleRate);
    std::complex<double> const windowTurn = std::polar(1.0, 2 * std::numbers::pi / count);
    std::complex<double> phase = 1;
    std::complex<double> window = 1;
    std::complex<double> sum = 0;
    for (float const sample : samples) {
        sum += (0.5 - 0.5 * window.real()) * static_cast<double>(sample) * phase;
        phase *= turn;
        window *= windowTurn;
    }
    return sum / count;
}

struct Tone {
    double hz = 0;
    double strength = 0;
};

// How fast a partial's phase really turns, seen between two stretches that are first close, so
// that no turn is missed, and then further and further apart.
Tone toneNear(std::span<float const> sound, double hz)
{
    auto const length = static_cast<std::size_t>(
        std::clamp(60 / hz, 0.1, 0.45) * static_cast<double>(sampleRate));
    Tone tone{hz, std::abs(partAt(sound.first(length), hz))};
    // High strings are heard as they begin; what is left of them later may be out of tune.
    double const furthestHop = std::clamp(100 / hz, 0.1, 0.45);
    for (double hop = 8 / hz;;) {
        auto const later = static_cast<std::size_t>(hop * sampleRate);
        if (later + length > sound.size()) break;
        auto const first = partAt(sound.first(length), tone.hz);
        auto const then = partAt(sound.subspan(later, length), tone.hz);
        double const seconds = static_cast<double>(later) / sampleRate;
        double const expected = 2 * std::numbers::pi * tone.hz * seconds;
        double const ahead =
            std::remainder(std::arg(then / first) - expected, 2 * std::numbers::pi);
        tone.hz += ahead / (2 * std::numbers::pi * seconds);
        if (hop >= furthestHop) break;
        hop = std::min(3 * hop, furthestHop);
    }
    return tone;
}

double levelOf(std::span<float const> sound)
{
    double sum = 0;
    for (float const sample : sound) sum += static_cast<double>(sample) * sample;
    return std::sqrt(sum / static_cast<double>(sound.size()));
}

// `loudness`: of this key.
double mistuningOf(HarpSynth& harp, int key, double& loudness)
{
    double const hz = hzOf(key);
    std::vector<float> left(sampleRate);
    std::vector<float> right(left.size());
    harp.pluck(0, key, velocity, harp::Side::Right);
    harp.write(left.data(), right.data(), static_cast<int>(left.size()));
    harp.dampAll();
    std::vector<float> rest(static_cast<std::size_t>(sampleRate) / 10);
    std::vector<float> other(rest.size());
    harp.write(rest.data(), other.data(), static_cast<int>(rest.size())); // it dies away
    for (std::size_t i = 0; i < left.size(); ++i) left[i] += right[i];
    std::span<float const> const sound =
        std::span<float const>(left).subspan(static_cast<std::size_t>(skipped * sampleRate));
    loudness = levelOf(std::span<float const>(left).first(left.size() / 2));
    std::array<Tone, partialsHeard> tones{};
    for (int n = 1; n <= partialsHeard; ++n) {
        tones[static_cast<std::size_t>(n - 1)] = toneNear(sound, n * hz);
        tones[static_cast<std::size_t>(n - 1)].hz /= n;
    }
    double const strongest = std::ranges::max_element(tones, {}, &Tone::strength)->strength;
    for (Tone const& tone : tones) { // the fundamental, unless it is hardly there
        if (strongest <= 1e-6 || tone.strength < weakest * strongest) continue;
        double const cents = centsBetween(hz, tone.hz);
        return std::abs(cents) <= furthest ? std::round(cents * 10) / 10 : 0;
    }
    return 0;
}

} // namespace

FontPitch measured(std::filesystem::path const& font)
{
    static std::mutex mutex;
    static std::map<std::filesystem::path, FontPitch> known;
    std::lock_guard const lock(mutex);
    auto const found = known.find(font);
    if (found != known.end()) return found->second;
    FontPitch pitch;
    if (auto harp = HarpSynth::openUncorrected(font))
        for (int key = lowestKey; key <= highestKey; ++key) {
            double loudness = 0;
            pitch.cents[static_cast<std::size_t>(key)] = mistuningOf(*harp, key, loudness);
            if (key >= middleFrom && key < middleTo)
                pitch.loudness += loudness / (middleTo - middleFrom);
        }
    return known[font] = pitch;
}

} // namespace sound
