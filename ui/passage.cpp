#include "ui/passage.h"

#include <algorithm>

namespace ui {

Passage passageBetween(int bar, int other) { return {std::min(bar, other), std::max(bar, other)}; }

std::optional<PlayedPassage> playedPassage(tune::Playing const& playing, Passage passage)
{
    std::optional<PlayedPassage> best;
    std::optional<int> begun; // the latest place of the first bar
    for (std::size_t i = 0; i < playing.bars.size(); ++i) {
        int const here = static_cast<int>(i);
        if (playing.bars[i].bar == passage.firstBar) begun = here;
        if (playing.bars[i].bar != passage.lastBar || !begun) continue;
        if (!best || here - *begun < best->last - best->first) best = {*begun, here};
    }
    return best;
}

} // namespace ui
