#pragma once

#include "core/music/key.h"
#include "core/tune/tune.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace harmony {

// Modes that are told apart, and what of a tune is heard for it: histograms of twelve degrees
// from the tonic that is tried.
inline constexpr std::array keyModes{music::Mode::Ionian, music::Mode::Aeolian,
                                     music::Mode::Dorian, music::Mode::Mixolydian};
inline constexpr int keyHistograms = 9;

// Numbers learned from the keys that people wrote over folk tunes [own-keys], in units of
// 1/weightOne nats: [mode][histogram][degree].
struct KeyTable {
    std::vector<std::int16_t> weights;
    friend bool operator==(KeyTable const&, KeyTable const&) = default;
};
inline constexpr std::size_t keyTableSize = keyModes.size() * keyHistograms * 12;

// What a tune holds, by pitch class: shares of the whole in units of 1/1024. In order: how long
// each sounds; whether it sounds at all; the last note; the last notes of strains; the first
// note on a bar line; those of strains; notes on bar lines; the lowest; the last bar but one of
// strains.
using KeyHistograms = std::array<std::array<int, 12>, keyHistograms>;
KeyHistograms keyHistogramsOf(tune::Tune const& tune);

struct LikelyKey {
    music::Key key;
    double probability = 0;
};

// Key and mode of a tune from its notes alone, whatever its file says.
struct FoundKey {
    std::vector<LikelyKey> likely; // all that have a chance, best first
    int tones = 7;                 // how many of the twelve notes it has: five make a
                                   // pentatonic tune, whose signature stays open
    std::string reason;            // "it ends on A, F♯ is raised and there is no G♯"
};

// None for a tune without notes.
std::optional<FoundKey> foundKey(KeyTable const& table, tune::Tune const& tune);

// From here on a found key is taken for sure enough to contradict a file.
inline constexpr double sureOfKey = 0.8;

// "K:G, but from the notes it is A dorian: it ends on A ...": what is offered where the file
// says another key than its notes, surely enough; none else.
std::optional<std::string> keyContradiction(FoundKey const& found, music::Key written);

} // namespace harmony
