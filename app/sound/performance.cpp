#include "app/sound/performance.h"

#include <algorithm>
#include <cmath>
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

} // namespace

Performance::Performance(HarpSynth synth) : m_synth(std::move(synth)) {}

void Performance::begin(std::shared_ptr<perform::Schedule const> schedule,
                        perform::Seconds from, bool loop)
{
    m_schedule = std::move(schedule);
    m_nextEvent = firstFrom(m_schedule->events, from);
    m_nextClick = firstFrom(m_schedule->clicks, from);
    m_frame = frameOf(from);
    m_round = 0;
    m_loop = loop;
}

void Performance::stop()
{
    m_schedule.reset();
    m_synth.dampAll();
}

void Performance::pluck(int string, int midi, int velocity)
{
    m_synth.pluck(string, midi, velocity);
}

// Everything nearer to this border of blocks than to the next.
void Performance::startDue()
{
    std::int64_t const until = m_frame + blockFrames / 2;
    auto const& events = m_schedule->events;
    for (; m_nextEvent < events.size() && frameOf(events[m_nextEvent].at) < until;
         ++m_nextEvent) {
        perform::Event const& event = events[m_nextEvent];
        if (event.kind == perform::Event::Kind::Damp)
            m_synth.damp(event.string);
        else
            m_synth.pluck(event.string, event.midi, event.velocity);
    }
    auto const& clicks = m_schedule->clicks;
    for (; m_nextClick < clicks.size() && frameOf(clicks[m_nextClick].at) < until;
         ++m_nextClick)
        m_synth.click(clicks[m_nextClick].accented);
}

// The end of the last counted beat is the first beat again; the frames beyond it are kept, so
// that the beat does not drift from round to round.
void Performance::turnBack()
{
    std::int64_t const round = frameOf(m_schedule->counted) - frameOf(m_schedule->begins);
    if (!m_loop || round <= 0 || m_frame < frameOf(m_schedule->counted) - blockFrames / 2)
        return;
    m_frame -= round;
    m_nextEvent = firstFrom(m_schedule->events, m_schedule->begins);
    m_nextClick = m_schedule->clicks.size();
    ++m_round;
}

void Performance::render(float* left, float* right, int frames)
{
    while (frames > 0) {
        if (m_schedule && m_inBlock == 0) {
            turnBack();
            startDue();
        }
        int const part = std::min(frames, blockFrames - m_inBlock);
        m_synth.write(left, right, part);
        left += part;
        right += part;
        frames -= part;
        m_frame += part;
        m_inBlock = (m_inBlock + part) % blockFrames;
    }
    if (m_schedule && !m_loop && m_frame > frameOf(m_schedule->ringing)) m_schedule.reset();
}

Progress Performance::progress() const
{
    return {m_round, static_cast<double>(m_frame) / sampleRate, m_schedule != nullptr};
}

} // namespace sound
