#pragma once

#include "app/secondcopy.h"
#include "core/files/tables/tables.h"
#include "ui/batchdialog.h"

#include <QObject>
#include <QString>

#include <optional>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

class Filing;

// A folder of tunes arranged for the harp, hand and level that are chosen, by a second copy of
// this program: the window stays free, and cancelling leaves whole papers only.
class BatchRun final : public QObject {
    Q_OBJECT
public:
    BatchRun(ui::Workbench& workbench, ui::Session& session, Filing& filing,
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
    ui::BatchDialog* m_dialog = nullptr;
};

// One line that the program said: how far it is, or a snag, or what it could not arrange or
// read.
struct BatchLine {
    int done = 0; // 0: a trouble
    int all = 0;
    QString words;
    ui::BatchPlace place{};
};
std::optional<BatchLine> batchLine(QString const& line);

// Options for the harp, hand, level and manner of new tunes.
QStringList optionsFor(ui::Session const& session, files::Tables const& tables);

} // namespace app
