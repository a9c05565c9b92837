#include "ui/engine.h"

#include "core/proposal/keywish.h"

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
                return levers::keyFits(tune::changed(brief.tune, brief.changes), brief.harp,
                                       proposal::tempoWished(brief), brief.level,
                                       proposal::pricesOf(brief));
            },
        .rankedKeys =
            [](proposal::Brief const& brief) { return proposal::rankedKeys(brief); },
        .remedies =
            [levels](proposal::Brief const& brief) {
                return proposal::remediesFor(brief, levels);
            },
        .wholeTuneWays =
            [levels = std::move(levels)](proposal::Proposal const& proposal,
                                         std::function<bool()> const& wanted) {
                return proposal::wholeTuneWays(proposal, levels, wanted);
            },
    };
}

} // namespace ui
