#include "app/safekeeping.h"

#include "app/keeping/userfolder.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "ui/session.h"

#include <QDateTime>
#include <QFileInfo>

#include <algorithm>
#include <utility>

namespace app {

namespace {

std::string timeNow()
{
    return QDateTime::currentDateTime().toString(Qt::ISODateWithMs).toStdString();
}

std::filesystem::path unsavedFolder() { return userFolder() / "unsaved"; }
std::filesystem::path versionsRoot() { return userFolder() / "versions"; }
std::filesystem::path marksFolder() { return userFolder() / "open"; }

// What was done since it was saved, the latest last; steps that were taken back count as such.
std::vector<std::string> stepsSince(QUndoStack const& undo)
{
    std::vector<std::string> out;
    int const clean = undo.cleanIndex();
    for (int i = std::max(clean, 0); i < undo.index(); ++i)
        out.push_back(undo.text(i).toStdString());
    for (int i = undo.index(); i < clean; ++i)
        out.push_back(ui::Session::tr("taken back: %1").arg(undo.text(i)).toStdString());
    return out;
}

} // namespace

Safekeeping::Safekeeping(ui::Session& session, files::Tables const& tables, QObject* parent)
    : QObject(parent), m_session(session), m_tables(tables), m_keeper(unsavedFolder())
{
    connect(&session, &ui::Session::changed, this, [this] {
        if (m_session.isOpen() && !m_session.undoStack().isClean()) keepAside();
    });
    connect(&session.undoStack(), &QUndoStack::cleanChanged, this, [this](bool clean) {
        if (clean)
            m_keeper.forget();
        else
            keepAside();
    });
    connect(&m_keeper, &Keeper::failed, this, [this](base::Fault const& fault) {
        if (!std::exchange(m_toldFailure, true)) emit failed(fault);
    });
    connect(&m_keeper, &Keeper::kept, this, [this] { m_toldFailure = false; });
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, &Safekeeping::look);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, &Safekeeping::look);
}

void Safekeeping::keepAside()
{
    files::Unsaved unsaved{m_session.brief().tune.title, m_place.saved.toStdString(),
                           m_place.source.toStdString(), timeNow(),
                           stepsSince(m_session.undoStack()), {}};
    // The text is made by the keeper's thread, from copies.
    m_keeper.keep([unsaved = std::move(unsaved),
                   work = files::SavedWork{m_place.abc, m_session.brief()},
                   &tables = m_tables]() mutable {
        unsaved.document = files::documentText(work, tables);
        return unsaved;
    });
}

bool Safekeeping::takeUp(WorkPlace place)
{
    bool const held = !place.saved.isEmpty() && !m_ownership.take(marksFolder(), place.saved);
    if (held || place.saved.isEmpty()) m_ownership.letGo();
    if (held) place.saved.clear();
    m_place = std::move(place);
    watch();
    return !held;
}

bool Safekeeping::heldElsewhere(QString const& path)
{
    if (path == m_place.saved) return false;
    Ownership trial;
    return !trial.take(marksFolder(), path);
}

std::string Safekeeping::documentNow() const
{
    return files::documentText({m_place.abc, m_session.brief()}, m_tables);
}

// The work is known by its saved file, or else by where the tune came from.
std::string Safekeeping::workName(WorkPlace const& place) const
{
    if (!place.saved.isEmpty()) return QFileInfo(place.saved).absoluteFilePath().toStdString();
    return QFileInfo(place.source).absoluteFilePath().toStdString() + " tune " +
           std::to_string(place.tune);
}

base::Result<base::Done> Safekeeping::save(QString const& path)
{
    // What another program has put there is not lost either.
    if (path == m_place.saved && changedOnDisk())
        if (auto const theirs = files::readTextFile(path.toStdString()))
            (void)files::keepVersion(files::versionsFolder(versionsRoot(), workName(m_place)),
                                     timeNow(), true, *theirs);
    std::string const document = documentNow();
    auto written = files::writeWhole(path.toStdString(), document);
    if (!written) return written;
    WorkPlace place = m_place;
    place.saved = path;
    takeUp(std::move(place));
    auto const version = files::keepVersion(
        files::versionsFolder(versionsRoot(), workName(m_place)), timeNow(), true, document);
    m_session.undoStack().setClean();
    m_keeper.forget();
    if (!version) emit failed(version.error());
    return written;
}

void Safekeeping::giveUp()
{
    if (m_session.isOpen() && !m_session.undoStack().isClean()) {
        auto const version =
            files::keepVersion(files::versionsFolder(versionsRoot(), workName(m_place)),
                               timeNow(), false, documentNow());
        if (!version) return; // then it stays kept aside
    }
    m_keeper.forget();
}

std::vector<files::Version> Safekeeping::versions() const
{
    return files::versionsIn(files::versionsFolder(versionsRoot(), workName(m_place)));
}

std::vector<LeftBehind> Safekeeping::leftBehind() { return app::leftBehind(unsavedFolder()); }

void Safekeeping::adopt(LeftBehind const& left)
{
    m_session.undoStack().resetClean();
    keepAside();
    m_keeper.finish();
    if (std::filesystem::exists(m_keeper.file())) dropLeftBehind(left);
}

void Safekeeping::watch()
{
    if (!m_watcher.files().isEmpty()) m_watcher.removePaths(m_watcher.files());
    if (!m_watcher.directories().isEmpty()) m_watcher.removePaths(m_watcher.directories());
    m_stamp.reset();
    m_toldStamp.reset();
    if (m_place.saved.isEmpty()) return;
    m_stamp = stampOf(m_place.saved);
    m_toldStamp = m_stamp;
    // Programs that replace a file take the old one away: its folder tells of the new one.
    m_watcher.addPath(m_place.saved);
    m_watcher.addPath(QFileInfo(m_place.saved).absolutePath());
}

bool Safekeeping::changedOnDisk() const
{
    if (m_place.saved.isEmpty()) return false;
    auto const now = stampOf(m_place.saved);
    return now && now != m_stamp;
}

void Safekeeping::look()
{
    if (m_place.saved.isEmpty()) return;
    auto const now = stampOf(m_place.saved);
    if (now && !m_watcher.files().contains(m_place.saved)) m_watcher.addPath(m_place.saved);
    if (!now || now == m_toldStamp) return;
    m_toldStamp = now;
    if (now != m_stamp) emit fileChanged(m_place.saved);
}

} // namespace app
