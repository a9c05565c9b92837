#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// Where one tune of a tunebook lies, so that a large book opens at once and tunes are read when
// asked.
struct AbcEntry {
    int number = 1; // X:
    std::string title;
    std::size_t from = 0; // bytes
    std::size_t to = 0;
    int line = 1;
};

// The tunes of an ABC text. Bytes that are no UTF-8 are taken as Latin-1. Faults: FileEmpty,
// FileBinary, NoTune.
base::Result<std::vector<AbcEntry>> abcTunes(std::string_view text);

// One tune of the text (ABC 2.1, melody and chord symbols; other voices are left out and said).
// `file` is named in faults. What could be read in more than one way is said in Tune::said.
base::Result<tune::Tune> readAbc(std::string_view text, AbcEntry const& entry,
                                 std::string const& file);

} // namespace files
