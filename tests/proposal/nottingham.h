#pragma once

#include "core/tune/tune.h"

#include <optional>
#include <string>
#include <vector>

// Folk tunes with chord symbols that lie beside the project on a developer's machine.
namespace nottingham {

struct NamedTune {
    std::string name; // file and number, for messages
    tune::Tune tune;
};

// All tunes that have chords and read, ordered by file and number; none when the folder is
// absent, which the caller then says.
std::optional<std::vector<NamedTune>> tunesWithChords();

// All tunes of the folk tunes and of the old tunebooks beside them, with chords or without.
std::optional<std::vector<NamedTune>> everyTune();

} // namespace nottingham
