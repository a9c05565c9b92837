#pragma once

#include "core/music/key.h"
#include "core/music/meter.h"
#include "core/tune/tune.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The values of the information fields of ABC 2.1 (section 3), each from the text behind its
// colon. None means that the text cannot be understood; the reader knows the place.
namespace files {

// K: the key with its signature letter by letter, since a signature may be changed or listed
// outright ("K:D Phr ^f", "K:D exp _b _e ^f").
struct AbcKey {
    music::Key key;             // for a listed signature: the mode that comes nearest
    std::array<int, 7> alter{}; // by music::index of the letter
    int octave = 0;             // notes sound so many octaves higher (octave=1)
};
std::optional<AbcKey> abcKey(std::string_view text);

// How many octaves higher than written the notes of a voice sound, by the properties of its V:
// field ("octave=-1", "clef=treble-8"). None where they say nothing of it.
std::optional<int> abcVoiceOctave(std::string_view properties);

// M: none as a field value is free meter.
struct AbcMeter {
    std::optional<music::Meter> meter; // none: free
};
std::optional<AbcMeter> abcMeter(std::string_view text);

// L: a fraction of a whole note, from 1/512 to 8.
std::optional<music::Rational> abcUnitLength(std::string_view text);

// The unit length where L: is silent: 1/16 in meters below 3/4, else 1/8.
music::Rational usualUnitLength(AbcMeter const& meter);

// Q: the beat may be a sum ("1/4 3/8=40") or left out ("120": unit lengths a minute).
struct AbcTempo {
    std::optional<tune::Tempo> tempo; // none: words only
    std::string words;
};
std::optional<AbcTempo> abcTempo(std::string_view text, music::Rational unitLength);

// P: in the header: "AABB", "A2(BC)3". None when it is no order or has more than 500 parts.
std::optional<std::vector<std::string>> abcPartOrder(std::string_view text);

// A part's name, as against a direction that stands in a P: field: "A", "B2", "Chorus", "V 4".
bool abcPartName(std::string_view text);

// "3/4" as two whole numbers of at most nine digits; "3" alone has denominator 1.
struct Fraction {
    long numerator = 1;
    long denominator = 1;
};
std::optional<Fraction> fractionFrom(std::string_view text);

} // namespace files
