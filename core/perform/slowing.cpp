#include "core/perform/slowing.h"

#include "core/music/meter.h"

#include <algorithm>
#include <cmath>

namespace perform {

std::optional<KindOfSlowing> slowingOf(std::vector<KindOfSlowing> const& slowings,
                                       tune::Tune const& tune)
{
    auto const row = std::ranges::find(slowings, tune::kindOf(tune), &KindOfSlowing::kind);
    return row == slowings.end() ? std::nullopt : std::optional(*row);
}

Slowing partOf(Slowing most, double amount)
{
    return {1 - (1 - most.to) * std::clamp(amount, 0.0, 1.0), most.beats};
}

Slowing slowingFor(std::vector<KindOfSlowing> const& slowings, tune::Tune const& tune,
                   std::optional<int> percent)
{
    auto const kind = slowingOf(slowings, tune);
    return kind ? partOf(kind->most, percent.value_or(kind->usual) / 100.0) : Slowing{};
}

SlowedTime::SlowedTime(arrange::Arrangement const& arrangement, Slowing slowing)
{
    std::vector<arrange::HandNote> const notes = arrange::handNotes(arrangement);
    if (slowing.to >= 1 || slowing.beats <= 0 || notes.empty()) return;
    auto const last = std::ranges::max_element(notes, {}, &arrange::HandNote::at);
    music::Length const beat =
        music::beatLength(arrange::barPlayed(arrangement, last->playedBar).meter);
    music::Length const fromStart = last->at - music::Moment{};
    music::Length const over = std::min(fromStart, beat * music::Rational(slowing.beats));
    m_begins = music::Moment{} + (fromStart - over);
    m_from = m_begins.wholes.toDouble();
    m_over = over.wholes.toDouble();
    m_to = slowing.to;
}

double SlowedTime::later(double wholes) const
{
    if (m_over <= 0 || wholes <= m_from) return 0;
    double const falls = m_to * m_to * m_to - 1; // below 0
    double const x = std::min(1.0, (wholes - m_from) / m_over);
    double const lasts = 1.5 / falls * (std::pow(1 + falls * x, 2.0 / 3) - 1); // [0, x] of 1/tempo
    double const beyond = std::max(0.0, wholes - m_from - m_over);
    return m_over * (lasts - x) + beyond * (1 / m_to - 1);
}

} // namespace perform
