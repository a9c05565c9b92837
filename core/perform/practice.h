#pragma once

#include "core/perform/schedule.h"

#include <optional>

namespace perform {

// The played bars of a passage, both inclusive: indices into Playing::bars.
struct Passage {
    int first = 0;
    int last = 0;
    friend bool operator==(Passage const&, Passage const&) = default;
};

// The passage between two bars by their printed numbers (0: the pick-up), as it is played first:
// repeats that lie within it are played. None: the tune has no such bars.
std::optional<Passage> passageOf(arrange::Arrangement const& arrangement, int firstBar,
                                 int lastBar);

// With a click on every beat of the bars that are heard, beside those of the count-in. The first
// beat of a bar is accented.
Schedule withClicks(Schedule schedule, arrange::Arrangement const& arrangement,
                    Hearing const& hearing);

// The schedule played several times, at least once, the count-in before the first alone. The beat
// goes on without a gap: the last counted beat leads to the first.
Schedule repeated(Schedule const& schedule, int times);

} // namespace perform
