#pragma once

#include <span>

// How rough tones sound together: beating partials within one critical band.
namespace arrange {

// Critical bandwidth in Hz round the mean of two frequencies, 1.72 f^0.65 [hk78].
double criticalBandHz(double hzA, double hzB);

// Roughness of two pure tones by their distance in critical bands: 1 at a quarter of a band, 0
// beyond 1.2 bands [hk78, curve as in the 1993 and 2006 transcriptions].
double roughnessAtBands(double bands);

// Lowest and highest MIDI key of the roughness tables: A0 to C8.
inline constexpr int lowestTabled = 21;
inline constexpr int highestTabled = 108;

// The share of two harmonic tones of equal amplitude in the roughness of all that sounds, by
// Hutchinson and Knopoff, before it is divided by the energy: sum over pairs of partials, one
// from each tone, over the energy of one tone. A tone has 11 partials at whole multiples with
// amplitudes 1/n: the force on the board of an ideal pluck, envelope only [science-2]. For a
// tone with itself: over its own pairs of partials. Keys outside the table are clamped. Tabled
// once for all pairs.
double toneRoughness(int midiA, int midiB);

// A tone in a mixture.
struct RingingTone {
    int midi = 60;
    double amplitude = 1;
    friend bool operator==(RingingTone const&, RingingTone const&) = default;
};

// Roughness of harmonic tones sounding together, from the tables: about 0 for an octave in the
// middle of the harp, about 0.5 for a semitone; independent of loudness [hk78]. Partials that
// coincide are not merged. No tones: 0.
double roughness(std::span<RingingTone const> tones);

} // namespace arrange
