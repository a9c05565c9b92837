#pragma once

#include "core/harmony/features.h"
#include "core/music/chord.h"
#include "core/music/key.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace harmony {

enum class Quality { Major, Minor, Diminished };

// A triad seen from the tonic of the signature's major: 7 semitones up and major is V, 9 and
// minor is vi.
struct Degree {
    int semitones = 0;
    Quality quality = Quality::Major;
    friend constexpr bool operator==(Degree const&, Degree const&) = default;
};

// Numbers learned from chords that people wrote over folk tunes [own-chords]: how much each
// feature speaks for each degree, and each degree for the next one by the place in the phrase.
// All in units of 1/weightOne nats.
struct ChordTable {
    std::vector<Degree> degrees;
    std::vector<std::int16_t> weights;     // [feature][degree]
    std::vector<std::int16_t> transitions; // [phrase place of the next][degree][next]

    std::int16_t weight(int feature, std::size_t degree) const
    {
        return weights[static_cast<std::size_t>(feature) * degrees.size() + degree];
    }
    std::int16_t transition(int place, std::size_t from, std::size_t to) const
    {
        return transitions[(static_cast<std::size_t>(place) * degrees.size() + from) *
                               degrees.size() +
                           to];
    }
    friend bool operator==(ChordTable const&, ChordTable const&) = default;
};
inline constexpr int weightOne = 64;

// "0", "9m", "11o": semitones and quality, the form of the table's file; and back.
std::string text(Degree degree);
std::optional<Degree> degreeFrom(std::string_view text);

// The degree a written chord stands on, sevenths and basses dropped; none for chords that are
// no triad with a third.
std::optional<Degree> degreeOf(music::Chord const& chord, int tonic);

// The triad in a signature, spelt as it is used there: 4 semitones major in C is E, 8 major A♭.
music::Chord chordOn(Degree degree, int signature);

} // namespace harmony
