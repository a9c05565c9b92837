#include "ui/passage.h"

#include "core/arrange/phrases.h"
#include "ui/lanelayout.h"

#include <algorithm>
#include <vector>

namespace ui {

Passage passageBetween(tune::BarIndex bar, tune::BarIndex other)
{
    return {std::min(bar, other), std::max(bar, other)};
}

Passage partAround(tune::Tune const& tune, tune::BarIndex bar)
{
    for (LaneSection const& section : laneSections(tune))
        if (bar >= section.firstBar && bar <= section.lastBar)
            return {section.firstBar, section.lastBar};
    return {bar, bar};
}

Passage phraseAround(tune::Tune const& tune, tune::BarIndex bar)
{
    Passage const part = partAround(tune, bar);
    std::vector<int> phrases; // of each bar of the part
    int full = 0;             // full bars so far
    int ending = 0;           // full bars before the first ending
    for (tune::BarIndex i = part.firstBar; i <= part.lastBar; ++i) {
        tune::Bar const& here = tune.bars[i];
        if (!here.endings.empty()) {
            if (here.endings.front() == 1)
                ending = full;
            else
                full = ending;
        }
        phrases.push_back(full / arrange::barsInPhrase);
        bool const pickUp = here.upbeat > music::Length{};
        if (!pickUp) ++full;
    }
    auto const phraseOf = [&](tune::BarIndex i) {
        return phrases[static_cast<std::size_t>(i - part.firstBar)];
    };
    Passage phrase{bar, bar};
    while (phrase.firstBar > part.firstBar && phraseOf(phrase.firstBar - 1) == phraseOf(bar))
        --phrase.firstBar;
    while (phrase.lastBar < part.lastBar && phraseOf(phrase.lastBar + 1) == phraseOf(bar))
        ++phrase.lastBar;
    return phrase;
}

std::optional<PlayedPassage> playedPassage(tune::Playing const& playing, Passage passage)
{
    std::optional<PlayedPassage> best;
    std::optional<tune::PlayedBarIndex> begun; // the latest place of the first bar
    for (tune::PlayedBarIndex const here : playing.bars.indices()) {
        if (playing.bars[here].bar == passage.firstBar) begun = here;
        if (playing.bars[here].bar != passage.lastBar || !begun) continue;
        if (!best || here - *begun < best->last - best->first) best = {*begun, here};
    }
    return best;
}

} // namespace ui
