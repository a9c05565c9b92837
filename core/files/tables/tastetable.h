#pragma once

#include "core/arrange/score.h"
#include "core/arrange/slider.h"
#include "core/files/tables/tablerow.h"

#include <vector>

namespace files {

// Every figure of a taste, none missing (shared/taste.json). Throws table::Damage.
void readTaste(table::Row& groups, arrange::Taste& taste);

// What a slider pulls at besides weights, by the names of the figures:
// {"shape_fit": {"missing_richness": 1000}}. Throws table::Damage.
std::vector<arrange::FigurePull> readFigurePulls(table::Node const& groups);

// The prices of shared/snags.json, none missing. Throws table::Damage.
void readWayPrices(table::Row& file, tune::WayPrices& prices);

// The styles of shared/weights.json: a weight for each term, and under "taste" those figures
// that are a style's own; all others are those of `usual`. Throws table::Damage.
void readStyles(table::Row& file, arrange::Taste const& usual, tune::WayPrices const& ways,
                std::vector<arrange::Weights>& styles);

} // namespace files
