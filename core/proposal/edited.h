#pragma once

#include "core/proposal/brief.h"

namespace proposal {

// How an edit moved the bars of a tune: those from `from` on by so many; where `by` is below
// zero, the first of them were taken out.
struct BarsMoved {
    tune::BarIndex from = 0; // as they were
    int by = 0;
};

// The brief for its tune as it was edited. What the arranger has decided about bars and notes
// goes where they went; what was about a bar or note that is no more is dropped. `transposed`:
// how the whole tune was moved, for the roots of kept shapes.
Brief withEditedTune(Brief brief, tune::Tune tune, BarsMoved moved = {},
                     music::Interval transposed = {});

} // namespace proposal
