#pragma once

#include "core/harmony/chain.h"
#include "core/harmony/findchords.h"

namespace harmony {

// The tonic chord of a mode, from the tonic of its signature's major.
Degree homeDegree(music::Mode mode);

// What is added to the chain of a tune before it is solved: the way's wishes; the home of modes
// that the numbers were not learned from; dominants under leading notes that go home, and home
// where a phrase has come to rest. `heard`: one entry a unit, counted in the signature of
// `home`.
void lean(Chain& chain, ChordTable const& table, tune::Tune const& tune,
          std::vector<Unit> const& units, std::vector<Heard> const& heard, music::Key home,
          Way way);

} // namespace harmony
