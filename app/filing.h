#pragma once

#include "app/input.h"
#include "app/outputs.h"
#include "app/safekeeping.h"
#include "core/files/tables/tables.h"
#include "core/sheet/drawing.h"
#include "ui/bookdialog.h"

#include <QObject>
#include <QString>

#include <functional>

class QWidget;

namespace ui {
class Session;
class Workbench;
} // namespace ui

namespace app {

// The tunes of a tunebook as their heads tell of them.
std::vector<ui::BookTune> tunesOf(Book const& book);

// Opening, saving, exporting and printing for the workbench: the dialogs, and the words for
// what went wrong.
class Filing final : public QObject {
    Q_OBJECT
public:
    Filing(ui::Workbench& workbench, ui::Session& session, files::Tables const& tables);

    // Opens a file; of a tunebook with several tunes it asks which. What is refused is told in the
    // window and leaves the open tune as it is.
    void open(QString const& path);
    // One tune of a file by its X: number; 0: the file as above. Whether it was opened.
    bool openTune(QString const& path, int number);
    // The same by its place in the file, from 0; beyond the file's tunes: it asks which.
    bool openPlace(QString const& path, int place);
    // The tune of a tunebook that the list begins at; by its place there.
    void beginBooksAt(std::function<int(QString const&)> place) { m_bookPlace = std::move(place); }

    QString const& folder() const { return m_folder; }
    // What was opened last, and the place of the open tune in it.
    Book const& book() const { return m_book; }
    int entry() const { return static_cast<int>(m_entry); }
    // None, or one that is gone: her documents.
    void setFolder(QString const& folder);
    // The open tune is made into another one's: saving asks for a new name, with this in it.
    void becomeCopy(QString const& addition);

    // Offers what was left unsaved when a program stopped. True: some of it is open now.
    bool offerUnsaved();

signals:
    void begun(bool playsIn);            // a new tune, to be written or played in
    void fileUsed(QString const& path);  // opened or saved
    // The tune that is open now, by a name of its own, and its place in the file.
    void tuneShown(QString const& name, QString const& file, int place);
    void leaving();                      // another tune follows, or the end
    // A tune of a file is open, or an arrangement of it was saved under this name.
    void tuneOpened(QString const& file, int number, QString const& title);
    void tuneArranged(QString const& file, int number, QString const& title,
                      QString const& saved);

protected:
    // Closing the window asks about unsaved work.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void askAndOpen();
    void openDemo();
    void beginTune();
    void pasteTune();
    void openOtherTune();
    void step(int by); // through the tunes of the book
    std::optional<std::size_t> chosenFrom(Book const& book, int current);
    void takeUp(Book book, std::size_t entry);
    bool openFrom(QString const& path,
                  std::function<std::optional<std::size_t>(Book const&)> which);
    bool openEntry(Book book, std::size_t entry); // what is refused leaves all as it was
    bool save();
    bool saveAs();
    bool saveTo(QString path); // asks when something is in the way
    bool mayLeave();
    void goBack();
    void openUnsaved(LeftBehind const& left);
    void joinSafekeeping();
    QString offeredName() const; // for Save as
    void exportTo();
    void exportShown(Output const& output);
    // Asks how where it is to be PNG.
    void writeAsked(sheet::Document const& document, Output output, QWidget* over);
    std::string ownText() const; // the open tune's own lines
    void exportPages(sheet::Document const& document, QWidget* over);
    void exportLevels();
    void openHandout();
    void print();

    ui::Workbench& m_workbench;
    ui::Session& m_session;
    files::Tables const& m_tables;
    QString m_folder;        // where the last file was
    std::function<int(QString const&)> m_bookPlace;
    QString m_addition;      // to the name that is offered for saving
    Safekeeping m_safe;      // knows the .sallow file of the open tune
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
