#pragma once

namespace proposal {

// What the right hand plays: the tune alone; with notes below it where phrases close; or also
// on strong beats.
enum class RightHand { Bare, Closes, Full };

} // namespace proposal
