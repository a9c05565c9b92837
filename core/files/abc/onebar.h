#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// The notes of one bar as a line of ABC in unit lengths of 1/8, by the key of the bar: without
// chords, words and bar lines.
std::string abcOfBar(tune::Bar const& bar);

// The notes of such a line, read in the key and time signature of a bar.
struct BarNotes {
    tune::Notes notes;
    std::vector<tune::Tuplet> tuplets;
    std::string said; // what was left out, with its column; empty: nothing
};
// Faults as of readAbc, with the column as place; NoNotes for an empty line; BadNote for a bar
// line inside.
base::Result<BarNotes> barFromAbc(std::string_view line, tune::Bar const& bar);

} // namespace files
