#include "core/tune/edit/bars.h"

#include "core/tune/edit/barline.h"

#include <algorithm>

namespace tune {

using base::Fault;
using base::FaultCode;
using base::Result;

namespace {

bool areIn(Tune const& tune, BarIndex first, BarIndex last)
{
    return first >= 0 && first <= last && last < tune.bars.size();
}

Bar& barAt(Tune& tune, BarIndex bar) { return tune.bars[bar]; }
Bar const& barAt(Tune const& tune, BarIndex bar) { return tune.bars[bar]; }

Bar restBar(Bar const& like)
{
    Bar bar;
    bar.meter = like.meter;
    bar.key = like.key;
    bar.notes = {restOf(barLength(like.meter))};
    addUp(bar);
    return bar;
}

void clearEnd(Bar& bar)
{
    bar.repeatCloses = false;
    bar.timesPlayed = Bar{}.timesPlayed;
    bar.endingCloses = false;
    bar.closes = BarLine::Single;
}

// The line at the end of a bar goes to another one.
void handOnEnd(Bar const& from, Bar& to)
{
    to.repeatCloses = to.repeatCloses || from.repeatCloses;
    to.timesPlayed = from.repeatCloses ? from.timesPlayed : to.timesPlayed;
    to.endingCloses = to.endingCloses || from.endingCloses;
    if (from.closes == BarLine::Double || from.closes == BarLine::Final)
        to.closes = from.closes;
}

void closeTune(Tune& tune)
{
    Bar& last = tune.bars.back();
    if (last.closes == BarLine::Single || last.closes == BarLine::None)
        last.closes = BarLine::Final;
    for (BarIndex i = 0; i + 1 < tune.bars.size(); ++i)
        if (tune.bars[i].closes == BarLine::Final && tune.bars[i].repeatCloses)
            tune.bars[i].closes = BarLine::Single;
    renumber(tune);
}

} // namespace

Tune withBars(Tune tune, BarIndex before, int count)
{
    BarIndex const bars = tune.bars.beyond();
    if (before < 0 || before > bars || count < 1) return tune;
    bool const atEnd = before == bars;
    Bars more(count, restBar(barAt(tune, atEnd ? bars - 1 : before)));
    if (!atEnd) { // what begins with the bar now begins with the new ones, but for time bars
        Bar& was = barAt(tune, before);
        std::swap(more.front().part, was.part);
        std::swap(more.front().repeatOpens, was.repeatOpens);
    } else if (Bar& last = tune.bars.back(); !last.repeatCloses && !last.endingCloses) {
        last.closes = BarLine::Single;
    }
    tune.bars.insert(tune.bars.from(before), more.begin(), more.end());
    closeTune(tune);
    return tune;
}

Tune withoutBars(Tune tune, BarIndex first, BarIndex last)
{
    bool const all = last - first + 1 == tune.bars.size();
    if (!areIn(tune, first, last) || all) return tune;
    bool const fromStart = first == 0;
    bool const toEnd = last + 1 == tune.bars.size();
    for (BarIndex bar = last; bar >= first; --bar) {
        Bar const gone = barAt(tune, bar);
        if (!toEnd) {
            Bar& after = barAt(tune, last + 1);
            after.repeatOpens = after.repeatOpens || gone.repeatOpens;
            if (after.part.empty()) after.part = gone.part;
            if (after.endings.empty() && !gone.endingCloses) after.endings = gone.endings;
        }
        bool const wholeEnding = !barAt(tune, first).endings.empty();
        if (!fromStart && !(wholeEnding && gone.endingCloses))
            handOnEnd(gone, barAt(tune, first - 1));
    }
    tune.bars.erase(tune.bars.from(first), tune.bars.from(last + 1));
    closeTune(tune);
    return tune;
}

Tune withoutRepeat(Tune tune, BarIndex first, BarIndex last)
{
    if (!areIn(tune, first, last)) return tune;
    for (BarIndex bar = first; bar <= last; ++bar) {
        Bar& here = barAt(tune, bar);
        here.repeatOpens = false;
        here.endings.clear();
        BarLine const line = here.closes;
        clearEnd(here);
        here.closes = line;
    }
    closeTune(tune);
    return tune;
}

Tune withRepeat(Tune tune, BarIndex first, BarIndex last)
{
    if (!areIn(tune, first, last)) return tune;
    tune = withoutRepeat(std::move(tune), first, last);
    barAt(tune, first).repeatOpens = true;
    barAt(tune, last).repeatCloses = true;
    closeTune(tune);
    return tune;
}

Result<Tune> withTimeBars(Tune tune, BarIndex from, BarIndex first, BarIndex last)
{
    if (!areIn(tune, from, last) || first < from || first > last) return tune;
    for (BarIndex bar = from; bar <= last; ++bar)
        if (!barAt(tune, bar).endings.empty() || first == from)
            return Fault{FaultCode::BadRepeat, barName(tune, bar), ""};
    for (BarIndex bar = from; bar < last; ++bar) barAt(tune, bar).repeatCloses = false;
    Bars second(tune.bars.from(first), tune.bars.from(last + 1));
    Bar& closing = barAt(tune, last);
    BarLine const line = closing.closes;
    int const times = closing.repeatCloses ? closing.timesPlayed : 2;
    clearEnd(closing);
    closing.repeatCloses = true;
    closing.timesPlayed = times;
    closing.endingCloses = true;
    barAt(tune, first).endings = {1};
    if (from > 0) barAt(tune, from).repeatOpens = true;

    for (Bar& bar : second) {
        bar.repeatOpens = false;
        bar.part.clear();
    }
    second.front().endings = {2};
    clearEnd(second.back());
    second.back().endingCloses = true;
    second.back().closes = line == BarLine::Final ? line : BarLine::Double;
    tune.bars.insert(tune.bars.from(last + 1), second.begin(), second.end());
    closeTune(tune);
    return tune;
}

Tune withPart(Tune tune, BarIndex bar, std::string name)
{
    if (!areIn(tune, bar, bar)) return tune;
    barAt(tune, bar).part = std::move(name);
    renumber(tune);
    return tune;
}

BarRange sectionOf(Tune const& tune, BarIndex bar)
{
    auto const ends = [&tune](BarIndex b) {
        Bar const& here = barAt(tune, b);
        return here.repeatCloses || here.closes == BarLine::Double ||
               here.closes == BarLine::Final;
    };
    auto const opens = [&tune](BarIndex b) {
        return barAt(tune, b).repeatOpens || !barAt(tune, b).part.empty();
    };
    BarRange out{bar, bar};
    while (out.first > 0 && !opens(out.first) && !ends(out.first - 1)) --out.first;
    BarIndex const last = tune.bars.beyond() - 1;
    while (out.last < last && !ends(out.last) && !opens(out.last + 1)) ++out.last;
    return out;
}

} // namespace tune
