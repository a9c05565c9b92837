#pragma once

#include "core/tune/edit/barsums.h"

namespace tune {

inline std::vector<OddBar> oddBars(Tune const& tune)
{
    std::vector<OddBar> out;
    for (tune::BarIndex const bar : tune.bars.indices())
        if (auto const odd = oddBar(tune.bars, bar)) out.push_back(*odd);
    return out;
}

} // namespace tune
