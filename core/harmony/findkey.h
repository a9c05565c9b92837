#pragma once

#include "core/harmony/keyhistograms.h"
#include "core/music/key.h"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace harmony {

// Modes that are told apart.
inline constexpr std::array keyModes{music::Mode::Ionian, music::Mode::Aeolian,
                                     music::Mode::Dorian, music::Mode::Mixolydian};

// Numbers learned from the keys that people wrote over folk tunes [own-keys], in units of
// 1/weightOne nats: [mode][histogram][degree from the tonic that is tried].
struct KeyTable {
    std::vector<std::int16_t> weights;
    friend bool operator==(KeyTable const&, KeyTable const&) = default;
};
inline constexpr std::size_t keyTableSize = keyModes.size() * keyHistograms * 12;

struct LikelyKey {
    music::Key key;
    double probability = 0;
};

// Key and mode of a tune from its notes alone, whatever its file says.
struct FoundKey {
    std::vector<LikelyKey> likely; // all that have a chance, best first
    int tones = 7;                 // how many of the twelve notes it has: five make a
                                   // pentatonic tune, whose signature stays open
    std::string reason; // "it ends on A; its third C, its sixth F♯ and its seventh G"
};

// None for a tune without notes.
std::optional<FoundKey> foundKey(KeyTable const& table, tune::Tune const& tune);

// From here on a found key is taken for sure enough to contradict a file.
inline constexpr double sureOfKey = 0.8;

// "K:G, but from the notes it is A dorian: it ends on A ...": what is offered where the file
// says another key than its notes, surely enough; none else.
std::optional<std::string> keyContradiction(FoundKey const& found, music::Key written);

} // namespace harmony
