#include "core/files/tidy.h"

#include "core/base/words.h"
#include "core/tune/edit/barsums.h"
#include "core/tune/jumps.h"
#include "core/tune/playing.h"

#include <algorithm>
#include <map>

namespace files {

namespace {

using music::Length;
using music::Meter;
using music::Rational;
using tune::Bar;
using tune::BarIndex;
using tune::BarLine;
using tune::Bars;

bool holdsFirst(Bar const& bar)
{
    return std::find(bar.endings.begin(), bar.endings.end(), 1) != bar.endings.end();
}

// The bar where the ending that begins at `from` stops, as far as it is written.
BarIndex writtenEnd(Bars const& bars, BarIndex from)
{
    BarIndex i = from;
    while (i + 1 < bars.size() && !bars[i].endingCloses && !bars[i].repeatCloses &&
           bars[i + 1].endings.empty() && !bars[i + 1].repeatOpens)
        ++i;
    return i;
}

// A last ending without a sign where it stops is as long as the ending before it. What follows
// belongs to the next section.
void boundEndings(Bars& bars)
{
    int before = 0; // length of the ending before, in bars
    for (BarIndex const i : bars.indices()) {
        if (bars[i].endings.empty()) continue;
        BarIndex const end = writtenEnd(bars, i);
        if (!holdsFirst(bars[i]) && before > 0 && !bars[end].endingCloses && end - i >= before)
            bars[i + before - 1].endingCloses = true;
        before = end - i + 1;
    }
}

// The commonest length of a bar, as a meter; crotchets are preferred.
Meter commonestMeter(Bars const& bars)
{
    std::map<Rational, std::size_t> counts;
    for (Bar const& bar : bars) ++counts[bar.length.wholes];
    auto const most =
        std::max_element(counts.begin(), counts.end(),
                         [](auto const& a, auto const& b) { return a.second < b.second; });
    for (int unit : {4, 8, 16}) {
        Rational const beats = most->first * Rational(unit);
        if (beats.denominator() == 1 && beats.numerator() <= 16)
            return {static_cast<int>(beats.numerator()), unit, false};
    }
    return {};
}

// One remark a bar; where many bars are odd in the same way, one for all of them.
void remarkOnLengths(Bars const& bars, Remarks& remarks)
{
    constexpr std::size_t many = 4;
    std::map<std::pair<Rational, Rational>, std::vector<BarIndex>> odd; // by length and meter
    for (BarIndex const i : bars.indices())
        if (tune::oddBar(bars, i))
            odd[{bars[i].length.wholes, barLength(bars[i].meter).wholes}].push_back(i);
    for (auto const& [lengths, where] : odd) {
        if (where.size() >= many)
            remarks.add(
                bars[where.front()].place,
                base::say("{} bars have notes for {}, where the time signature asks for {}",
                          where.size(), text(lengths.first), text(lengths.second)),
                base::said("left as written"));
        else
            for (BarIndex const i : where)
                remarks.add(
                    bars[i].place,
                    base::say("bar {} has notes for {}, where the time signature asks for {}",
                              bars[i].number, text(lengths.first), text(lengths.second)),
                    base::said("left as written"));
    }
}

} // namespace

tune::Bars tidied(tune::Bars bars, bool free, Remarks& remarks)
{
    if (bars.empty()) return bars;
    boundEndings(bars);
    if (bars.back().closes == BarLine::None || bars.back().closes == BarLine::Single)
        bars.back().closes = BarLine::Final;
    if (free) {
        Meter const meter = commonestMeter(bars);
        for (Bar& bar : bars) bar.meter = meter;
    } else {
        markPickUps(bars);
    }
    numberBars(bars);
    if (!free) remarkOnLengths(bars, remarks);
    return bars;
}

void remarkOnJump(tune::Tune const& tune, Remarks& remarks)
{
    auto const bar = tune::barOfJump(tune);
    if (!bar || tune::played(tune).jumps) return;
    remarks.add(tune.bars[*bar].place,
                base::say("where to go on after the D.C. or D.S. of {} is not clear",
                          tune::barName(tune, *bar)),
                base::said("the tune is played straight through"));
}

} // namespace files
