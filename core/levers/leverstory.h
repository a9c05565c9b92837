#pragma once

#include "core/arrange/arrangement.h"

#include <string>

namespace levers {

// Whether the tune itself (with its grace notes) plays a string of an arrangement.
bool tunePlays(arrange::Arrangement const& arrangement, harp::StringIndex string);

// Why the lever of a string stands as it does, for the arranger who would turn it: "The tune
// first plays C♯5 (string 15) in bar 3, so its lever is up from the start; it is turned down
// in bar 7 by the left hand." For a string that the tune does not play: that its lever is free.
std::string leverStory(arrange::Arrangement const& arrangement, harp::StringIndex string);

} // namespace levers
