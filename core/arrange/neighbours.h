#pragma once

#include "core/arrange/terms.h"

namespace arrange {

// How two positions that follow each other in writing stand to each other. They are adjacent
// where on some pass the second is played within a bar of the first one's end; written
// neighbours on the two sides of a first ending are not.
Neighbours neighboursOf(Scene const& scene, Position const& before, View const& viewBefore,
                        Position const& after, View const& viewAfter);

} // namespace arrange
