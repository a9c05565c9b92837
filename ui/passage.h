#pragma once

#include "core/tune/playing.h"

#include <optional>

namespace ui {

// Written bars that are heard, repeated or compared together, the first never behind the last.
struct Passage {
    tune::BarIndex firstBar = 0;
    tune::BarIndex lastBar = 0;
    friend bool operator==(Passage const&, Passage const&) = default;
};

// From one bar to another, in either order.
Passage passageBetween(tune::BarIndex bar, tune::BarIndex other);

// The phrase of four bars, or the part, that a bar is in. A pick-up goes with what it leads to;
// a second ending stands where the first does.
Passage phraseAround(tune::Tune const& tune, tune::BarIndex bar);
Passage partAround(tune::Tune const& tune, tune::BarIndex bar);

// Where it is played. The shortest run from its first bar to its
// last, and of equally short ones the first; so a repeat within it is left out where the tune
// goes straight on the last time. None: the tune never plays it in this order.
struct PlayedPassage {
    tune::PlayedBarIndex first = 0;
    tune::PlayedBarIndex last = 0;
    friend bool operator==(PlayedPassage const&, PlayedPassage const&) = default;
};
std::optional<PlayedPassage> playedPassage(tune::Playing const& playing, Passage passage);

} // namespace ui
