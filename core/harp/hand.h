#pragma once

#include "core/harp/harp.h"

#include <span>
#include <string>
#include <vector>

namespace harp {

// Fingers are numbered 1 thumb, 2, 3, 4; the little finger does not play.
inline constexpr int fingers = 4;

// How far apart two fingers of one hand lie, in string gaps at 15 mm (middle C) [trade-3.2].
struct PairReach {
    int low = 2; // the finger on the lower string, by number
    int high = 1;
    int easyGaps = 0; // comfortable
    int hardGaps = 0; // never beyond, except rolled one after the other
    friend bool operator==(PairReach const&, PairReach const&) = default;
};

// A hand, measured or guessed. Spans are from thumb to finger 4 along the strings.
struct HandModel {
    std::string id;
    std::string name;
    double comfortMm = 135; // a shape plucked together without effort
    double limitMm = 165;   // flat-handed maximum of a shape plucked together
    std::vector<PairReach> pairs;
    friend bool operator==(HandModel const&, HandModel const&) = default;
};

// What a player of one level is asked to do (working limits, see shared/levels.json).
struct Level {
    int number = 3;
    std::string name;
    double leftNotesPerSecond = 4;
    double rightNotesPerSecond = 6;
    double sameStringPerSecond = 2.5;
    double octaveLeapSeconds = 0.5;
    int leftStrings = 10;         // widest shape, counted in strings
    double flipFreeBeats = 2;     // free time a hand needs for one flip, in beats
    double flipFreeSeconds = 0.4; // and never less than this
    bool flips = true;            // whether levers are turned in play at all
    int rightFingers = 4;         // of the right hand, where a chord does not need more
    bool crosses = true;          // under the thumb and over the fingers, in the right hand
    bool slides = false;          // of the thumb and of finger 4
    friend bool operator==(Level const&, Level const&) = default;
};

// A string and the finger that is on it.
struct PlacedFinger {
    StringIndex string = 0;
    int finger = 1;
    friend bool operator==(PlacedFinger const&, PlacedFinger const&) = default;
};

// How a hand lies on the strings: at ease; stretched, so that it wants a roll or a slow tempo;
// or beyond what it can reach, even rolled.
enum class Ease { Easy, Stretched, Beyond };

// Two fingers of one hand on a lower and a higher string. The thumb lies on the highest string
// and finger 4 on the lowest; against that order fingers only cross to a neighbouring string.
// One finger on two strings is beyond every hand.
Ease easeOf(Harp const& harp, HandModel const& hand, PlacedFinger low, PlacedFinger high);

// A whole shape, placed at once: as hard as its hardest pair. No more than one string a finger.
Ease easeOf(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed);

// Whether a shape can be rolled or broken from one end to the other: the fingers that have
// played leave their strings, so that only the whole width counts, against the widest reach of
// thumb and finger 4. An open chord 1-5-8-10 asks too much of 4 and 2 at once, but rolls.
bool rollable(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed);

// Not beyond reach, stretched or not.
bool withinReach(Harp const& harp, HandModel const& hand, StringIndex lowString, int lowFinger,
                 StringIndex highString, int highFinger);

// How far in mm a shape reaches beyond what is easy, over its hardest pair; 0 when all is easy.
double stretchMm(Harp const& harp, HandModel const& hand, std::span<PlacedFinger const> placed);

// From the lowest to the highest string of a shape, in mm.
double spanMm(Harp const& harp, std::span<PlacedFinger const> placed);

// How many strings, counted upwards from one string and including it, lie within a span: 10
// for 135 mm at 15 mm a gap.
int stringsWithin(Harp const& harp, double mm, StringIndex fromString);

} // namespace harp
