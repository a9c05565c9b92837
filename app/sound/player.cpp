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

void Player::alsoOn(std::unique_ptr<Output> second)
{
    m_second = std::move(second);
    if (m_second && isPlaying()) m_second->begin(m_course, place());
}

void Player::play(perform::Course course)
{
    stop();
    m_output->stop();
    if (m_second) m_second->stop();
    begin(std::move(course), {});
    emit started();
    look();
}

void Player::replace(perform::Course course)
{
    if (!isPlaying()) return;
    look();
    if (!isPlaying()) return;
    Progress const now = m_output->progress();
    perform::Seconds const at =
        perform::samePlace(m_course.round(now.round), now.at, course.round(now.round));
    begin(std::move(course), {now.round, at});
}

void Player::stop()
{
    if (!isPlaying()) return;
    m_output->stop();
    if (m_second) m_second->stop();
    finish();
}

void Player::useOutput(std::unique_ptr<Output> output)
{
    Progress const now = m_output->progress();
    m_output = std::move(output);
    if (isPlaying()) begin(m_course, {now.round, now.at});
}

void Player::pluck(harp::StringIndex string, int midi)
{
    goSilentIfLost();
    m_output->pluck(string, midi, auditionVelocity);
    if (m_second) m_second->pluck(string, midi, auditionVelocity);
    emit stringPlucked(string, harp::Side::Right);
}

perform::Place Player::place() const
{
    Progress const now = m_output->progress();
    return {now.round, now.at};
}

void Player::begin(perform::Course course, perform::Place from)
{
    m_course = std::move(course);
    ++m_begun;
    m_round = from.round;
    skipTo(from.at);
    m_output->begin(m_course, from);
    if (m_second) m_second->begin(m_course, from);
    m_timer.start();
}

void Player::finish()
{
    m_timer.stop();
    m_course = {};
    ++m_begun;
    emit stopped();
}

void Player::goSilentIfLost()
{
    if (!m_output->lost()) return;
    useOutput(silentOutput());
    emit outputLost();
}

void Player::look()
{
    goSilentIfLost();
    if (!isPlaying()) return;
    Progress const progress = m_output->progress();
    // Whoever hears a signal may stop the player, or begin something else.
    int const begun = m_begun;
    while (m_round < progress.round) {
        announceUntil(m_course.round(m_round).counted);
        if (m_begun != begun) return;
        ++m_round;
        skipTo(m_course.round(m_round).begins);
        emit roundReached(m_round);
        if (m_begun != begun) return;
    }
    announceUntil(progress.at);
    if (m_begun != begun || !m_course.isLast(m_round)) return;
    if (!progress.running || progress.at >= m_course.round(m_round).counted) finish();
}

void Player::skipTo(perform::Seconds at)
{
    perform::Schedule const& now = m_course.round(m_round);
    m_nextEvent = firstFrom(now.events, at);
    m_nextBar = firstFrom(now.bars, at);
    m_nextClick = firstFrom(now.clicks, at);
}

void Player::announceUntil(perform::Seconds at)
{
    int const begun = m_begun;
    perform::Course const course = m_course; // stays while it is told of
    perform::Schedule const& now = course.round(m_round);
    while (m_begun == begun && m_nextBar < now.bars.size() && now.bars[m_nextBar].at <= at)
        emit barReached(now.bars[m_nextBar++].playedBar);
    while (m_begun == begun && m_nextClick < now.clicks.size() &&
           now.clicks[m_nextClick].at <= at)
        emit clicked(now.clicks[m_nextClick++].accented);
    while (m_begun == begun && m_nextEvent < now.events.size() &&
           now.events[m_nextEvent].at <= at)
        announce(now.events[m_nextEvent++]);
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

} // namespace sound
