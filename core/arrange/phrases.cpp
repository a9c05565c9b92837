#include "core/arrange/phrases.h"

namespace arrange {

namespace {

bool beginsPart(tune::Tune const& tune, tune::BarIndex bar)
{
    if (bar == 0 || !tune.bars[bar].part.empty() || tune.bars[bar].repeatOpens) return true;
    tune::Bar const& before = tune.bars[bar - 1];
    return before.repeatCloses || before.closes == tune::BarLine::Double ||
           before.closes == tune::BarLine::Final || tune.bars[bar - 1].number == 0 ||
           before.role != tune.bars[bar].role || before.time != tune.bars[bar].time;
}

} // namespace

int barOfPart(tune::Tune const& tune, tune::BarIndex bar)
{
    int count = 0;
    while (!beginsPart(tune, bar)) {
        --bar;
        ++count;
    }
    return count;
}

} // namespace arrange
