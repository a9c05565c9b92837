#pragma once

#include "core/base/result.h"
#include "core/pattern/pattern.h"

#include <string>
#include <string_view>
#include <vector>

namespace files {

// The arranger's own patterns, to keep beside her tunes: JSON with "sallow_patterns" (the
// version of the form, 1) and "patterns", each as it is typed (core/pattern/own.h) with a note
// if she likes:
//     {"sallow_patterns": 1, "patterns": [{"pattern": "1-5-8-10-8", "note": "for slow airs"}]}
std::string patternFileText(std::vector<pattern::Pattern> const& own);

// Faults: Malformed with file and line; those of ownPatternFrom, with file, place in the list
// and note.
base::Result<std::vector<pattern::Pattern>> readPatternFile(std::string_view text,
                                                            std::string const& file);

} // namespace files
