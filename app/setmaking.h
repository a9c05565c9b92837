#pragma once

#include "app/secondcopy.h"
#include "core/files/tables/tables.h"
#include "ui/setdialog.h"

#include <QObject>
#include <QString>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Filing;

// Tunes of the open tunebook as a set: one paper, one sound file, one MIDI file, made for the
// harp, hand and level that are chosen by a second copy of this program, so that the window
// stays free.
class SetMaking final : public QObject {
    Q_OBJECT
public:
    SetMaking(ui::Workbench& workbench, ui::Session& session, Filing& filing,
              files::Tables const& tables, QString program = {}); // none: the running one

    void open(); // the dialog

private:
    void start();
    void hear(QString const& line);
    void tellEnd(SecondCopy::End how);

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    Filing& m_filing;
    files::Tables const& m_tables;
    SecondCopy m_copy;
    QByteArray m_text; // the tunebook, as ABC
    ui::SetDialog* m_dialog = nullptr;
};

} // namespace app
