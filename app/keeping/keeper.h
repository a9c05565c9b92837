#pragma once

#include "core/base/result.h"
#include "core/files/work/unsaved.h"

#include <QObject>

#include <condition_variable>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

class QLockFile;

namespace app {

// Keeps unsaved work in a file of its own, from the moment it is changed until it is saved or
// given up. A thread of its own makes the text and writes it, so that neither a slow disk nor a
// long search of the screen's thread delays it: what was changed is in the file a fraction of a
// second later (`gathering`, and the time of the write itself). While the program lives it holds
// a lock beside the file; a file whose lock is free was left behind by one that stopped.
class Keeper final : public QObject {
    Q_OBJECT
public:
    // Changes that follow each other within this time are written once, milliseconds.
    static constexpr int gatheringMs = 150;

    // What is to be kept, made on the thread of the keeper.
    using Making = std::function<files::Unsaved()>;

    explicit Keeper(std::filesystem::path folder, QObject* parent = nullptr);
    Keeper(Keeper const&) = delete;
    Keeper& operator=(Keeper const&) = delete;
    ~Keeper() override; // what is to be kept is written first

    void keep(Making making);
    void forget(); // it is saved, or given up: the file goes
    void finish(); // waits until the disk has what was asked for last

    std::filesystem::path const& file() const { return m_file; }

signals:
    // From the keeper's thread, so connect to an object of the screen's.
    void kept();
    void failed(base::Fault const& fault);

private:
    enum class Wish { Nothing, Keep, Forget };

    void work();
    void write(Making const& making);
    bool prepared();

    std::filesystem::path m_folder;
    std::filesystem::path m_file;
    std::unique_ptr<QLockFile> m_lock;
    std::mutex m_guard;
    std::condition_variable m_change;
    Wish m_wish = Wish::Nothing;
    Making m_making;
    bool m_working = false;
    bool m_hasty = false; // do not gather
    bool m_stopping = false;
    std::thread m_thread; // last: it uses all the others
};

} // namespace app
