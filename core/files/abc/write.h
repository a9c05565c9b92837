#pragma once

#include "core/arrange/arrangement.h"
#include "core/perform/slowing.h"
#include "core/tune/tune.h"

#include <string>

namespace files {

// The tune as ABC 2.1: reads back as the same tune. Two things become plainer on the way: a
// chord symbol that stands inside a note cuts it into two that are tied, and signs over notes
// that ABC has no word for keep the name they have.
std::string abcOfTune(tune::Tune const& tune);

// Both hands as ABC 2.1, each a voice: RH with the chord symbols, the fingers and, below the
// staff, lever set-up and changes; LH with fingers and, below, the pattern labels. The notes
// are those of the printed sheet. Read as a tune it is the right hand.
std::string abcOfArrangement(arrange::Arrangement const& arrangement,
                             perform::Slowing slowing = {});

} // namespace files
