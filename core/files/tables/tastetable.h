#pragma once

#include "core/arrange/score.h"
#include "core/files/tables/tablerow.h"

#include <vector>

namespace files {

// Every figure of a taste, none missing (shared/taste.json). Throws table::Damage.
void readTaste(table::Row& groups, arrange::Taste& taste);

// The styles of shared/weights.json: a weight for each term, and under "taste" those figures
// that are a style's own; all others are those of `usual`. Throws table::Damage.
void readStyles(table::Row& file, arrange::Taste const& usual,
                std::vector<arrange::Weights>& styles);

} // namespace files
