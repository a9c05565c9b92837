#pragma once

#include "core/levers/useindex.h"
#include "core/tune/changes.h"
#include "core/tune/playing.h"

#include <vector>

// What the levers must serve: the notes of the tune as they are played, and the grace notes
// before them, which take no counted time.
namespace levers {

// Notes and grace notes by time, grace notes before what they lead to. A grace note is held for
// no time, and its `ofChord` is below 0: -1 for the first before its note, -2 for the second.
Uses usesOf(tune::Tune const& tune, tune::Playing const& playing);

inline bool isGrace(tune::PlayedNote const& use) { return use.ofChord < 0; }

// Where a note or grace note stands in writing.
tune::NotePlace placeOf(tune::PlayedNote const& use, tune::PlayedBars const& bars);

} // namespace levers
