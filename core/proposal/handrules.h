#pragma once

#include "core/arrange/arrangement.h"

#include <string>
#include <vector>

namespace proposal {

// What the fingers of either hand cannot do, one sentence each, beginning with its bar; part of
// brokenRules. Looks at the notes and groups alone. The rules:
// - every note has a finger from 1 to 4;
// - fingers that pluck together or are placed together lie in their order, the thumb highest,
//   and no two of them beyond their hard limit [trade-3.2], but where a chord is rolled;
// - one finger lies on one string of a group, but where it slides to the next, at a level that
//   slides;
// - what the right hand adds lies a third, a sixth or an octave below a note of the tune, is
//   plucked with it, and sounds a tone of the chord that governs there; bare hands add nothing;
// - a note that the right hand takes from the left comes when it is free at the level's rate.
std::vector<std::string> brokenHandRules(arrange::Arrangement const& arrangement);

} // namespace proposal
