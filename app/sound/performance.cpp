#include "app/sound/performance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

namespace sound {

namespace {

std::int64_t frameOf(perform::Seconds at) { return std::llround(at * sampleRate); }

template<typename Timed>
std::size_t firstFrom(std::vector<Timed> const& all, perform::Seconds from)
{
    auto const found = std::ranges::lower_bound(all, from, {}, &Timed::at);
    return static_cast<std::size_t>(found - all.begin());
}

constexpr int clocksACrotchet = 24; // MIDI 1.0, timing clock

constexpr perform::Seconds endOfTime = std::numeric_limits<perform::Seconds>::infinity();

// Where one of the 24ths of a crotchet is due.
perform::Seconds clockAt(perform::Schedule const& schedule, std::int64_t number)
{
    return perform::afterCrotchets(schedule, static_cast<double>(number) / clocksACrotchet);
}

// The first that is not before a time. As many as in time, or fewer where the end slows.
std::int64_t clockFrom(perform::Schedule const& schedule, perform::Seconds at)
{
    constexpr perform::Seconds noTime = 1e-9;
    double const inTime = (at - schedule.begins) * clocksACrotchet / schedule.crotchet;
    auto number = std::max<std::int64_t>(0, std::llround(std::ceil(inTime)));
    while (number > 0 && clockAt(schedule, number - 1) >= at - noTime) --number;
    return number;
}

// Strings that ring at a place: plucked last before it, in this round or the one before.
std::set<harp::StringIndex> ringingAt(perform::Course const& course, perform::Place place)
{
    std::set<harp::StringIndex> ringing;
    auto const follow = [&ringing](perform::Schedule const& schedule, perform::Seconds from,
                                   perform::Seconds to) {
        for (perform::Event const& event : schedule.events) {
            if (event.at < from || event.at >= to) continue;
            if (event.kind == perform::Event::Kind::Pluck)
                ringing.insert(event.string);
            else
                ringing.erase(event.string);
        }
    };
    if (place.round > 0) follow(course.round(place.round - 1), 0, endOfTime);
    follow(course.round(place.round), place.round > 0 ? course.round(place.round).begins : 0,
           place.at);
    return ringing;
}

Stress stressOf(perform::Click const& click)
{
    if (click.accented) return Stress::Bar;
    return click.halfBar ? Stress::HalfBar : Stress::Beat;
}

} // namespace

Performance::Performance(std::unique_ptr<Instrument> instrument)
    : m_instrument(std::move(instrument))
{
}

Performance::Performance(HarpSynth synth)
    : Performance(std::make_unique<HarpSynth>(std::move(synth)))
{
}

void Performance::begin(perform::Course course, perform::Place from)
{
    m_course = std::move(course);
    m_round = from.round;
    perform::Schedule const& now = m_course.round(m_round);
    m_nextEvent = firstFrom(now.events, from.at);
    m_nextClick = firstFrom(now.clicks, from.at);
    m_nextGrace = 0;
    m_frame = frameOf(from.at);
    m_instrument->dampAllBut(ringingAt(m_course, from));
    m_nextTuned = 0;
    for (; m_nextTuned < now.tuned.size() && now.tuned[m_nextTuned].at <= from.at;
         ++m_nextTuned)
        m_instrument->tuned(now.tuned[m_nextTuned].string, now.tuned[m_nextTuned].midi);
    m_nextClock = now.crotchet > 0 ? clockFrom(now, from.at) : 0;
    if (m_keepsBeat) m_instrument->beatEnds();
    m_keepsBeat = now.crotchet > 0;
    if (m_keepsBeat) m_instrument->beatBegins(from.round == 0 && m_nextClock == 0);
}

void Performance::stop()
{
    m_course = {};
    m_instrument->dampAllBut({});
    if (std::exchange(m_keepsBeat, false)) m_instrument->beatEnds();
}

void Performance::pluck(harp::StringIndex string, int midi, int velocity)
{
    m_instrument->pluck(string, midi, velocity, harp::Side::Right);
}

// Everything nearer to this border of blocks than to the next.
void Performance::startDue()
{
    perform::Schedule const& now = m_course.round(m_round);
    startDue(now, m_nextEvent, 0, endOfTime);
    std::int64_t const until = m_frame + blockFrames / 2;
    for (; m_nextClick < now.clicks.size() && frameOf(now.clicks[m_nextClick].at) < until;
         ++m_nextClick)
        m_instrument->click(stressOf(now.clicks[m_nextClick]));
    for (; m_nextTuned < now.tuned.size() && frameOf(now.tuned[m_nextTuned].at) < until;
         ++m_nextTuned)
        m_instrument->tuned(now.tuned[m_nextTuned].string, now.tuned[m_nextTuned].midi);
    keepBeat(until);
    if (m_course.isLast(m_round)) return;
    perform::Schedule const& next = m_course.round(m_round + 1);
    startDue(next, m_nextGrace, frameOf(now.counted) - frameOf(next.begins), next.begins);
}

// Told up to the last counted beat; where a round goes on from there, the next round's first
// clock is the one that is due.
void Performance::keepBeat(std::int64_t until)
{
    perform::Schedule const& now = m_course.round(m_round);
    if (!m_keepsBeat || now.crotchet <= 0) return;
    for (;; ++m_nextClock) {
        perform::Seconds const at = clockAt(now, m_nextClock);
        if (at >= now.counted - 1e-9) break;
        if (frameOf(at) >= until) return;
        m_instrument->beatClock();
    }
    if (m_course.isLast(m_round) && frameOf(now.counted) < until) {
        m_instrument->beatEnds();
        m_keepsBeat = false;
    }
}

// Events of a schedule, whose time is so many frames behind this round's, up to an end.
void Performance::startDue(perform::Schedule const& schedule, std::size_t& next,
                           std::int64_t shift, perform::Seconds end)
{
    std::int64_t const until = m_frame + blockFrames / 2;
    auto const& events = schedule.events;
    for (; next < events.size() && events[next].at < end &&
           frameOf(events[next].at) + shift < until;
         ++next) {
        perform::Event const& event = events[next];
        if (event.kind == perform::Event::Kind::Damp)
            m_instrument->damp(event.string);
        else
            m_instrument->pluck(event.string, event.midi, event.velocity, event.hand);
    }
}

// The end of the last counted beat is the first beat of the next round; the frames beyond it
// are kept, so that the beat does not drift from round to round.
void Performance::turn()
{
    if (m_course.isLast(m_round)) return;
    perform::Schedule const& now = m_course.round(m_round);
    perform::Schedule const& next = m_course.round(m_round + 1);
    std::int64_t const end = frameOf(now.counted);
    if (next.counted <= next.begins || m_frame < end - blockFrames / 2) return;
    m_frame += frameOf(next.begins) - end;
    m_nextEvent = firstFrom(next.events, next.begins);
    m_nextClick = firstFrom(next.clicks, next.begins);
    m_nextGrace = 0;
    m_nextTuned = 0;
    m_nextClock = 0;
    ++m_round;
}

void Performance::render(float* left, float* right, int frames)
{
    while (frames > 0) {
        if (playing() && m_inBlock == 0) {
            turn();
            startDue();
        }
        int const part = std::min(frames, blockFrames - m_inBlock);
        m_instrument->write(left, right, part);
        left += part;
        right += part;
        frames -= part;
        m_frame += part;
        m_inBlock = (m_inBlock + part) % blockFrames;
    }
    if (playing() && m_course.isLast(m_round) &&
        m_frame > frameOf(m_course.round(m_round).ringing))
        m_course = {};
}

Progress Performance::progress() const
{
    return {m_round, static_cast<double>(m_frame) / sampleRate, playing()};
}

} // namespace sound
