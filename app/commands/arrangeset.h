#pragma once

#include "app/cli/job.h"

namespace app {

// A set: its tunes in the keys that the set takes them in. What belongs to the set as a
// whole, pages, sound, MIDI and words, goes into one file; of the other kinds there is a file a
// tune, with its place in the set before the ending. What is flipped between them is told on
// stderr. Of several levels each tune has its own files. Title and notes of the call are the
// set's.
ExitStatus arrangeSet(Call const& call, std::vector<Output> const& outputs, OutputNames& names);

} // namespace app
