#pragma once

#include "core/tune/edit/barsums.h"

namespace tune {

inline std::vector<OddBar> oddBars(Tune const& tune)
{
    std::vector<OddBar> out;
    for (int bar = 0; bar < static_cast<int>(tune.bars.size()); ++bar)
        if (auto const odd = oddBar(tune.bars, bar)) out.push_back(*odd);
    return out;
}

} // namespace tune
