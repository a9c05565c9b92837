#pragma once

#include "app/besidewindow.h"
#include "ui/setdialog.h"

#include <QString>

namespace app {

// Tunes of the open tunebook as a set: one paper, one sound file, one MIDI file, made for the
// harp, hand and level that are chosen by a second copy of this program, so that the window
// stays free.
class SetMaking final : public BesideWindow {
    Q_OBJECT
public:
    explicit SetMaking(Desk const& desk, QString program = {}); // none: the running one

    void open() override;

private:
    void start();
    void hear(QString const& line) override;
    void tellEnd(SecondCopy::End how) override;

    QByteArray m_text; // the tunebook, as ABC
    QPointer<ui::SetDialog> m_dialog;
};

} // namespace app
