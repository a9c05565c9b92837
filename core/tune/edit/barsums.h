#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <vector>

namespace tune {

// How long the notes of a bar ought to last together: a full bar, less what a pick-up leaves
// out. A bar that may be short, such as the one that a pick-up completes, is right as it is.
music::Length dueLength(Bars const& bars, BarIndex bar);

// A bar whose notes do not add up.
struct OddBar {
    BarIndex bar = 0;
    music::Length off; // above zero: too long by so much; below: too short
    friend bool operator==(OddBar const&, OddBar const&) = default;
};
std::optional<OddBar> oddBar(Bars const& bars, BarIndex bar);

// "too long by 1/8": for the reader.
std::string oddWords(OddBar const& odd);

} // namespace tune
