#pragma once

#include "core/tune/tune.h"

#include <random>

// Tunes at random, made by the edits that an arranger has. The same generator makes the same
// tunes on every machine: only its bits are used, no distribution of the library.
namespace randomtunes {

// What they begin with: four bars of rest and a pick-up, and a jig with a repeat, endings,
// chords and a grace note. Invented.
tune::Tune empty();
tune::Tune full();

// After one edit at random; what it chooses may not be possible, and then changes nothing.
tune::Tune edited(tune::Tune const& tune, std::mt19937& random);

// One of the two after so many edits.
tune::Tune some(std::mt19937& random, int edits);

} // namespace randomtunes
