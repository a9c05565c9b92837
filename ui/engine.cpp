#include "ui/engine.h"

namespace ui {

Engine coreEngine(std::vector<harp::Level> levels)
{
    return {
        .propose = proposal::propose,
        .withChoice = proposal::withChoice,
        .withoutLock = proposal::withoutLock,
        .variants = proposal::variants,
        .keyFits =
            [](proposal::Brief const& brief) {
                return levers::keyFits(brief.tune, brief.harp, tune::tempoOf(brief.tune),
                                       brief.level);
            },
        .remedies =
            [levels = std::move(levels)](proposal::Brief const& brief) {
                return proposal::remediesFor(brief, levels);
            },
    };
}

} // namespace ui
