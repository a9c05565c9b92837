#pragma once

#include "app/keeping/keeper.h"
#include "app/keeping/leftbehind.h"
#include "app/keeping/ownership.h"
#include "core/files/tables/tables.h"
#include "core/files/work/versions.h"

#include <QFileSystemWatcher>
#include <QObject>
#include <QString>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ui {
class Session;
}

namespace app {

// The open tune as far as files are concerned.
struct WorkPlace {
    std::string abc; // the tune's own lines
    QString saved;   // the .sallow file; empty while there is none
    QString source;  // the file it came from
    int tune = 1;    // its X: number there
    friend bool operator==(WorkPlace const&, WorkPlace const&) = default;
};

// Sees that nothing the arranger does is lost: what is not saved is kept aside at every change,
// what is saved or given up stays among the last versions, and what others do to the file is
// noticed.
class Safekeeping final : public QObject {
    Q_OBJECT
public:
    Safekeeping(ui::Session& session, files::Tables const& tables, QObject* parent = nullptr);

    // Another tune is open. False: its saved file is held by another window; it stays with that
    // one, and `saved` is empty here.
    bool takeUp(WorkPlace place);
    WorkPlace const& place() const { return m_place; }

    // Writes the open arrangement under this name and holds it from now on. Faults: CannotWrite.
    base::Result<base::Done> save(QString const& path);
    // Another window has it; to save there would undo its work.
    bool heldElsewhere(QString const& path);
    // The file is not as it was when it was opened or saved.
    bool changedOnDisk() const;
    void giveUp(); // what is not saved goes to the versions

    std::vector<files::Version> versions() const; // the newest first

    std::vector<LeftBehind> leftBehind(); // by programs that stopped
    // It is open now as what is not saved here.
    void adopt(LeftBehind const& left);

    // For tests and the end of the program: the disk has everything.
    void finish() { m_keeper.finish(); }

signals:
    void failed(base::Fault const& fault); // it cannot be kept aside; told once until it can
    void fileChanged(QString const& path); // by another program

private:
    std::string workName(WorkPlace const& place) const;
    std::string documentNow() const;
    void keepAside();
    void watch();
    void look();

    ui::Session& m_session;
    files::Tables const& m_tables;
    WorkPlace m_place;
    std::optional<std::uint64_t> m_stamp;
    std::optional<std::uint64_t> m_toldStamp;
    Ownership m_ownership;
    QFileSystemWatcher m_watcher;
    bool m_toldFailure = false;
    Keeper m_keeper;
};

} // namespace app
