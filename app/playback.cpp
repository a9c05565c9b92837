#include "app/playback.h"

#include "app/devices/midiharp.h"
#include "app/preferences.h"
#include "app/sound/output.h"
#include "app/sound/soundfont.h"
#include "app/sound/timed.h"
#include "core/perform/practice.h"
#include "ui/words.h"
#include "ui/workbench.h"

#include <QEvent>
#include <QFileDialog>

#include <chrono>

namespace app {

namespace {

constexpr std::chrono::seconds tryAgainEvery{3};
constexpr harp::StringIndex testString = 100; // beyond any harp
constexpr int middleC = 60;    // MIDI 1.0

perform::Course courseOf(ui::Audition const& audition)
{
    return perform::course(audition.arrangement, audition.hearing,
                           {audition.tempos, audition.loop, audition.clicks});
}

QStringList namesOf(std::vector<std::string> const& names)
{
    QStringList list;
    for (std::string const& name : names) list.append(QString::fromStdString(name));
    return list;
}

} // namespace

Playback::Playback(ui::Workbench& workbench, Preferences& preferences,
                   std::vector<perform::Temperament> temperaments)
    : QObject(&workbench), m_workbench(workbench), m_preferences(preferences),
      m_temperaments(std::move(temperaments)), m_sound(preferences.harpSound())
{
    setVoice(m_sound);
    m_player = std::make_unique<sound::Player>(sound::silentOutput());
    workbench.installEventFilter(this);
    m_along = new PlayAlong(workbench, *m_player);
    m_recording = new Recording(*m_player, this);
    connect(m_recording, &Recording::wanted, this, [this] {
        m_along->stop();
        openFirst();
        openAgain();
    });

    connect(&workbench, &ui::Workbench::playRequested, this, &Playback::play);
    connect(&workbench, &ui::Workbench::hearingChanged, this, &Playback::change);
    connect(&workbench, &ui::Workbench::stopRequested, this, &Playback::stop);
    connect(&workbench, &ui::Workbench::stringPluckRequested, m_player.get(),
            &sound::Player::pluck);
    connect(workbench.actions().harpSound, &QAction::triggered, this, &Playback::openDialog);
    m_again.setInterval(tryAgainEvery);
    connect(&m_again, &QTimer::timeout, this, [this] {
        if (openAgain())
            m_workbench.tellOfDevices(tr("The sound device is there again."), true);
    });
    connect(m_player.get(), &sound::Player::outputLost, this, [this] {
        m_lost = true;
        m_again.start();
        m_workbench.tellOfDevices(
            tr("The sound device is gone. Strings still light; connect it again and "
               "it is heard again, or save a sound file."));
    });
    connect(m_player.get(), &sound::Player::started, &workbench,
            &ui::Workbench::playbackStarted);
    connect(m_player.get(), &sound::Player::stopped, &workbench,
            &ui::Workbench::playbackStopped);
    connect(m_player.get(), &sound::Player::barReached, &workbench, &ui::Workbench::barPlaying);
    connect(m_player.get(), &sound::Player::positionReached, &workbench,
            &ui::Workbench::positionPlaying);
    connect(m_player.get(), &sound::Player::roundReached, &workbench,
            &ui::Workbench::roundPlaying);
    connect(m_player.get(), &sound::Player::stringPlucked, &workbench,
            &ui::Workbench::stringSounding);
    connect(m_player.get(), &sound::Player::stringDamped, &workbench,
            &ui::Workbench::stringStilled);
    followDevices();
}

// Opening a font takes longer than all else at the start: the window is painted first.
bool Playback::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &m_workbench && event->type() == QEvent::Paint) {
        m_workbench.removeEventFilter(this);
        constexpr int afterPainting = 100; // ms
        QTimer::singleShot(afterPainting, this, &Playback::openFirst);
    }
    return QObject::eventFilter(watched, event);
}

// The output, once: when the window stands, or as soon as something is to be heard.
void Playback::openFirst()
{
    if (std::exchange(m_opened, true)) return;
    auto device = sound::openDevice(m_voice);
    if (!device && !m_voice.font.empty()) { // a font that is gone: the usual one is heard
        m_voice.font.clear();
        device = sound::openDevice(m_voice);
    }
    if (device)
        m_player->useOutput(*std::move(device));
    else
        m_workbench.tellOfDevices(ui::faultWords(device.error()));
}

// A device that went away is taken as soon as it is there again, and what is played goes on in it.
bool Playback::openAgain()
{
    if (!m_lost) return false;
    auto device = sound::openDevice(m_voice);
    if (!device) return false;
    m_player->useOutput(*std::move(device));
    m_lost = false;
    m_again.stop();
    return true;
}

void Playback::play(ui::Audition const& audition)
{
    openFirst();
    openAgain();
    perform::Course const course = courseOf(audition);
    if (!m_along->begin(audition, course)) m_player->play(course);
}

void Playback::change(ui::Audition const& audition)
{
    perform::Course const course = courseOf(audition);
    m_along->change(course);
    m_player->replace(course);
}

void Playback::stop()
{
    m_along->stop();
    m_player->stop();
}

// A key of an instrument plucks the string of its pitch, and is listened to when she plays along.
void Playback::followDevices()
{
    connect(&m_link, &devices::MidiLink::keyReleased, m_recording, &Recording::release);
    connect(&m_link, &devices::MidiLink::keyPressed, this, [this](int midi, int, double at) {
        m_recording->press(midi, at);
        m_workbench.pluckPitch(midi);
        m_along->hear(midi);
        emit keyPlayed(midi);
    });
    connect(&m_link, &devices::MidiLink::outputCame, this, [this](std::string const& port) {
        if (auto harp = devices::openMidiHarp(port))
            m_player->alsoOn(sound::timedOutput(*std::move(harp)));
    });
    connect(&m_link, &devices::MidiLink::outputGone, this, [this](std::string const& port) {
        m_player->alsoOn(nullptr);
        if (QString::fromStdString(port) == m_sound.midiOut)
            m_workbench.tellOfDevices(tr("%1 is gone; it is played on again when it is back.")
                                          .arg(QString::fromStdString(port)));
    });
    for (auto const signal : {&devices::MidiLink::inputCame, &devices::MidiLink::inputGone,
                              &devices::MidiLink::outputCame, &devices::MidiLink::outputGone})
        connect(&m_link, signal, this, &Playback::showDevices);
    m_link.want(m_sound.midiIn.toStdString(), m_sound.midiOut.toStdString());
}

void Playback::showDevices()
{
    if (m_dialog) m_dialog->setDevices(namesOf(m_link.inputs()), namesOf(m_link.outputs()));
}

void Playback::openDialog()
{
    if (m_dialog) return m_dialog->raise();
    QStringList fonts;
    for (auto const& font : sound::soundFonts())
        fonts.append(QString::fromStdString(font.string()));
    std::vector<std::pair<QString, QString>> temperaments;
    for (perform::Temperament const& one : m_temperaments)
        temperaments.emplace_back(QString::fromStdString(one.id),
                                  QString::fromStdString(one.name));
    m_dialog = new ui::HarpSoundDialog(m_sound, fonts, temperaments, &m_workbench);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(m_dialog, &ui::HarpSoundDialog::changed, this, &Playback::take);
    connect(m_dialog, &ui::HarpSoundDialog::testNoteClicked, this,
            [this] { m_player->pluck(testString, middleC); });
    connect(m_dialog, &ui::HarpSoundDialog::otherFontClicked, this, [this] {
        QString const file = QFileDialog::getOpenFileName(
            m_dialog, tr("Sound font"), m_preferences.folder(), tr("Sound fonts (*.sf2)"));
        if (!file.isEmpty()) m_dialog->addFont(file);
    });
    showDevices();
    m_dialog->show();
}

void Playback::setVoice(ui::HarpSound const& sound)
{
    m_voice = {sound.font.toStdString(), sound.a4, {}, sound.halo / 100.0};
    if (auto const temperament =
            perform::temperamentFrom(m_temperaments, sound.temperament.toStdString()))
        m_voice.cents = temperament->cents;
}

void Playback::take(ui::HarpSound const& sound)
{
    if (auto const temperament =
            perform::temperamentFrom(m_temperaments, sound.temperament.toStdString());
        !temperament) {
        if (m_dialog) m_dialog->tell(ui::faultWords(temperament.error()));
        return;
    }
    sound::Voice const before = m_voice;
    setVoice(sound);
    if (m_voice != before) {
        m_opened = true;
        auto device = sound::openDevice(m_voice);
        if (device) {
            m_player->useOutput(*std::move(device));
            m_lost = false;
            m_again.stop();
        } else if (device.error().code == base::FaultCode::NoSoundFont) {
            m_voice = before;
            if (m_dialog) m_dialog->tell(ui::faultWords(device.error()));
            return;
        }
    }
    m_sound = sound;
    m_preferences.keepHarpSound(sound);
    m_link.want(sound.midiIn.toStdString(), sound.midiOut.toStdString());
    showDevices();
}

} // namespace app
