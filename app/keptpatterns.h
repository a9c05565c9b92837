#pragma once

#include "core/base/result.h"
#include "core/pattern/pattern.h"

#include <filesystem>
#include <vector>

namespace app {

// Where the arranger's own patterns are kept: patterns.json in her folder for Sallow's data, or
// the file that the variable SALLOW_PATTERNS names.
std::filesystem::path keptPatternsFile();

// Her patterns; none where nothing is kept. Faults: those of files::readPatternFile.
base::Result<std::vector<pattern::Pattern>> keptPatterns();

// Keeps one more; the same shape is kept once. Faults: those of reading, CannotWrite.
base::Result<base::Done> keepPattern(pattern::Pattern const& own);

} // namespace app
