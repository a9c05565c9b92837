#pragma once

#include "core/arrange/lattice.h"
#include "core/arrange/scene.h"

#include <string>
#include <vector>

namespace arrange {

// What speaks for or against a candidate, in the trade's words: two or three whole sentences,
// the deciding one first. A candidate of a best arrangement is praised for what its rivals
// lack; any other is told what it costs against the best.
std::vector<std::string> reasonsFor(Scene const& scene, Lattice const& lattice,
                                    Solution const& solution, int position, int candidate);

} // namespace arrange
