#pragma once

#include "core/base/result.h"
#include "core/tune/tune.h"

namespace tune {

// Edits of bars and of the signs between them. A bar outside the tune changes
// nothing. The chords of bars that stay are not touched.

// So many bars of rest before a bar, or behind the last one where `before` is their number.
Tune withBars(Tune tune, BarIndex before, int count = 1);

// The bars are taken out; a repeat, time bar or part that began or ended there is kept by the
// bar next to them. Where none would be left nothing changes.
Tune withoutBars(Tune tune, BarIndex first, BarIndex last);

// A repeat from one bar to the end of another; signs inside are taken away, time bars with
// them.
Tune withRepeat(Tune tune, BarIndex first, BarIndex last);
// All signs of repeats and time bars among these bars are taken away.
Tune withoutRepeat(Tune tune, BarIndex first, BarIndex last);

// These bars, the last of a part, become its 1st-time bars: copies behind them are its 2nd-time
// bars. Where no repeat closes there, it repeats from `from`, the first bar of the part.
// Fault: BadRepeat where time bars stand there already or none are left before them.
base::Result<Tune> withTimeBars(Tune tune, BarIndex from, BarIndex first, BarIndex last);

// The name of the part that begins with a bar: "A"; empty: none begins there.
Tune withPart(Tune tune, BarIndex bar, std::string name);

// The first bar of the repeat or part that a bar stands in, and the last.
struct BarRange {
    BarIndex first = 0;
    BarIndex last = 0;
    friend bool operator==(BarRange const&, BarRange const&) = default;
};
BarRange sectionOf(Tune const& tune, BarIndex bar);

} // namespace tune
