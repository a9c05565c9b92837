#pragma once

#include "app/input.h"

#include <QObject>
#include <QString>

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

// Opening, exporting and printing for the workbench: the dialogs, and the words for what went
// wrong.
class Filing final : public QObject {
    Q_OBJECT
public:
    Filing(ui::Workbench& workbench, ui::Session& session);

    // Opens a file, of a book its first tune. What is refused is told in the window and leaves
    // the open tune as it is.
    void open(QString const& path);

private:
    void askAndOpen();
    void openDemo();
    void openOtherTune();
    void openEntry(std::size_t entry);
    void exportTo();
    void print();

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    QString m_folder;        // where the last file was
    Book m_book;             // the last that was opened
    std::size_t m_entry = 0; // its tune that was opened last
};

} // namespace app
