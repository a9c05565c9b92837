#pragma once

#include "core/harmony/findchords.h"

namespace harmony {

// The tune with the chords that its notes ask for, after they were edited: found for the first
// time where it has notes and no chords; found again in the way in which they stand, where they
// are those that this way finds for the tune as it was `before`. Chords that the arranger set
// stay. None: nothing sounds in it, the file has chords of its own, or somebody has put them
// otherwise.
std::optional<tune::Tune> chordsAfterNotes(Learned const& learned, tune::Tune const& before,
                                           tune::Tune const& after);

// Whether the bars of both have the same notes, whatever their chords are.
bool sameNotes(tune::Tune const& a, tune::Tune const& b);

} // namespace harmony
