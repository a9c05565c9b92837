#include "app/hearing.h"

#include "app/sound/output.h"
#include "ui/workbench.h"

#include <QTimer>

namespace app {

Hearing::Hearing(ui::Workbench& workbench) : QObject(&workbench), m_workbench(workbench)
{
    auto device = sound::openDevice();
    if (!device) {
        // Told when the window stands, so that it is seen.
        QTimer::singleShot(0, this,
                           [this, fault = device.error()] { m_workbench.tellFault(fault); });
        device = sound::silentOutput();
    }
    m_player = std::make_unique<sound::Player>(*std::move(device));

    connect(&workbench, &ui::Workbench::playRequested, this, &Hearing::play);
    connect(&workbench, &ui::Workbench::hearingChanged, this, &Hearing::change);
    connect(&workbench, &ui::Workbench::stopRequested, m_player.get(), &sound::Player::stop);
    connect(&workbench, &ui::Workbench::stringPluckRequested, m_player.get(),
            &sound::Player::pluck);
    connect(m_player.get(), &sound::Player::started, &workbench,
            &ui::Workbench::playbackStarted);
    connect(m_player.get(), &sound::Player::stopped, &workbench,
            &ui::Workbench::playbackStopped);
    connect(m_player.get(), &sound::Player::barReached, &workbench, &ui::Workbench::barPlaying);
    connect(m_player.get(), &sound::Player::stringPlucked, &workbench,
            &ui::Workbench::stringSounding);
    connect(m_player.get(), &sound::Player::stringDamped, &workbench,
            &ui::Workbench::stringStilled);
    listenToKeyboard();
}

void Hearing::play(ui::Audition const& audition)
{
    m_player->play(perform::scheduled(audition.arrangement, audition.hearing), audition.loop);
}

void Hearing::change(ui::Audition const& audition)
{
    m_player->setLoop(audition.loop);
    m_player->replace(perform::scheduled(audition.arrangement, audition.hearing));
}

// The first keyboard that is there; a key plucks the string of its pitch.
void Hearing::listenToKeyboard()
{
    auto const ports = m_keys.ports();
    if (ports.empty()) return;
    if (!m_keys.open(ports.front())) return;
    connect(&m_keys, &devices::MidiKeys::keyPressed, &m_workbench, &ui::Workbench::pluckPitch);
}

} // namespace app
