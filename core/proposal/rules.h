#pragma once

#include "core/arrange/arrangement.h"
#include "core/pattern/pattern.h"

#include <string>
#include <vector>

namespace proposal {

// Everything in an arrangement that no harper could play or that is not the tune: one sentence
// each, beginning with its bar; none when it keeps the rules. Looks at the result alone and
// knows nothing of how it was found. The rules:
// - every note lies on a string of the harp and sounds what string and lever give;
// - no string is plucked twice at once, and where both hands pluck they are not crossed;
// - what the left hand plucks together is within its reach, thumb uppermost, or is rolled where
//   the pattern allows; no shape is wider than the level;
// - the left hand keeps the level's rates, also on one string, and its time for a leap;
// - the hand that turns a lever plucks nothing meanwhile, and no note changes pitch while it is
//   wanted: a note of the tune for half its count at least, any other for all of it;
// - the fingers of both hands keep their order and their reach, see handrules.h;
// - the tune's own notes are all there, each with its time, length and pitch, and no others.
std::vector<std::string> brokenRules(arrange::Arrangement const& arrangement,
                                     pattern::PatternBook const& book);

} // namespace proposal
