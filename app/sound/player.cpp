#include "app/sound/player.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace sound {

namespace {

// Often enough that a light follows its sound within one frame of a 60 Hz screen.
constexpr std::chrono::milliseconds lookEvery{12};

constexpr int auditionVelocity = 85;

template<typename Timed>
std::size_t firstFrom(std::vector<Timed> const& all, perform::Seconds from)
{
    auto const found = std::ranges::lower_bound(all, from, {}, &Timed::at);
    return static_cast<std::size_t>(found - all.begin());
}

} // namespace

Player::Player(std::unique_ptr<Output> output, QObject* parent)
    : QObject(parent), m_output(std::move(output))
{
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setInterval(lookEvery);
    connect(&m_timer, &QTimer::timeout, this, &Player::look);
}

Player::~Player() { m_output->stop(); }

void Player::play(perform::Schedule schedule, bool loop)
{
    stop();
    m_output->stop();
    m_loop = loop;
    begin(std::move(schedule), 0);
    emit started();
    look();
}

void Player::replace(perform::Schedule schedule)
{
    if (!m_schedule) return;
    look();
    if (!m_schedule) return;
    begin(schedule, samePlace(*m_schedule, m_output->progress().at, schedule));
}

void Player::setLoop(bool loop)
{
    if (!m_schedule || loop == m_loop) return;
    look();
    if (!m_schedule) return;
    m_loop = loop;
    begin(*m_schedule, m_output->progress().at);
}

void Player::stop()
{
    if (!m_schedule) return;
    m_output->stop();
    finish();
}

void Player::pluck(int string, int midi)
{
    m_output->pluck(string, midi, auditionVelocity);
    emit stringPlucked(string, harp::Side::Right);
}

void Player::begin(perform::Schedule schedule, perform::Seconds from)
{
    m_schedule = std::make_shared<perform::Schedule const>(std::move(schedule));
    m_round = 0;
    skipTo(from);
    m_output->begin(m_schedule, from, m_loop);
    m_timer.start();
}

void Player::finish()
{
    m_timer.stop();
    m_schedule.reset();
    emit stopped();
}

void Player::look()
{
    Progress const progress = m_output->progress();
    // Whoever hears a signal may stop the player, or begin something else.
    auto const playing = m_schedule;
    for (; playing && m_round < progress.round; ++m_round) {
        announceUntil(playing->counted);
        if (m_schedule != playing) return;
        skipTo(playing->begins);
        m_nextClick = playing->clicks.size();
    }
    if (!playing) return;
    announceUntil(progress.at);
    if (m_schedule != playing) return;
    if (!m_loop && (!progress.running || progress.at >= playing->counted)) finish();
}

void Player::skipTo(perform::Seconds at)
{
    m_nextEvent = firstFrom(m_schedule->events, at);
    m_nextBar = firstFrom(m_schedule->bars, at);
    m_nextClick = firstFrom(m_schedule->clicks, at);
}

void Player::announceUntil(perform::Seconds at)
{
    auto const playing = m_schedule;
    while (m_schedule == playing && m_nextBar < playing->bars.size() &&
           playing->bars[m_nextBar].at <= at)
        emit barReached(playing->bars[m_nextBar++].playedBar);
    while (m_schedule == playing && m_nextClick < playing->clicks.size() &&
           playing->clicks[m_nextClick].at <= at)
        emit clicked(playing->clicks[m_nextClick++].accented);
    while (m_schedule == playing && m_nextEvent < playing->events.size() &&
           playing->events[m_nextEvent].at <= at)
        announce(playing->events[m_nextEvent++]);
}

void Player::announce(perform::Event const& event)
{
    if (event.kind == perform::Event::Kind::Damp) {
        emit stringDamped(event.string);
        return;
    }
    emit stringPlucked(event.string, event.hand);
    if (event.position) emit positionReached(*event.position);
}

perform::Seconds samePlace(perform::Schedule const& before, perform::Seconds at,
                           perform::Schedule const& now)
{
    if (at < before.begins) return now.begins * at / before.begins;
    perform::Seconds const counted = before.counted - before.begins;
    if (counted <= 0) return now.begins;
    return now.begins + (at - before.begins) * (now.counted - now.begins) / counted;
}

} // namespace sound
