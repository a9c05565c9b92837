#pragma once

#include "core/arrange/arrangement.h"
#include "core/pattern/pattern.h"

namespace hands {

// Helps a hand that must stretch, where a shape of the left hand is wider than it holds with
// comfort [trade-3.2]:
// - what is plucked together is rolled up, where the pattern rolls;
// - of a broken shape, for a hand that holds no tenth with comfort, the right hand takes the
// highest note, where it is near and plucks
//   nothing for the time it takes to place a finger, on every pass;
// - else finger 4 leaves its string as the thumb arrives.
// Says so in the arrangement's remarks. Voicings are those of the solver, in which nothing has
// been eased yet.
void easeStretches(arrange::Arrangement& arrangement, pattern::PatternBook const& book);

// Whether a remark is one of these: the page says it in words.
bool easesHand(arrange::HandRemark const& remark);

// Whether two strings lie farther apart than the hand holds with comfort, or than a tenth.
bool stretches(arrange::Arrangement const& arrangement, harp::StringIndex lowString,
               harp::StringIndex highString);

} // namespace hands
