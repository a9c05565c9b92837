#pragma once

#include <span>

namespace sheet {

enum class Stem { Up, Down };

// The direction of one stem, or of all stems of a beam, from the staff steps of all its
// noteheads (0 the middle line): away from the side that holds the note furthest from the
// middle; the sum decides between equals, and a tie points down [gould11].
Stem stemDirection(std::span<int const> steps);

// Length of a lone stem in spaces, from the notehead nearest to its end: an octave, longer to
// reach the middle line from ledger lines, and for every flag from the third on.
double stemLengthFor(int nearestStep, Stem stem, int flags);

} // namespace sheet
