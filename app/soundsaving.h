#pragma once

#include "app/desk.h"
#include "ui/aside.h"
#include "ui/sounddialog.h"

#include <QObject>
#include <QPointer>

namespace app {

class Playback;

// Sound files of the open tune from the window: the dialog, and the work beside it.
class SoundSaving final : public QObject {
    Q_OBJECT
public:
    SoundSaving(Desk const& desk, Playback const& hearing);

private:
    void open();
    void start();
    void save(ui::SoundChoice const& choice, QString const& path);

    Desk m_desk;
    Playback const& m_hearing;
    QPointer<ui::SoundDialog> m_dialog;
    ui::Aside m_work;
};

} // namespace app
