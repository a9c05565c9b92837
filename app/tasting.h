#pragma once

#include "core/files/work/tastefile.h"
#include "core/learning/learn.h"

#include <QObject>
#include <QPointer>

#include <filesystem>
#include <map>
#include <optional>
#include <vector>

class QUndoCommand;

namespace ui {
class Session;
class TasteDialog;
class Workbench;
} // namespace ui

namespace app {

// Keeps which shapes the arranger takes, in her folder for Sallow's data, learns from them and
// gives the session what was learned; shows it in a dialog. A file that cannot be read is told
// and stays as it is: nothing is learned then.
class Tasting final : public QObject {
    Q_OBJECT
public:
    Tasting(ui::Workbench& workbench, ui::Session& session, std::filesystem::path file);

    void showDialog();
    ui::TasteDialog* dialog() const;

private:
    learning::Learned const& learned(std::string const& manner, int level);
    void take(learning::Choice const& choice);
    void followUndo(int index);
    void changed();
    void keep();
    void tell();
    void saveAs();

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    std::filesystem::path m_file;
    files::TasteKept m_kept;
    bool m_readable = true;
    std::map<std::pair<std::string, int>, learning::Learned> m_learned;
    // Choices of the open document that undo may take back: the step each was, and what was
    // kept before it.
    struct Step {
        QUndoCommand const* command = nullptr;
        int index = 0;
        std::vector<learning::Choice> before;
        std::vector<learning::Choice> after;
        bool stands = true;
    };
    std::vector<Step> m_steps;
    QPointer<QObject> m_dialog; // closed, it is gone
};

// Where it is kept.
std::filesystem::path tasteFile();

} // namespace app
