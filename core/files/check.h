#pragma once

#include "core/tune/tune.h"

#include <string>

namespace files {

// What was read of one tune, as one line of JSON without its line end: the form that
// `check --json` prints, a stable contract described in DEVELOPERS.md. Notes stand in written
// order, ties joined, grace notes left out, lengths as fractions of a whole note; -1 is a rest
// and a list a chord.
std::string checkLine(tune::Tune const& tune);

} // namespace files
