#pragma once

#include "app/tunereading.h"
#include "core/files/work/tuneindex.h"

#include <QObject>
#include <QPointer>

#include <atomic>
#include <filesystem>
#include <memory>
#include <optional>
#include <thread>

namespace collection {
struct Row;
}
namespace ui {
class TuneFinder;
class Workbench;
} // namespace ui

namespace app {

class Filing;

// Keeps the list of the harper's tunes: which folders, what is in them, what she has opened and
// arranged; reads what has changed on a thread of its own, and shows the list in a window.
// `folder` has tunes.json, which is hers, and tunes.index, which only saves reading again.
class Collecting final : public QObject {
    Q_OBJECT
public:
    Collecting(ui::Workbench& workbench, Filing& filing, files::Tables const& tables,
               std::filesystem::path folder);
    Collecting(Collecting const&) = delete;
    Collecting& operator=(Collecting const&) = delete;
    ~Collecting() override; // what is being read is left

    void openFinder();
    ui::TuneFinder* finder() const;
    void hear(int midi); // a key of her instrument: a first note, while the list is in front
    bool isReading() const { return m_thread.joinable(); }

signals:
    void readThrough(int fresh); // the folders, and how many files of them had changed

private:
    void readKept();
    void keepKept();
    void readIndex();
    void readFolders();
    void take(Gathered found, int round, bool through);
    void showRows();
    void addFolder(QString const& folder);
    void removeFolder(QString const& folder);
    void stopReading();
    void noteOpened(QString const& file, int number, QString const& title);
    void noteArranged(QString const& file, int number, QString const& title,
                      QString const& saved);
    void open(collection::Row const& row);

    ui::Workbench& m_workbench;
    Filing& m_filing;
    files::Tables const& m_tables;
    std::filesystem::path m_folder;
    files::TunesKept m_kept;
    bool m_mayKeep = true; // tunes.json can be read, so that nothing is lost by writing it
    bool m_indexRead = false;
    bool m_again = false; // the folders have changed while they were being read
    int m_round = 0;      // of reading; what an earlier one still answers is passed over
    Gathered m_found;
    QPointer<ui::TuneFinder> m_finder;
    std::atomic<bool> m_stop = false;
    std::thread m_thread;
};

} // namespace app
