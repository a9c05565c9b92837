#pragma once

#include "core/tune/tune.h"

#include <optional>

namespace tune {

// Another time signature to where it changes, with the bar lines drawn anew: the notes follow
// one another as before, those across a new bar line are tied, and chords stay over their
// notes. Repeats, time bars, parts and changes of key stay where they are, so that the last bar
// before one may be short. A pick-up stays one. None: a triplet or its like would lie across a
// bar line.
std::optional<Tune> rebarred(Tune const& tune, music::Meter meter);

// Whether that would move any bar line: not where the bars have the new length already.
bool needsNewBars(Tune const& tune, music::Meter meter);

} // namespace tune
