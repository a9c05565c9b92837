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
bool mayBeShort(std::vector<Bar> const& bars, std::size_t i)
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

Length dueLength(std::vector<Bar> const& bars, int bar)
{
    auto const i = static_cast<std::size_t>(bar);
    Length const full = barLength(bars[i].meter);
    return bars[i].length < full && mayBeShort(bars, i) ? bars[i].length : full;
}

std::optional<OddBar> oddBar(std::vector<Bar> const& bars, int bar)
{
    Length const off = bars[static_cast<std::size_t>(bar)].length - dueLength(bars, bar);
    return off == Length{} ? std::nullopt : std::optional(OddBar{bar, off});
}

std::string oddWords(OddBar const& odd)
{
    bool const over = odd.off > Length{};
    return over ? base::say("too long by {}", text(odd.off.wholes))
                : base::say("too short by {}", text(-odd.off.wholes));
}

} // namespace tune
