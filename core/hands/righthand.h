#pragma once

#include "core/arrange/arrangement.h"

#include <vector>

namespace hands {

// Fingers for the tune in the right hand: the cheapest over the whole tune by exact dynamic
// programming over hand positions (trade-3.3: neighbouring fingers on neighbouring strings,
// thumb highest, repeated strings change finger, crossing under and over).
std::vector<arrange::NoteFingers> rightFingers(tune::Tune const& tune, harp::Harp const& harp,
                                               harp::HandModel const& hand);

} // namespace hands
