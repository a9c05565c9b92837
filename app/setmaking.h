#pragma once

#include "core/files/tables/tables.h"
#include "ui/setdialog.h"

#include <QObject>
#include <QProcess>
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
    void read();
    void ended();

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    Filing& m_filing;
    files::Tables const& m_tables;
    QString m_program;
    QByteArray m_text; // the tunebook, as ABC
    ui::SetDialog* m_dialog = nullptr;
    QProcess m_process;
    QByteArray m_line; // the beginning of one that is not whole yet
    bool m_cancelled = false;
};

} // namespace app
