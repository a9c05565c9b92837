#pragma once

#include "core/files/tables/tables.h"
#include "ui/aside.h"
#include "ui/sounddialog.h"

#include <QObject>
#include <QPointer>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Filing;
class Hearing;

// Sound files of the open tune from the window: the dialog, and the work beside it.
class SoundSaving final : public QObject {
    Q_OBJECT
public:
    SoundSaving(ui::Workbench& workbench, ui::Session& session, Filing& filing,
                Hearing const& hearing, files::Tables const& tables);

private:
    void open();
    void start();
    void save(ui::SoundChoice const& choice, QString const& path);

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    Filing& m_filing;
    Hearing const& m_hearing;
    files::Tables const& m_tables;
    QPointer<ui::SoundDialog> m_dialog;
    ui::Aside m_work;
};

} // namespace app
