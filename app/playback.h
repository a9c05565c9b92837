#pragma once

#include "app/devices/midilink.h"
#include "app/playalong.h"
#include "app/recording.h"
#include "app/sound/player.h"
#include "core/perform/temperament.h"
#include "ui/audition.h"
#include "ui/harpsounddialog.h"

#include <QObject>
#include <QPointer>
#include <QTimer>

#include <vector>

namespace ui {
class Workbench;
}

namespace app {

class Preferences;

// Joins the workbench with the player and with MIDI devices: what is asked for is heard, what
// sounds is shown, what is played elsewhere is listened to. Without a sound device it says so
// once, the strings light all the same, and the device is taken when it is there again.
class Playback final : public QObject {
    Q_OBJECT
public:
    Playback(ui::Workbench& workbench, Preferences& preferences,
             std::vector<perform::Temperament> temperaments);

    // What is played to clicks.
    Recording& recording() { return *m_recording; }
    // How the harp sounds, for sound files as well.
    sound::Voice const& voice() const { return m_voice; }

signals:
    void keyPlayed(int midi); // a key of her instrument

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void play(ui::Audition const& audition);
    void change(ui::Audition const& audition);
    void stop();
    void followDevices();
    void openDialog();
    void take(ui::HarpSound const& sound);
    void setVoice(ui::HarpSound const& sound);
    void openFirst();
    bool openAgain();
    void showDevices();

    ui::Workbench& m_workbench;
    Preferences& m_preferences;
    std::vector<perform::Temperament> m_temperaments;
    ui::HarpSound m_sound;
    sound::Voice m_voice;
    std::unique_ptr<sound::Player> m_player;
    PlayAlong* m_along = nullptr;
    Recording* m_recording = nullptr;
    devices::MidiLink m_link;
    QPointer<ui::HarpSoundDialog> m_dialog;
    bool m_opened = false; // the output, or it was tried
    bool m_lost = false; // the device, in the middle
    QTimer m_again;      // asks whether it is back
};

} // namespace app
