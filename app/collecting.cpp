#include "app/collecting.h"

#include "app/filing.h"
#include "core/collection/listing.h"
#include "core/files/textfile.h"
#include "ui/tunefinder.h"
#include "ui/workbench.h"

#include <QDateTime>
#include <QFileInfo>

#include <chrono>
#include <fstream>
#include <iterator>
#include <utility>

namespace app {

namespace fs = std::filesystem;

namespace {

using Clock = std::chrono::steady_clock;

constexpr std::chrono::milliseconds tellEvery{150};  // how far it has come
constexpr std::chrono::milliseconds showEvery{1500}; // what has been read so far

// The index may be larger than any tunebook that we open.
std::optional<std::string> bytesOfIndex(fs::path const& file)
{
    std::ifstream in(file, std::ios::binary);
    if (!in) return std::nullopt;
    return std::string(std::istreambuf_iterator<char>(in), {});
}

QStringList asList(std::vector<std::string> const& all)
{
    QStringList out;
    for (std::string const& one : all) out << QString::fromStdString(one);
    return out;
}

} // namespace

Collecting::Collecting(ui::Workbench& workbench, Filing& filing, files::Tables const& tables,
                       fs::path folder)
    : QObject(&workbench), m_workbench(workbench), m_filing(filing), m_tables(tables),
      m_folder(std::move(folder))
{
    readKept();
    connect(&filing, &Filing::tuneOpened, this, &Collecting::noteOpened);
    connect(&filing, &Filing::tuneArranged, this, &Collecting::noteArranged);
    connect(workbench.actions().tunes, &QAction::triggered, this, &Collecting::openFinder);
}

Collecting::~Collecting() { stopReading(); }

ui::TuneFinder* Collecting::finder() const { return m_finder; }

void Collecting::readKept()
{
    fs::path const file = m_folder / "tunes.json";
    auto const text = files::readTextFile(file);
    if (!text && text.error().code == base::FaultCode::FileMissing) return;
    auto kept = text ? files::readTunes(*text, file.string())
                     : base::Result<files::TunesKept>(text.error());
    m_mayKeep = kept.has_value();
    if (kept)
        m_kept = *std::move(kept);
    else
        m_workbench.tellFault(kept.error());
}

void Collecting::keepKept()
{
    if (!m_mayKeep) return;
    std::error_code failed;
    fs::create_directories(m_folder, failed);
    auto const done = files::writeWhole(m_folder / "tunes.json", files::tunesText(m_kept));
    if (!done) m_workbench.tellFault(done.error());
}

void Collecting::readIndex()
{
    if (std::exchange(m_indexRead, true)) return;
    fs::path const file = m_folder / "tunes.index";
    auto const text = bytesOfIndex(file);
    if (!text) return;
    auto known = files::readTuneIndex(*text, file.string());
    if (known)
        m_found.files = *std::move(known);
    else
        m_workbench.tell(
            tr("The list of your tunes was damaged (%1), so your tunes are read again.")
                .arg(QString::fromStdString(known.error().place)));
}

void Collecting::openFinder()
{
    readIndex();
    if (!m_finder) {
        m_finder = new ui::TuneFinder(&m_workbench);
        connect(m_finder, &ui::TuneFinder::openWanted, this, &Collecting::open);
        connect(m_finder, &ui::TuneFinder::folderAdded, this, &Collecting::addFolder);
        connect(m_finder, &ui::TuneFinder::folderRemoved, this, &Collecting::removeFolder);
        m_finder->setReader([this](collection::Row const& row) -> std::optional<tune::Tune> {
            auto const book = openBook(row.name.file, m_tables);
            if (!book) return std::nullopt;
            if (book->saved) return book->saved->tune;
            auto const place = static_cast<std::size_t>(row.place);
            if (place >= book->entries.size()) return std::nullopt;
            auto tune = readTune(*book, book->entries[place]);
            return tune ? std::optional(*std::move(tune)) : std::nullopt;
        });
    }
    showRows();
    m_finder->begin();
    readFolders();
}

void Collecting::showRows()
{
    if (!m_finder) return;
    m_finder->setFolders(asList(m_kept.folders), asList(m_found.troubles), m_found.passedOver);
    m_finder->setRows(collection::rowsOf(m_found.files, m_kept.uses));
}

// On the thread: everything is handed over by value, and answers by the event loop.
void Collecting::readFolders()
{
    if (isReading()) {
        m_again = true;
        return;
    }
    m_stop = false;
    int const round = ++m_round;
    std::vector<collection::FileEntry> known = m_found.files;
    std::ranges::copy(m_found.away, std::back_inserter(known));
    auto const post = [this](auto what) {
        QMetaObject::invokeMethod(this, std::move(what), Qt::QueuedConnection);
    };
    m_thread =
        std::thread([this, post, round, folders = m_kept.folders, known = std::move(known)] {
            auto told = Clock::now() - tellEvery;
            auto shown = Clock::now();
            auto const goesOn = [&](Gathered const& soFar, int done, int all) {
                auto const now = Clock::now();
                if (now - told >= tellEvery) {
                    told = now;
                    post([this, round, done, all] {
                        if (m_finder && round == m_round) m_finder->setReading(done, all);
                    });
                }
                if (now - shown >= showEvery) {
                    shown = now;
                    post([this, round, soFar] { take(soFar, round, false); });
                }
                return !m_stop;
            };
            Gathered found = gathered(folders, known, m_tables, goesOn);
            if (!found.stopped)
                post([this, round, found = std::move(found)]() mutable {
                    take(std::move(found), round, true);
                });
        });
}

void Collecting::take(Gathered found, int round, bool through)
{
    if (round != m_round) return; // of folders that are no longer wanted
    if (!through) {
        if (found.files.size() >
            m_found.files.size()) { // a first reading: what is there so far
            m_found.files = std::move(found.files);
            showRows();
        }
        return;
    }
    if (m_thread.joinable()) m_thread.join();
    bool const other = found.files != m_found.files || found.away != m_found.away ||
                       found.troubles != m_found.troubles;
    m_found = std::move(found);
    if (m_finder) m_finder->setReading(0, 0);
    if (other) {
        showRows();
        std::vector<collection::FileEntry> all = m_found.files;
        std::ranges::copy(m_found.away, std::back_inserter(all));
        std::error_code failed;
        fs::create_directories(m_folder, failed);
        auto const done =
            files::writeWhole(m_folder / "tunes.index", files::tuneIndexText(all));
        if (!done) m_workbench.tellFault(done.error());
    }
    emit readThrough(m_found.fresh);
    if (std::exchange(m_again, false)) readFolders();
}

void Collecting::stopReading()
{
    m_stop = true;
    ++m_round;
    if (m_thread.joinable()) m_thread.join();
}

void Collecting::addFolder(QString const& folder)
{
    QString const whole = QFileInfo(folder).canonicalFilePath();
    if (whole.isEmpty()) return;
    std::string const name = whole.toStdString();
    if (std::ranges::find(m_kept.folders, name) != m_kept.folders.end()) return;
    m_kept.folders.push_back(name);
    keepKept();
    showRows();
    stopReading();
    readFolders();
}

void Collecting::removeFolder(QString const& folder)
{
    std::erase(m_kept.folders, folder.toStdString());
    keepKept();
    stopReading();
    readFolders();
    if (m_finder)
        m_finder->setFolders(asList(m_kept.folders), asList(m_found.troubles),
                             m_found.passedOver);
}

void Collecting::noteOpened(QString const& file, int number, QString const& title)
{
    m_kept.uses.opened[{file.toStdString(), number, title.toStdString()}] =
        QDateTime::currentDateTime().toString(Qt::ISODate).toStdString();
    keepKept();
}

// An arrangement that is saved again has no other tune that it is of.
void Collecting::noteArranged(QString const& file, int number, QString const& title,
                              QString const& saved)
{
    if (file == saved || file.endsWith(QStringLiteral(".sallow"))) return;
    m_kept.uses.made[{file.toStdString(), number, title.toStdString()}] = saved.toStdString();
    keepKept();
}

void Collecting::open(collection::Row const& row)
{
    QString const file = QString::fromStdString(row.name.file);
    bool const opened =
        row.arrangement ? m_filing.openTune(file, 0) : m_filing.openPlace(file, row.place);
    if (opened && m_finder) m_finder->hide();
}

void Collecting::hear(int midi)
{
    if (m_finder && m_finder->isActiveWindow()) m_finder->play(midi);
}

} // namespace app
