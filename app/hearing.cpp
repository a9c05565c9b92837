#include "app/hearing.h"

#include "app/sound/output.h"
#include "core/perform/practice.h"
#include "ui/workbench.h"

#include <QTimer>

namespace app {

namespace {

perform::Course courseOf(ui::Audition const& audition)
{
    return perform::course(audition.arrangement, audition.hearing,
                           {audition.tempos, audition.loop, audition.clicks});
}

} // namespace

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
    connect(m_player.get(), &sound::Player::outputLost, this, [this] {
        m_lost = true;
        m_workbench.tell(
            tr("The sound device is gone. Strings still light; connect it again and "
               "play, or save a sound file."));
    });
    connect(m_player.get(), &sound::Player::started, &workbench,
            &ui::Workbench::playbackStarted);
    connect(m_player.get(), &sound::Player::stopped, &workbench,
            &ui::Workbench::playbackStopped);
    connect(m_player.get(), &sound::Player::barReached, &workbench, &ui::Workbench::barPlaying);
    connect(m_player.get(), &sound::Player::roundReached, &workbench,
            &ui::Workbench::roundPlaying);
    connect(m_player.get(), &sound::Player::stringPlucked, &workbench,
            &ui::Workbench::stringSounding);
    connect(m_player.get(), &sound::Player::stringDamped, &workbench,
            &ui::Workbench::stringStilled);
    listenToKeyboard();
}

void Hearing::play(ui::Audition const& audition)
{
    // A device that went away may be there again.
    if (m_lost)
        if (auto device = sound::openDevice()) {
            m_player->stop();
            m_player->useOutput(*std::move(device));
            m_lost = false;
        }
    m_player->play(courseOf(audition));
}

void Hearing::change(ui::Audition const& audition) { m_player->replace(courseOf(audition)); }

// The first keyboard that is there; a key plucks the string of its pitch.
void Hearing::listenToKeyboard()
{
    auto const ports = m_keys.ports();
    if (ports.empty()) return;
    if (!m_keys.open(ports.front())) return;
    connect(&m_keys, &devices::MidiKeys::keyPressed, &m_workbench, &ui::Workbench::pluckPitch);
}

} // namespace app
