#include "core/harmony/units.h"

#include <algorithm>
#include <optional>

namespace harmony {

namespace {

using music::Length;
using music::Rational;

constexpr int phraseBars = 8;

// Where a bar stands in its strain.
struct BarPlace {
    std::size_t strain = 0;
    int bar = 0; // from the strain's start
    bool pickUp = false;
};

bool beginsStrain(tune::Tune const& tune, tune::BarIndex i)
{
    if (i == 0) return true;
    tune::Bar const& bar = tune.bars[i];
    tune::Bar const& before = tune.bars[i - 1];
    if (bar.repeatOpens || !bar.part.empty()) return true;
    if (!bar.endings.empty()) return false; // another ending of the strain
    return before.repeatCloses || before.closes == tune::BarLine::Double ||
           before.closes == tune::BarLine::Final;
}

// Whether the group of endings that bar i may go on ended before it.
bool leftEndings(tune::Tune const& tune, tune::BarIndex i)
{
    tune::Bar const& before = tune.bars[i - 1];
    return tune.bars[i].endings.empty() && (before.endingCloses || before.repeatCloses);
}

class Strains {
public:
    explicit Strains(tune::Tune const& tune)
    {
        for (tune::BarIndex const i : tune.bars.indices()) add(tune, i);
    }

    base::List<tune::BarIndex, BarPlace> places;
    std::vector<int> lengths; // in bars

private:
    void add(tune::Tune const& tune, tune::BarIndex i)
    {
        tune::Bar const& bar = tune.bars[i];
        if (beginsStrain(tune, i) || (m_beforeEndings && leftEndings(tune, i))) begin();
        if (!bar.endings.empty()) {
            if (m_beforeEndings)
                m_next = *m_beforeEndings;
            else
                m_beforeEndings = m_next;
        }
        bool const pickUp = bar.upbeat.wholes > Rational(0);
        places.push_back({lengths.size() - 1, m_next, pickUp});
        if (pickUp) return;
        ++m_next;
        lengths.back() = std::max(lengths.back(), m_next);
    }

    void begin()
    {
        if (!lengths.empty() && lengths.back() == 0) return; // nothing but a pick-up so far
        lengths.push_back(0);
        m_next = 0;
        m_beforeEndings.reset();
    }

    int m_next = 0;
    std::optional<int> m_beforeEndings; // the bar of the strain where its endings begin
};

int barOfPhrase(int bar, int strainBars)
{
    if (strainBars % phraseBars == 0) return bar % phraseBars;
    int const toEnd = strainBars - 1 - bar;
    return phraseBars - 1 - toEnd % phraseBars;
}

} // namespace

music::Length unitLength(music::Meter meter)
{
    Length const bar = barLength(meter);
    int const beats = beatsInBar(meter);
    bool const thirds = beats == 3 && (isCompound(meter) || meter.unit <= 2);
    if (thirds) return bar * Rational(1, 3);
    return beats % 2 == 0 ? bar * Rational(1, 2) : bar;
}

std::vector<Unit> unitsOf(tune::Tune const& tune)
{
    Strains const strains(tune);
    std::vector<Unit> units;
    bool firstBar = true;
    for (tune::BarIndex const i : tune.bars.indices()) {
        BarPlace const& place = strains.places[i];
        if (place.pickUp) continue;
        tune::Bar const& bar = tune.bars[i];
        int const strainBars = strains.lengths[place.strain];
        Length const whole = unitLength(bar.meter);
        for (Length at; at < bar.length; at = at + whole)
            units.push_back({i, at, std::min(whole, bar.length - at), at == Length{},
                             barOfPhrase(place.bar, strainBars), place.bar,
                             strainBars - 1 - place.bar, firstBar, units.empty(),
                             static_cast<int>(place.strain)});
        firstBar = false;
    }
    return units;
}

} // namespace harmony
