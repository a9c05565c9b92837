#include "core/tune/edit/barsums.h"

#include "core/base/words.h"

namespace tune {

namespace {

using music::Length;
using music::Rational;

bool endsSection(Bar const& bar)
{
    return bar.repeatCloses || bar.closes == BarLine::Double || bar.closes == BarLine::Final ||
           bar.endingCloses;
}

// A short bar is as it should be where a pick-up completes it, and where a sign splits a bar.
bool mayBeShort(Bars const& bars, BarIndex i)
{
    Bar const& bar = bars[i];
    bool const last = i + 1 == bars.size();
    if (last || bar.upbeat.wholes > Rational(0) || endsSection(bar)) return true;
    Bar const& next = bars[i + 1];
    bool const split = bar.closes == BarLine::None ||
                       (i > 0 && (bars[i - 1].closes == BarLine::None ||
                                  bars[i - 1].repeatCloses || !bar.endings.empty()));
    return split || next.repeatOpens || !next.part.empty() || !next.endings.empty();
}

} // namespace

Length dueLength(Bars const& bars, BarIndex bar)
{
    Length const full = barLength(bars[bar].meter);
    return bars[bar].length < full && mayBeShort(bars, bar) ? bars[bar].length : full;
}

std::optional<OddBar> oddBar(Bars const& bars, BarIndex bar)
{
    Length const off = bars[bar].length - dueLength(bars, bar);
    return off == Length{} ? std::nullopt : std::optional(OddBar{bar, off});
}

std::string oddWords(OddBar const& odd)
{
    bool const over = odd.off > Length{};
    return over ? base::say("too long by {}", text(odd.off.wholes))
                : base::say("too short by {}", text(-odd.off.wholes));
}

} // namespace tune
