#pragma once

#include <array>
#include <string>
#include <vector>

namespace harp {

// Fingers are numbered 1 thumb, 2, 3, 4; the little finger does not play.
inline constexpr int fingers = 4;

// How far apart two fingers of one hand lie, in string gaps at 15 mm (middle C).
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
    friend bool operator==(Level const&, Level const&) = default;
};

} // namespace harp
