#include "app/recording.h"

#include "app/sound/player.h"
#include "ui/notetake.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace app {

namespace {

double steadyNow()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

} // namespace

Recording::Recording(sound::Player& player, QObject* parent) : QObject(parent), m_player(player)
{
    connect(&player, &sound::Player::stopped, this, &Recording::finish);
}

void Recording::serve(ui::NoteTake& take)
{
    connect(&take, &ui::NoteTake::clicksWanted, this,
            [this, &take](perform::Course const& course, double countIn) {
                emit wanted();
                m_player.stop();
                m_played.clear();
                m_countIn = countIn;
                m_take = &take;
                m_player.play(course);
            });
    connect(&take, &ui::NoteTake::stopWanted, this, [this] {
        if (m_take) m_player.stop();
    });
    connect(&m_player, &sound::Player::clicked, &take, [this, &take](bool accented) {
        if (m_take) take.beat(accented);
    });
}

// The clock of what is heard, less what the message has waited for this thread.
double Recording::inTake(double at) const
{
    return m_player.place().at - std::max(0.0, steadyNow() - at) - m_countIn;
}

void Recording::press(int midi, double at)
{
    if (!m_take || !m_player.isPlaying()) return;
    m_played.push_back({inTake(at), std::nullopt, midi});
    m_take->noteHeard();
}

void Recording::release(int midi, double at)
{
    if (!m_take || !m_player.isPlaying()) return;
    auto const last = std::find_if(m_played.rbegin(), m_played.rend(),
                                   [midi](auto const& note) { return note.midi == midi; });
    if (last != m_played.rend() && !last->until) last->until = inTake(at);
}

void Recording::finish()
{
    if (ui::NoteTake* const take = std::exchange(m_take, nullptr))
        take->ended(std::exchange(m_played, {}));
}

} // namespace app
