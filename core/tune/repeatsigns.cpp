#include "core/tune/repeatsigns.h"

#include "core/tune/playing.h"

#include <algorithm>

namespace tune {

Tune withRepeatSigns(Tune tune)
{
    bool const repeats = std::ranges::any_of(tune.bars, &Bar::repeatCloses);
    if (!repeats) return tune;
    Playing const playing = played(tune);
    if (playing.jumps) return tune; // what goes back may be a D.S.
    for (PlayedBarIndex i : playing.bars.indices()) {
        if (i == 0) continue;
        PlayedBar const& from = playing.bars[i - 1];
        PlayedBar const& to = playing.bars[i];
        Bar const& closes = tune.bars[from.bar];
        bool const goesBack = to.bar > 0 && to.bar <= from.bar && to.pass > 1;
        if (goesBack && (closes.repeatCloses || closes.endingCloses))
            tune.bars[to.bar].repeatOpens = true;
    }
    return tune;
}

} // namespace tune
