#pragma once

#include "app/input.h"
#include "core/files/tables/tables.h"
#include "core/sheet/drawing.h"

#include <QObject>
#include <QString>

class QWidget;

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

// Opening, saving, exporting and printing for the workbench: the dialogs, and the words for
// what went wrong.
class Filing final : public QObject {
    Q_OBJECT
public:
    Filing(ui::Workbench& workbench, ui::Session& session, files::Tables const& tables);

    // Opens a file, of a book its first tune. What is refused is told in the window and leaves
    // the open tune as it is.
    void open(QString const& path);

protected:
    // Closing the window asks about unsaved work.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void askAndOpen();
    void openDemo();
    void openOtherTune();
    void takeUp(Book book, std::size_t entry);
    bool openEntry(Book book, std::size_t entry); // what is refused leaves all as it was
    bool save();
    bool saveAs();
    bool saveTo(QString const& path);
    bool mayLeave();
    void exportTo();
    base::Result<base::Done> writeShown(std::string const& path);
    std::string ownText() const; // the open tune's own lines
    void exportPages(sheet::Document const& document, QWidget* over);
    void exportLevels();
    void openHandout();
    void print();

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    files::Tables const& m_tables;
    QString m_folder;        // where the last file was
    QString m_saved;         // the .sallow file of the open tune; empty while there is none
    Book m_book;             // the last that was opened
    std::size_t m_entry = 0; // its tune that was opened last
    // A tune that was refused; it is opened after all when the arranger takes a remedy.
    struct Waiting {
        Book book;
        std::size_t entry = 0;
        tune::Tune tune;
    };
    std::optional<Waiting> m_waiting;
};

} // namespace app
