#pragma once

#include "core/tune/playing.h"

#include <string>
#include <vector>

namespace planrules {

// What a checker finds wrong who has nothing but a plan file and the tune as it is played:
// strings, levers and pitches; strings plucked twice at once; the left hand's reach and the
// hands' order at one onset; the tune's own notes, in the key the plan is in.
std::vector<std::string> brokenIn(std::string const& planJson,
                                  std::vector<tune::PlayedNote> const& tune);

} // namespace planrules
