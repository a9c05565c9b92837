#pragma once

#include <array>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace music {

enum class Letter { C, D, E, F, G, A, B };

inline constexpr std::array allLetters{Letter::C, Letter::D, Letter::E, Letter::F,
                                       Letter::G, Letter::A, Letter::B};

constexpr int index(Letter letter) { return static_cast<int>(letter); }

// Semitones of the natural notes above C.
inline constexpr std::array semitonesAboveC{0, 2, 4, 5, 7, 9, 11};

// A note name without octave: F sharp, B flat.
struct PitchName {
    Letter letter = Letter::C;
    int alter = 0; // semitones from the natural note: -1 flat, +1 sharp
    friend constexpr auto operator<=>(PitchName const&, PitchName const&) = default;
};

// A written pitch. C sharp and D flat sound alike but are different Pitches: on a lever harp
// they lie on different strings.
struct Pitch {
    Letter letter = Letter::C;
    int alter = 0;  // semitones from the natural note: -1 flat, +1 sharp
    int octave = 4; // scientific numbering: octave 4 begins at middle C
    friend constexpr bool operator==(Pitch const&, Pitch const&) = default;
};

constexpr PitchName nameOf(Pitch p) { return {p.letter, p.alter}; }

// Steps along the white notes from C0, alterations ignored. One string is one step.
constexpr int diatonicStep(Pitch p) { return 7 * p.octave + index(p.letter); }

// The natural pitch at a diatonic step; the inverse of diatonicStep. Steps below C0 work too.
constexpr Pitch naturalAt(int step)
{
    int const octave = step >= 0 ? step / 7 : -((6 - step) / 7);
    return {static_cast<Letter>(step - 7 * octave), 0, octave};
}

// MIDI key number: middle C (C4) is 60 (MIDI 1.0; ISO 16 for A4 = 440 Hz at key 69).
constexpr int midi(Pitch p)
{
    return 12 * (p.octave + 1) + semitonesAboveC[static_cast<std::size_t>(index(p.letter))] +
           p.alter;
}

// 0 for C to 11 for B.
constexpr int pitchClass(PitchName n)
{
    return ((semitonesAboveC[static_cast<std::size_t>(index(n.letter))] + n.alter) % 12 + 12) %
           12;
}
constexpr int pitchClass(Pitch p) { return pitchClass(nameOf(p)); }

// Place on the line of fifths: F -1, C 0, G 1, D 2 ... each sharp adds 7.
constexpr int fifths(PitchName n)
{
    constexpr std::array natural{0, 2, 4, -1, 1, 3, 5};
    return natural[static_cast<std::size_t>(index(n.letter))] + 7 * n.alter;
}
PitchName nameAtFifths(int fifths);

// Fundamental in equal temperament, A4 = 440 Hz (ISO 16).
double frequencyHz(int midiKey);

// "F♯", "B♭", "C": for the reader. Plain form: "F#", "Bb".
std::string shown(PitchName name);
std::string plain(PitchName name);
// "C4", "F♯3": scientific octave, for the reader; plain form "F#3".
std::string shown(Pitch pitch);
std::string plain(Pitch pitch);

// Reads "F#", "Bb", "C", "c#" (case does not matter for the letter); none when it is no note
// name.
std::optional<PitchName> pitchNameFrom(std::string_view text);
// Reads "F#3", "Bb2", "C4".
std::optional<Pitch> pitchFrom(std::string_view text);

// A transposition: so many steps along the white notes and so many semitones. A fifth up is
// {4, 7}; spelling follows from both.
struct Interval {
    int steps = 0;
    int semitones = 0;
    friend constexpr bool operator==(Interval const&, Interval const&) = default;
};

// As far the other way.
constexpr Interval opposite(Interval by) { return {-by.steps, -by.semitones}; }

Pitch transposed(Pitch pitch, Interval by);
PitchName transposed(PitchName name, Interval by);
// The interval from one pitch up (or down, when negative) to another.
Interval between(Pitch from, Pitch to);

} // namespace music
