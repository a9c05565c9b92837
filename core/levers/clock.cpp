#include "core/levers/clock.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>

namespace levers {

namespace {

// How little a window suits, in points that add up. Common practice, no source, but for the
// order of the hands: the left turns levers unless the right is free [trade-3.5].
// What the left hand gives up by not plucking on a beat, by music::beatStrength: between beats,
// on a beat, on the half bar, on the first beat, where the bass belongs.
constexpr std::array blockedBeat{1, 6, 12, 40};
constexpr int onBeat = blockedBeat[1];
constexpr int tuneBusy = 1;    // for each note the other hand plucks meanwhile
constexpr int rightHand = 25;  // the right hand leaves the tune for the levers
constexpr int rightReach = 20; // ... and reaches below middle C
constexpr int damped = 60;     // the old note is cut short
constexpr int hurried = 15;    // the string is silent for less than half the free time
constexpr int touched = 4;     // it still rings, and is damped by touch before it is turned
constexpr int stiff = 15;      // a wound string's lever, for either hand [trade-3.6]
// A ring that has fallen so far of its 60 dB is not heard to change: 20 dB. From memory.
constexpr double heardShare = 1.0 / 3;
constexpr int awayABeat = 2;   // a beat more for which the string is off its set-up

// Lengths of the tune become whole ticks, halves and quarters of them too. A tune of absurdly
// odd lengths is rounded down to ticks as fine as there is room for.
std::int64_t ticksFor(tune::Tune const& tune)
{
    std::int64_t ticks = 960; // fine enough that times rounded up lose nothing that matters
    auto include = [&ticks](music::Length length) {
        std::int64_t const finer = std::lcm(ticks, length.wholes.denominator());
        if (finer <= music::Rational::largestTerm) ticks = finer;
    };
    for (tune::Bar const& bar : tune.bars) {
        include(bar.length);
        include(bar.upbeat);
        include(music::beatLength(bar.meter) * music::Rational(1, 8));
        for (tune::Note const& note : bar.notes) {
            include(note.at);
            include(note.length);
        }
    }
    return 4 * ticks;
}

std::int64_t roundedUp(double ticks)
{
    // Whole fours, so that halves of halves stay whole.
    return 4 * static_cast<std::int64_t>(std::ceil(ticks / 4 - 1e-9));
}

} // namespace

Clock::Clock(tune::Tune const& tune, tune::Playing const& playing, tune::Tempo tempo,
             harp::Level const& level)
    : m_flips(level.flips), m_ticksPerWhole(ticksFor(tune)),
      m_ticksPerSecond(tune::quartersPerMinute(tempo) / 240 *
                       static_cast<double>(m_ticksPerWhole))
{
    double const ticksPerSecond = m_ticksPerSecond;
    m_least = roundedUp(level.flipFreeSeconds * ticksPerSecond);
    int weight = 0;
    for (tune::PlayedBar const& played : playing.bars) {
        tune::Bar const& bar = tune.bars[played.bar];
        Tick const beat = tick(music::Moment{music::beatLength(bar.meter).wholes});
        m_beat.push_back(beat);
        double const least = level.flipFreeSeconds * ticksPerSecond;
        double const free = std::max(level.flipFreeBeats * static_cast<double>(beat), least);
        m_free.push_back(roundedUp(free));
        m_turning.push_back(roundedUp(std::max(free / 4, least / 2)));
        Tick const missing = tick(music::Moment{bar.upbeat.wholes});
        Tick const end = missing + tick(music::Moment{bar.length.wholes});
        for (Tick place = 0; place < end; place += beat / 2) {
            if (place < missing) continue;
            music::Length const inBar{music::Rational(place, m_ticksPerWhole)};
            auto const strength =
                static_cast<std::size_t>(music::beatStrength(bar.meter, inBar));
            m_marks.push_back(
                {tick(played.at) + place - missing, weight, blockedBeat[strength]});
            weight += blockedBeat[strength];
        }
    }
    for (tune::PlayedNote const& note : playing.notes) m_plucks.push_back(tick(note.at));
    m_plucks.erase(std::unique(m_plucks.begin(), m_plucks.end()), m_plucks.end());
}

Clock::Tick Clock::tick(music::Moment moment) const
{
    return floorOf(moment.wholes * music::Rational(m_ticksPerWhole));
}

music::Moment Clock::moment(Tick tick) const
{
    return {music::Rational(tick, m_ticksPerWhole)};
}

music::Length Clock::turningTime(tune::PlayedBarIndex playedBar) const
{
    return {music::Rational(m_turning[playedBar], m_ticksPerWhole)};
}

// Weight of the half beats strictly inside.
int Clock::blocked(Tick from, Tick to) const
{
    auto const after = [](Tick at, Mark const& mark) { return at < mark.at; };
    auto const before = [](Mark const& mark, Tick at) { return mark.at < at; };
    auto const first = std::upper_bound(m_marks.begin(), m_marks.end(), from, after);
    auto const last = std::lower_bound(first, m_marks.end(), to, before);
    if (first == last) return 0;
    return std::prev(last)->weightBefore + std::prev(last)->weight - first->weightBefore;
}

int Clock::plucksInside(Tick from, Tick to) const
{
    auto const first = std::upper_bound(m_plucks.begin(), m_plucks.end(), from);
    auto const last = std::lower_bound(first, m_plucks.end(), to);
    return static_cast<int>(last - first);
}

template<typename Visit>
void Clock::eachWindow(Gap const& gap, Visit visit) const
{
    if (!m_flips) return;
    tune::PlayedBarIndex const bar = gap.playedBar;
    Tick free = m_free[bar];
    Tick const turning = gap.quick ? roundedUp(static_cast<double>(m_least) / 2) : m_turning[bar];
    Tick const plucked = tick(gap.plucked);
    Tick const ends = tick(gap.ends);
    Tick const wanted = tick(gap.wanted);
    Tick const halfway = plucked + (ends - plucked) / 2;
    Tick const earliest = halfway + turning - free; // before the tune begins all hands are free
    Tick const latest = wanted - free;

    auto offer = [&](Tick from, std::optional<harp::Side> only = std::nullopt) {
        Tick const to = from + free;
        bool const cut = to - ends < turning;
        Tick const silent = std::max(from, cut ? halfway : ends);
        Tick const at = silent + (to - silent) / 2;
        Tick const away = gap.returning ? std::max<Tick>(0, at - ends) : wanted - at;
        bool const rings = !cut && static_cast<double>(at - plucked) <
                                       heardShare * gap.ringSeconds * m_ticksPerSecond;
        int const plucks = plucksInside(from, to);
        int const cost = (cut ? damped : 0) + (to - silent < free / 2 ? hurried : 0) +
                         (rings ? touched : 0) + (gap.stiff ? stiff : 0) +
                         static_cast<int>(awayABeat * away / m_beat[bar]);
        int const leftGives = blocked(from, to);
        visit(Offer{from, to, at, harp::Side::Left, cost + leftGives + tuneBusy * plucks,
                    leftGives});
        if (plucks == 0 && !only)
            visit(Offer{from, to, at, harp::Side::Right,
                        cost + rightHand + (gap.high ? 0 : rightReach), 0});
    };

    if (gap.quick) {
        // From the beats on which the hand can pluck and still reach the lever.
        if (wanted - halfway < turning) return;
        auto mark = std::lower_bound(m_marks.begin(), m_marks.end(), wanted - m_free[bar],
                                     [](Mark const& m, Tick at) { return m.at < at; });
        for (; mark != m_marks.end() && mark->at <= wanted - m_least; ++mark) {
            if (mark->weight < onBeat) continue;
            free = wanted - mark->at;
            offer(mark->at, harp::Side::Left);
        }
        return;
    }
    if (earliest > latest || wanted - halfway < turning) return;
    auto mark = std::lower_bound(m_marks.begin(), m_marks.end(), earliest,
                                 [](Mark const& m, Tick at) { return m.at < at; });
    for (; mark != m_marks.end() && mark->at < latest; ++mark) offer(mark->at);
    offer(latest);
}

Window Clock::window(Offer const& offer, harp::StringIndex string) const
{
    return {moment(offer.from), moment(offer.to), moment(offer.at), offer.hand,
            string,             offer.cost,       offer.leftCost};
}

std::vector<Window> Clock::windows(Gap const& gap) const
{
    std::vector<Window> out;
    eachWindow(gap, [&](Offer const& offer) { out.push_back(window(offer, gap.string)); });
    return out;
}

std::optional<Window> Clock::bestWindow(Gap const& gap) const
{
    std::optional<Offer> best;
    eachWindow(gap, [&](Offer const& offer) {
        if (!best || offer.cost < best->cost) best = offer;
    });
    if (!best) return std::nullopt;
    return window(*best, gap.string);
}

bool Clock::hasWindow(Gap const& gap) const
{
    bool found = false;
    eachWindow(gap, [&found](Offer const&) { found = true; });
    return found;
}

music::Length Clock::silence(Gap const& gap) const
{
    music::Moment const halfway = gap.plucked + (gap.ends - gap.plucked) * music::Rational(1, 2);
    return std::max(music::Length{}, gap.wanted - halfway);
}

} // namespace levers
