#pragma once

#include "core/music/pitch.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace music {

// The seven diatonic modes, in the order of the major degrees they start from.
enum class Mode { Ionian, Dorian, Phrygian, Lydian, Mixolydian, Aeolian, Locrian };

inline constexpr std::array allModes{Mode::Ionian, Mode::Dorian,     Mode::Phrygian,
                                     Mode::Lydian, Mode::Mixolydian, Mode::Aeolian,
                                     Mode::Locrian};

struct Key {
    PitchName tonic{Letter::C, 0};
    Mode mode = Mode::Ionian;
    friend constexpr bool operator==(Key const&, Key const&) = default;
};

// Sharps in the signature; flats are negative. D dorian is 0, E flat major -3.
constexpr int signature(Key key)
{
    // How many fifths a mode's tonic lies above the major tonic of the same signature.
    constexpr std::array above{0, 2, 4, -1, 1, 3, 5};
    return fifths(key.tonic) - above[static_cast<std::size_t>(key.mode)];
}

// Sharps are added in this order and flats in the reverse order.
inline constexpr std::array orderOfSharps{Letter::F, Letter::C, Letter::G, Letter::D,
                                          Letter::A, Letter::E, Letter::B};

// What a signature does to a letter: -1 flat, 0 natural, +1 sharp (beyond seven: two).
constexpr int alterIn(int signature, Letter letter)
{
    int const place = fifths(PitchName{letter, 0}) + 1; // F 0 ... B 6
    int alter = 0;
    for (int s = signature; s > place; s -= 7) ++alter;
    for (int s = signature; s < place - 6; s += 7) --alter;
    return alter;
}

// The key with this signature and mode: keyOf(-3, Ionian) is E flat major.
Key keyOf(int signature, Mode mode);

// "E♭ major", "D dorian", "A minor": for the reader. Plain: "Eb", "Ddor", "Am".
std::string shown(Key key);
std::string plain(Key key);
// The mode's name in the plan file: "major", "minor", "dorian" ...
std::string_view modeName(Mode mode);

// Reads "G", "Am", "Ddor", "D dorian", "Bb major", "F#min", "amix" (any case of the mode; three
// letters of a mode are enough, as ABC has it). None when it is no key.
std::optional<Key> keyFrom(std::string_view text);

} // namespace music
