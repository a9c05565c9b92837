#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/staff.h"

#include <vector>

namespace notation {

// The chord symbols of a bar as they are printed: two at one place, for the first and second
// time, side by side.
std::vector<Label> chordLabels(tune::Bar const& bar);

// The writer's words of a bar, and its marks that are words on paper ("D.C.").
std::vector<Label> annotationLabels(tune::Bar const& bar);

// The pattern of every position that is printed in a bar; the words of one where the left hand
// is silent are empty.
std::vector<Label> patternLabels(arrange::Arrangement const& arrangement, int bar);

} // namespace notation
