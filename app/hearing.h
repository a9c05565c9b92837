#pragma once

#include "app/devices/midikeys.h"
#include "app/sound/player.h"
#include "ui/audition.h"

#include <QObject>

namespace ui {
class Workbench;
}

namespace app {

// Joins the workbench with the player: what is asked for is heard, what sounds is shown.
// Without a sound device it says so once and the strings light all the same.
class Hearing final : public QObject {
    Q_OBJECT
public:
    explicit Hearing(ui::Workbench& workbench);

private:
    void play(ui::Audition const& audition);
    void change(ui::Audition const& audition);
    void listenToKeyboard();

    ui::Workbench& m_workbench;
    std::unique_ptr<sound::Player> m_player;
    devices::MidiKeys m_keys;
    bool m_lost = false; // the device, in the middle
};

} // namespace app
