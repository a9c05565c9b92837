#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

#include <string>
#include <string_view>

namespace files {

// The tune of a Standard MIDI File: the notes of one track (one that is named for a melody or
// the right hand, else the highest), put on the grid of demisemiquavers and of thirds of a
// quaver. A MIDI file has no bar lines, repeats or spellings: bars follow its meters, pitches
// its key, and all that is guessed is said. Chord symbols are read where text events are such.
// Faults: those of readSmf, NoNotes.
base::Result<tune::Tune> readMidi(std::string_view bytes, std::string const& file);

} // namespace files
