#include "app/filing.h"

#include "app/chording.h"
#include "app/savetrouble.h"
#include "app/sharedfolder.h"
#include "core/files/abc/headings.h"
#include "core/files/abc/write.h"
#include "core/files/textfile.h"
#include "core/files/work/document.h"
#include "core/tune/kindwords.h"
#include "ui/bookdialog.h"
#include "ui/newtunedialog.h"
#include "ui/pastdialog.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QClipboard>
#include <QDateTime>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMessageBox>
#include <QStandardPaths>

#include <algorithm>

namespace app {

namespace {

// A name for what has no file yet, unlike that of any other.
std::string nameNow(QString const& what)
{
    return (what + QLatin1Char(' ') + QDateTime::currentDateTime().toString(Qt::ISODate))
        .toStdString();
}

// Where people keep their files, where nothing else is known.
QString usualFolder()
{
    QString const documents =
        QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return QFileInfo(documents).isDir() ? documents : QDir::homePath();
}

// The demo tunes lie where nobody saves.
bool isOfProgram(QString const& path)
{
    auto const demo = sharedFolder() / "demo";
    return QFileInfo(path).absolutePath() ==
           QFileInfo(QString::fromStdString(demo.string())).absoluteFilePath();
}

} // namespace

Filing::Filing(ui::Workbench& workbench, ui::Session& session, files::Tables const& tables)
    : QObject(&workbench), m_workbench(workbench), m_session(session), m_tables(tables),
      m_folder(usualFolder()), m_safe(session, tables, this)
{
    joinSafekeeping();
    workbench.installEventFilter(this);
    connect(&session.undoStack(), &QUndoStack::cleanChanged, &workbench,
            [&workbench](bool clean) { workbench.setWindowModified(!clean); });
    connect(&session, &ui::Session::opened, this, [this] {
        if (m_waiting && m_session.brief().tune == m_waiting->tune)
            takeUp(std::move(m_waiting->book), m_waiting->entry);
    });
    connect(&workbench, &ui::Workbench::saveRequested, this, &Filing::save);
    connect(&workbench, &ui::Workbench::saveAsRequested, this, &Filing::saveAs);
    connect(&workbench, &ui::Workbench::newTuneRequested, this, &Filing::beginTune);
    connect(&workbench, &ui::Workbench::pasteTuneRequested, this, &Filing::pasteTune);
    connect(&workbench, &ui::Workbench::openRequested, this, &Filing::askAndOpen);
    connect(&workbench, &ui::Workbench::otherTuneRequested, this, &Filing::openOtherTune);
    connect(&workbench, &ui::Workbench::fileDropped, this, &Filing::open);
    connect(&workbench, &ui::Workbench::demoRequested, this, &Filing::openDemo);
    connect(&workbench, &ui::Workbench::exportRequested, this, &Filing::exportTo);
    connect(&workbench, &ui::Workbench::printRequested, this, &Filing::print);
    connect(&workbench, &ui::Workbench::handoutRequested, this, &Filing::openHandout);
    connect(&workbench, &ui::Workbench::levelsRequested, this, &Filing::exportLevels);
}

void Filing::setFolder(QString const& folder)
{
    m_folder = !folder.isEmpty() && QFileInfo(folder).isDir() ? folder : usualFolder();
}

void Filing::askAndOpen()
{
    QString const path = QFileDialog::getOpenFileName(
        &m_workbench, tr("Open a tune"), m_folder,
        tr("Tunes and arrangements (*.abc *.ABC *.txt *.musicxml *.xml *.mxl *.mid *.sallow);;"
           "All files (*)"));
    if (path.isEmpty()) return;
    open(path);
}

void Filing::openDemo()
{
    open(QString::fromStdString((sharedFolder() / "demo" / "demo.abc").string()));
}

// A tune of rests. It is played in the key in which it is written.
void Filing::beginTune()
{
    ui::NewTuneDialog dialog(&m_workbench);
    if (dialog.exec() != QDialog::Accepted || !mayLeave()) return;
    tune::Tune tune = tune::newTune(dialog.wish());
    tune.tempo = dialog.tempo();
    Book book{nameNow(tr("new tune")), files::abcOfTune(tune), {}, {}, tune};
    auto entries = files::abcTunes(book.text);
    if (!entries) return m_workbench.tellFault(entries.error());
    book.entries = *std::move(entries);
    proposal::Brief brief = m_session.standing();
    brief.tune = tune;
    brief.key = proposal::AsWritten{};
    if (!m_session.open(std::move(brief))) return;
    takeUp(std::move(book), 0);
    emit begun(dialog.playsIn());
}

// What is on the clipboard, as a tunebook without a file.
void Filing::pasteTune()
{
    std::string const text = QGuiApplication::clipboard()->text().toStdString();
    QString const clipboard = tr("the clipboard");
    if (text.empty()) return m_workbench.tell(tr("There is no text on the clipboard."));
    auto entries = files::abcTunes(text);
    if (!entries) {
        base::Fault fault = entries.error();
        fault.place = clipboard.toStdString();
        return m_workbench.tellNotOpened(clipboard, fault);
    }
    Book book{clipboard.toStdString(), text, *std::move(entries), {}, {}};
    std::size_t entry = 0;
    if (book.entries.size() > 1) {
        auto const chosen = chosenFrom(book, 0);
        if (!chosen) return;
        entry = *chosen;
    }
    if (!mayLeave()) return;
    if (auto const tune = readTune(book, book.entries[entry]); !tune)
        return m_workbench.tellNotOpened(clipboard, tune.error());
    book.name = nameNow(tr("pasted"));
    if (openEntry(std::move(book), entry)) m_session.undoStack().resetClean(); // no file has it
}

void Filing::open(QString const& path) { openTune(path, 0); }

bool Filing::openTune(QString const& path, int number)
{
    return openFrom(path, [number](Book const& book) -> std::optional<std::size_t> {
        auto const named = std::ranges::find(book.entries, number, &files::AbcEntry::number);
        if (number <= 0 || named == book.entries.end()) return std::nullopt;
        return static_cast<std::size_t>(named - book.entries.begin());
    });
}

bool Filing::openPlace(QString const& path, int place)
{
    return openFrom(path, [place](Book const& book) -> std::optional<std::size_t> {
        auto const at = static_cast<std::size_t>(place);
        return at < book.entries.size() ? std::optional(at) : std::nullopt;
    });
}

// Of a file with several tunes the one that is meant; where none is, it asks.
bool Filing::openFrom(QString const& path,
                      std::function<std::optional<std::size_t>(Book const&)> which)
{
    auto book = openBook(path.toStdString(), m_tables);
    if (!book) {
        m_workbench.tellNotOpened(QFileInfo(path).fileName(), book.error());
        return false;
    }
    std::optional<std::size_t> entry = which(*book);
    if (!entry) {
        entry = 0;
        if (book->entries.size() > 1)
            entry = chosenFrom(*book, m_bookPlace ? m_bookPlace(path) : 0);
    }
    if (!entry || !mayLeave()) return false;
    if (!openEntry(*std::move(book), *entry)) return false;
    if (!isOfProgram(path)) m_folder = QFileInfo(path).absolutePath();
    emit fileUsed(path);
    return true;
}

std::vector<ui::BookTune> tunesOf(Book const& book)
{
    std::vector<files::TuneHeading> const headings =
        files::tuneHeadings(book.text, book.entries);
    std::vector<ui::BookTune> tunes;
    tunes.reserve(headings.size());
    for (std::size_t i = 0; i < headings.size(); ++i)
        tunes.push_back({book.entries[i].number, QString::fromStdString(book.entries[i].title),
                         QString::fromStdString(tune::rhythmShown(headings[i].kind)),
                         QString::fromStdString(headings[i].key),
                         QString::fromStdString(headings[i].meter)});
    return tunes;
}

// The list of the tunes comes before any of them is arranged.
std::optional<std::size_t> Filing::chosenFrom(Book const& book, int current)
{
    auto const glance = [&book](int row) {
        files::TuneGlance read = files::glanceAt(
            book.text, book.entries[static_cast<std::size_t>(row)], book.name);
        return ui::BookGlance{std::move(read.tune), read.bars, read.chords,
                              QString::fromStdString(read.unreadable)};
    };
    ui::BookDialog dialog(QFileInfo(QString::fromStdString(book.name)).fileName(),
                          tunesOf(book), glance, current, &m_workbench);
    if (dialog.exec() != QDialog::Accepted || !dialog.chosen()) return std::nullopt;
    return static_cast<std::size_t>(*dialog.chosen());
}

void Filing::openOtherTune()
{
    if (m_book.entries.size() < 2) return;
    auto const chosen = chosenFrom(m_book, static_cast<int>(m_entry));
    if (chosen && mayLeave()) openEntry(m_book, *chosen);
}

// Tunes that cannot be read are passed over, and told.
void Filing::step(int by)
{
    auto const count = static_cast<int>(m_book.entries.size());
    QStringList passedOver;
    for (int at = static_cast<int>(m_entry) + by; at >= 0 && at < count; at += by) {
        files::AbcEntry const& entry = m_book.entries[static_cast<std::size_t>(at)];
        if (auto const tune = readTune(m_book, entry); !tune) {
            passedOver << QString::fromStdString(base::sentence(tune.error()));
            continue;
        }
        if (!mayLeave()) return;
        openEntry(m_book, static_cast<std::size_t>(at));
        if (!passedOver.isEmpty())
            m_workbench.tell(tr("Passed over: %1").arg(passedOver.join(QLatin1Char('\n'))));
        return;
    }
    passedOver.prepend(by > 0 ? tr("This is the last tune of the tunebook.")
                              : tr("This is the first tune of the tunebook."));
    m_workbench.tell(passedOver.join(QLatin1Char('\n')));
}

bool Filing::openEntry(Book book, std::size_t entry)
{
    if (book.saved) {
        if (!m_session.open(*book.saved)) return false;
    } else {
        auto tune = readTune(book, book.entries[entry]);
        if (!tune) {
            QString const title = QString::fromStdString(book.entries[entry].title);
            m_workbench.tellNotOpened(
                title.isEmpty() ? QFileInfo(QString::fromStdString(book.name)).fileName() : title,
                tune.error());
            return false;
        }
        tune = chorded(*std::move(tune), "auto", m_tables);
        if (!m_session.open(*tune)) {
            m_waiting = Waiting{std::move(book), entry, *std::move(tune)};
            return false;
        }
    }
    takeUp(std::move(book), entry);
    return true;
}

// The book and tune that the session has opened.
void Filing::takeUp(Book book, std::size_t entry)
{
    m_book = std::move(book);
    m_entry = entry;
    m_waiting.reset();
    m_addition.clear();
    QString const file = QString::fromStdString(m_book.name);
    bool const held = !m_safe.takeUp(
        {ownText(), m_book.saved ? file : QString(), file, m_book.entries[m_entry].number});
    ui::Actions const& actions = m_workbench.actions();
    for (QAction* ofBook : {actions.otherTune, actions.nextTune, actions.previousTune})
        ofBook->setEnabled(m_book.entries.size() > 1);
    m_workbench.actions().goBack->setEnabled(!m_safe.versions().empty());
    if (held)
        m_workbench.tell(tr("“%1” is open in another window. Here it is a copy: saving asks for a "
                            "new name.")
                             .arg(QFileInfo(file).fileName()));
    QString const whole = QFileInfo(file).absoluteFilePath();
    emit tuneShown(whole + QStringLiteral(" #") + QString::number(m_entry), whole,
                   static_cast<int>(m_entry));
    files::AbcEntry const& opened = m_book.entries[m_entry];
    emit tuneOpened(whole, opened.number, QString::fromStdString(opened.title));
}

void Filing::becomeCopy(QString const& addition)
{
    m_addition = addition;
    WorkPlace place = m_safe.place();
    if (place.saved.isEmpty()) return;
    place.saved.clear();
    m_safe.takeUp(std::move(place));
}

void Filing::joinSafekeeping()
{
    ui::Actions const& actions = m_workbench.actions();
    connect(actions.goBack, &QAction::triggered, this, &Filing::goBack);
    connect(actions.nextTune, &QAction::triggered, this, [this] { step(+1); });
    connect(actions.previousTune, &QAction::triggered, this, [this] { step(-1); });
    connect(actions.unsaved, &QAction::triggered, this, &Filing::offerUnsaved);
    connect(&m_safe, &Safekeeping::failed, this, [this](base::Fault const& fault) {
        m_workbench.tell(tr("Your changes cannot be kept aside, so save often: %1.")
                             .arg(QString::fromStdString(fault.place + " (" + fault.detail + ")")));
    });
    connect(&m_safe, &Safekeeping::fileChanged, this, [this](QString const& path) {
        m_workbench.tell(tr("“%1” was changed by another program. Saving asks before it replaces "
                            "that; to see it, open the file again.")
                             .arg(QFileInfo(path).fileName()));
    });
}

// The arrangement of an earlier version, as a step that undo takes back.
void Filing::goBack()
{
    if (!m_session.isOpen()) return;
    std::vector<files::Version> const versions = m_safe.versions();
    std::vector<ui::PastWork> works;
    std::vector<proposal::Brief> briefs;
    for (files::Version const& version : versions) {
        auto const text = files::readTextFile(version.file);
        if (!text) continue;
        auto work = files::readDocument(*text, m_tables, version.file.string());
        if (!work) continue;
        QString const when = ui::whenWords(QString::fromStdString(version.when));
        auto const kept = work->brief.locks.size();
        works.push_back({version.saved ? tr("Saved %1").arg(when) : tr("Not saved, %1").arg(when),
                         tr("%1 · level %2 · %3")
                             .arg(QString::fromStdString(work->brief.harp.name()))
                             .arg(work->brief.level.number)
                             .arg(kept == 1 ? tr("1 chord kept")
                                            : tr("%1 chords kept").arg(kept))});
        briefs.push_back(std::move(work->brief));
    }
    if (works.empty()) return m_workbench.tell(tr("There is no earlier version of this tune."));
    ui::PastDialog dialog(tr("Go back to"),
                          tr("The last versions of “%1”, the newest first. You can undo going "
                             "back.")
                              .arg(QString::fromStdString(m_session.brief().tune.title)),
                          works, tr("Go back"), tr("Cancel"), {}, &m_workbench);
    dialog.exec();
    if (dialog.answer() != ui::PastDialog::Answer::Open || dialog.chosen() < 0) return;
    auto const chosen = static_cast<std::size_t>(dialog.chosen());
    m_session.goBackTo(briefs[chosen], tr("going back"));
}

bool Filing::offerUnsaved()
{
    std::vector<LeftBehind> const left = m_safe.leftBehind();
    m_workbench.actions().unsaved->setEnabled(!left.empty());
    if (left.empty()) return false;
    std::vector<ui::PastWork> works;
    for (LeftBehind const& work : left) {
        QString const title = QString::fromStdString(work.unsaved.title);
        QString const when = ui::whenWords(QString::fromStdString(work.unsaved.changed));
        QStringList steps;
        auto const& all = work.unsaved.steps;
        constexpr std::size_t told = 4;
        for (std::size_t i = all.size() > told ? all.size() - told : 0; i < all.size(); ++i)
            steps << QString::fromStdString(all[i]);
        if (all.size() > told)
            steps.prepend(tr("%1 steps before").arg(all.size() - told));
        works.push_back({tr("%1 · changed %2").arg(title.isEmpty() ? tr("Untitled") : title, when),
                         steps.isEmpty() ? QString()
                                         : tr("Not saved: %1").arg(steps.join(tr("; ")))});
    }
    ui::PastDialog dialog(
        tr("Work left unsaved"),
        tr("Sallow stopped before this was saved. Open it to go on where you were."), works,
        tr("Open"), tr("Later"), tr("Throw away"), &m_workbench);
    dialog.exec();
    if (dialog.chosen() < 0) return false;
    LeftBehind const& chosen = left[static_cast<std::size_t>(dialog.chosen())];
    if (dialog.answer() == ui::PastDialog::Answer::Open) {
        if (!mayLeave()) return false;
        openUnsaved(chosen);
        return true;
    }
    if (dialog.answer() == ui::PastDialog::Answer::ThrowAway) {
        dropLeftBehind(chosen);
        m_workbench.actions().unsaved->setEnabled(left.size() > 1);
    }
    return false;
}

void Filing::openUnsaved(LeftBehind const& left)
{
    std::string const name =
        left.unsaved.file.empty() ? left.unsaved.source : left.unsaved.file;
    auto work = files::readDocument(left.unsaved.document, m_tables, left.file.string());
    if (!work) return m_workbench.tellFault(work.error());
    auto entries = files::abcTunes(work->abc, name);
    if (!entries) return m_workbench.tellFault(entries.error());
    Book book{name, work->abc, *std::move(entries), work->brief, {}};
    if (!m_session.open(work->brief)) return;
    // A tune of a tunebook is known by the book, not as a saved file.
    if (left.unsaved.file.empty()) book.saved.reset();
    takeUp(std::move(book), 0);
    m_safe.adopt(left);
    m_workbench.actions().unsaved->setEnabled(!m_safe.leftBehind().empty());
    m_workbench.tellDone(tr("“%1” is open as it was %2. It is not saved yet.")
                             .arg(QString::fromStdString(left.unsaved.title),
                                  ui::whenWords(QString::fromStdString(left.unsaved.changed))));
}

bool Filing::save()
{
    QString const saved = m_safe.place().saved;
    return saved.isEmpty() ? saveAs() : saveTo(saved);
}

// A name that is not taken yet.
QString Filing::offeredName() const
{
    if (!m_safe.place().saved.isEmpty()) return m_safe.place().saved;
    QString title = QString::fromStdString(m_session.brief().tune.title) + m_addition;
    title.replace('/', '-');
    QString name = m_folder + '/' + title + QStringLiteral(".sallow");
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = m_folder + '/' + title + QStringLiteral(" %1.sallow").arg(i);
    return name;
}

bool Filing::saveAs()
{
    if (!m_session.isOpen()) return false;
    QString path =
        QFileDialog::getSaveFileName(&m_workbench, tr("Save the arrangement"), offeredName(),
                                     tr("Arrangements (*.sallow)"));
    if (path.isEmpty()) return false;
    if (!path.endsWith(QStringLiteral(".sallow"))) path += QStringLiteral(".sallow");
    return saveTo(path);
}

bool Filing::saveTo(QString path)
{
    if (m_safe.heldElsewhere(path)) {
        m_workbench.tell(tr("“%1” is open in another window: choose another name.")
                             .arg(QFileInfo(path).fileName()));
        return saveAs();
    }
    if (path == m_safe.place().saved && m_safe.changedOnDisk()) {
        AfterChange const wish = askAfterChange(&m_workbench, path);
        if (wish == AfterChange::SaveElsewhere) return saveAs();
        if (wish == AfterChange::Cancel) return false;
    }
    while (true) {
        auto const written = m_safe.save(path);
        if (written) break;
        AfterTrouble const wish = askAfterTrouble(&m_workbench, written.error(), path);
        if (wish == AfterTrouble::SaveElsewhere) return saveAs();
        if (wish == AfterTrouble::Cancel) return false;
    }
    m_folder = QFileInfo(path).absolutePath();
    m_workbench.actions().goBack->setEnabled(true);
    m_workbench.tellDone(tr("Saved: %1").arg(path));
    emit fileUsed(path);
    files::AbcEntry const& of = m_book.entries[m_entry];
    emit tuneArranged(QFileInfo(QString::fromStdString(m_book.name)).absoluteFilePath(),
                      of.number, QString::fromStdString(of.title),
                      QFileInfo(path).absoluteFilePath());
    return true;
}

// Whether the open arrangement may be left: saved, given up by the arranger's word, or
// unchanged.
bool Filing::mayLeave()
{
    emit leaving();
    if (!m_session.isOpen() || m_session.undoStack().isClean()) return true;
    auto const answer = QMessageBox::question(
        &m_workbench, tr("Unsaved changes"),
        tr("Keep the changes to \u201c%1\u201d?")
            .arg(QString::fromStdString(m_session.brief().tune.title)),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
    if (answer == QMessageBox::Save) return save();
    if (answer != QMessageBox::Discard) return false;
    m_safe.giveUp();
    return true;
}

bool Filing::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &m_workbench && event->type() == QEvent::Close && !mayLeave()) {
        event->ignore();
        return true;
    }
    return QObject::eventFilter(watched, event);
}

std::string Filing::ownText() const
{
    return files::ownText(m_book.text, m_book.entries[m_entry]);
}

} // namespace app
