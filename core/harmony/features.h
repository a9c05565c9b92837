#pragma once

#include "core/harmony/units.h"

#include <vector>

namespace harmony {

// What the chord finder hears in a unit: numbers of the notes, counted from the tonic of the
// signature's major, and of the place in the strain. Whole numbers, so that every machine hears
// the same.
struct Feature {
    int index = 0;
    int value = 0; // in units of featureOne
    friend bool operator==(Feature const&, Feature const&) = default;
};
inline constexpr int featureOne = 1024;

// The features of one unit, each index once at most.
using Heard = std::vector<Feature>;

// Histograms of twelve degrees that are also read relative to a chord's root: their features
// stand first, twelve each.
inline constexpr int histogramCount = 9;
inline constexpr int featureCount = 564;

// The place in the phrase, 0 to 15: which transitions hold on the way into a unit.
constexpr int phrasePlace(Unit const& unit)
{
    return 2 * unit.barOfPhrase + (unit.opensBar ? 0 : 1);
}
inline constexpr int phrasePlaces = 16;

// From where degrees are counted in one bar.
struct Frame {
    int tonic = 0;      // pitch class of the signature's major tonic
    bool minor = false; // the tune stands in the minor of that signature
    friend bool operator==(Frame const&, Frame const&) = default;
};

using Frames = base::List<tune::BarIndex, Frame>;

// One frame a bar, by the keys in force.
Frames framesOf(tune::Tune const& tune);

// One entry a unit.
std::vector<Heard> heard(tune::Tune const& tune, std::vector<Unit> const& units,
                         Frames const& frames);

} // namespace harmony
