#pragma once

#include "core/harp/harp.h"

#include <string>
#include <vector>

namespace harp {

// A lever harp while its owner describes it: how many strings from which, what they are tuned
// to, which carry levers, how far apart they lie. A value; each edit answers another. Every
// list has one entry a string, lowest first.
struct HarpModel {
    std::string id; // by which it is saved and asked for: letters, digits and dashes
    std::string name;
    music::Pitch lowest{music::Letter::C, 0, 2}; // letter and octave only
    music::PitchName tuning{music::Letter::E, -1};
    std::vector<bool> levers;
    std::vector<double> gapsMm; // from each string to the next higher
    std::vector<bool> wound;
    Naming naming = Naming::Usual;
    friend bool operator==(HarpModel const&, HarpModel const&) = default;

    int strings() const { return static_cast<int>(levers.size()); }
};

// What a harp may be [trade-1.1, trade-2.1]: from a toy of one octave to more strings than any
// lever harp has, and gaps that a finger fits between or that a hand can span.
inline constexpr int fewestStrings = 8;
inline constexpr int mostStrings = 47;
inline constexpr double leastGapMm = 8;
inline constexpr double greatestGapMm = 30;

// The harp that a model describes. Fault: BadHarp with what is wrong and where ("strings",
// "string 7", "name").
base::Result<Harp> harpOf(HarpModel const& model);

// The model of a harp that is there, to begin an edit with.
HarpModel modelOf(Harp const& harp);

// Edits. Strings are counted from 0, the lowest; those that are not there are left alone.
HarpModel withName(HarpModel model, std::string name); // and an id made from it
HarpModel withStrings(HarpModel model, int strings);   // at the top; new ones like the highest
HarpModel withLowest(HarpModel model, music::Pitch lowest); // as many strings; what a pitch
                                                           // had it keeps
HarpModel withTuning(HarpModel model, music::PitchName tuning);
HarpModel withLever(HarpModel model, StringIndex string, bool has);
HarpModel withLevers(HarpModel model, std::vector<music::Letter> const& letters);
HarpModel withGap(HarpModel model, StringIndex string, double mm);
// Even change from the lowest to the highest gap.
HarpModel withSpacing(HarpModel model, double lowestMm, double highestMm);
HarpModel withWound(HarpModel model, int lowestStrings); // the others are plain

// How many strings are wound from the lowest on.
int woundStrings(HarpModel const& model);

} // namespace harp
