#include "app/filing.h"

#include "app/commands/levels.h"
#include "app/outputs.h"
#include "app/sharedfolder.h"
#include "core/files/abc/read.h"
#include "core/files/work/document.h"
#include "core/files/textfile.h"
#include "ui/bookdialog.h"
#include "ui/handoutdialog.h"
#include "ui/paint/printing.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>

namespace app {

namespace {

// A drill is pages alone; its other kinds are those of the arrangement.
SheetKind kindOf(ui::PaperKind kind)
{
    switch (kind) {
    case ui::PaperKind::Pattern:
        return SheetKind::Pattern;
    case ui::PaperKind::Lead:
        return SheetKind::Lead;
    case ui::PaperKind::Arrangement:
    case ui::PaperKind::Drill:
        break;
    }
    return SheetKind::Arrangement;
}

} // namespace

Filing::Filing(ui::Workbench& workbench, ui::Session& session, files::Tables const& tables)
    : QObject(&workbench), m_workbench(workbench), m_session(session), m_tables(tables)
{
    workbench.installEventFilter(this);
    connect(&session.undoStack(), &QUndoStack::cleanChanged, &workbench,
            [&workbench](bool clean) { workbench.setWindowModified(!clean); });
    connect(&session, &ui::Session::opened, this, [this] {
        if (m_waiting && m_session.brief().tune == m_waiting->tune)
            takeUp(std::move(m_waiting->book), m_waiting->entry);
    });
    connect(&workbench, &ui::Workbench::saveRequested, this, &Filing::save);
    connect(&workbench, &ui::Workbench::saveAsRequested, this, &Filing::saveAs);
    connect(&workbench, &ui::Workbench::openRequested, this, &Filing::askAndOpen);
    connect(&workbench, &ui::Workbench::otherTuneRequested, this, &Filing::openOtherTune);
    connect(&workbench, &ui::Workbench::fileDropped, this, &Filing::open);
    connect(&workbench, &ui::Workbench::demoRequested, this, &Filing::openDemo);
    connect(&workbench, &ui::Workbench::exportRequested, this, &Filing::exportTo);
    connect(&workbench, &ui::Workbench::printRequested, this, &Filing::print);
    connect(&workbench, &ui::Workbench::handoutRequested, this, &Filing::openHandout);
    connect(&workbench, &ui::Workbench::levelsRequested, this, &Filing::exportLevels);
}

void Filing::askAndOpen()
{
    QString const path = QFileDialog::getOpenFileName(
        &m_workbench, tr("Open a tune"), m_folder,
        tr("Tunes and arrangements (*.abc *.ABC *.txt *.musicxml *.xml *.mxl *.mid *.sallow);;"
           "All files (*)"));
    if (path.isEmpty()) return;
    open(path);
    if (m_book.entries.size() > 1 && m_book.name == path.toStdString()) openOtherTune();
}

void Filing::openDemo()
{
    open(QString::fromStdString((sharedFolder() / "demo" / "demo.abc").string()));
}

void Filing::open(QString const& path)
{
    auto book = openBook(path.toStdString(), m_tables);
    if (!book) return m_workbench.tellFault(book.error());
    if (!mayLeave()) return;
    bool const saved = book->saved.has_value();
    if (!openEntry(*std::move(book), 0)) return;
    m_folder = QFileInfo(path).absolutePath();
    if (saved) m_saved = path;
}

void Filing::openOtherTune()
{
    QStringList titles;
    for (files::AbcEntry const& entry : m_book.entries)
        titles << QStringLiteral("%1. %2")
                      .arg(entry.number)
                      .arg(QString::fromStdString(entry.title));
    auto const chosen =
        ui::chooseTune(QFileInfo(QString::fromStdString(m_book.name)).fileName(), titles,
                       static_cast<int>(m_entry), &m_workbench);
    if (chosen && mayLeave()) openEntry(m_book, static_cast<std::size_t>(*chosen));
}

bool Filing::openEntry(Book book, std::size_t entry)
{
    if (book.saved) {
        if (!m_session.open(*book.saved)) return false;
    } else {
        auto tune = readTune(book, book.entries[entry]);
        if (!tune) {
            m_workbench.tellFault(tune.error());
            return false;
        }
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
    m_saved.clear();
    m_waiting.reset();
    m_workbench.actions().otherTune->setEnabled(m_book.entries.size() > 1);
}

bool Filing::save() { return m_saved.isEmpty() ? saveAs() : saveTo(m_saved); }

bool Filing::saveAs()
{
    if (!m_session.isOpen()) return false;
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString path = QFileDialog::getSaveFileName(
        &m_workbench, tr("Save the arrangement"),
        m_saved.isEmpty() ? m_folder + '/' + title + QStringLiteral(".sallow") : m_saved,
        tr("Arrangements (*.sallow)"));
    if (path.isEmpty()) return false;
    if (!path.endsWith(QStringLiteral(".sallow"))) path += QStringLiteral(".sallow");
    return saveTo(path);
}

bool Filing::saveTo(QString const& path)
{
    files::SavedWork const work{files::ownText(m_book.text, m_book.entries[m_entry]),
                                m_session.brief()};
    auto written = files::writeWhole(path.toStdString(), files::documentText(work, m_tables));
    if (!written) {
        m_workbench.tellFault(written.error());
        return false;
    }
    m_saved = path;
    m_folder = QFileInfo(path).absolutePath();
    m_session.undoStack().setClean();
    m_workbench.tellDone(tr("Saved: %1").arg(path));
    return true;
}

// Whether the open arrangement may be left: saved, given up by the arranger's word, or
// unchanged.
bool Filing::mayLeave()
{
    if (!m_session.isOpen() || m_session.undoStack().isClean()) return true;
    auto const answer = QMessageBox::question(
        &m_workbench, tr("Unsaved changes"),
        tr("Keep the changes to \u201c%1\u201d?")
            .arg(QString::fromStdString(m_session.brief().tune.title)),
        QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Save);
    if (answer == QMessageBox::Save) return save();
    return answer == QMessageBox::Discard;
}

bool Filing::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &m_workbench && event->type() == QEvent::Close && !mayLeave()) {
        event->ignore();
        return true;
    }
    return QObject::eventFilter(watched, event);
}

void Filing::exportTo()
{
    if (!m_session.isOpen()) return;
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString const path = QFileDialog::getSaveFileName(
        &m_workbench, tr("Export the arrangement"),
        m_folder + '/' + title + QStringLiteral(".pdf"),
        tr("Sheet (*.pdf *.svg *.png);;Sound (*.wav *.flac *.ogg);;"
           "Score (*.musicxml *.mxl *.abc);;MIDI (*.mid);;Plan (*.plan.json)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    auto written = isPages(output->kind)
                       ? writeShown(output->path)
                       : writeOutputs({m_session.proposal(), ownText(), m_tables}, {*output},
                                      kindOf(m_workbench.paperKind()));
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Written: %1").arg(path));
}

// The paper that is shown.
base::Result<base::Done> Filing::writeShown(std::string const& path)
{
    auto const pages = m_workbench.pages();
    if (!pages) return base::Done{}; // what is missing has been told
    return writePages(*pages, {path});
}

std::string Filing::ownText() const
{
    return files::ownText(m_book.text, m_book.entries[m_entry]);
}

void Filing::exportLevels()
{
    if (!m_session.isOpen()) return;
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString const path = QFileDialog::getSaveFileName(&m_workbench, tr("Export levels 1 to 5"),
                                                      m_folder + '/' + title + tr(", levels") +
                                                          QStringLiteral(".pdf"),
                                                      tr("Sheets (*.pdf *.svg *.png)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    sheet::SheetStyle style;
    style.paper = m_workbench.paper();
    auto written = writeLevels(m_session.brief(), ownText(), {1, 2, 3, 4, 5}, m_tables,
                               {*output}, SheetKind::Arrangement, style);
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Written: %1").arg(path));
}

void Filing::exportPages(sheet::Document const& document, QWidget* over)
{
    QString const path = QFileDialog::getSaveFileName(
        over, tr("Export the handout"),
        m_folder + '/' + QString::fromStdString(document.title) + QStringLiteral(".pdf"),
        tr("Pages (*.pdf *.svg *.png)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto written = writePages(document, {path.toStdString()});
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Written: %1").arg(path));
}

void Filing::openHandout()
{
    if (!m_session.isOpen() || !m_workbench.font()) return;
    sheet::SheetStyle style;
    style.paper = m_workbench.paper();
    ui::HandoutDialog dialog(m_workbench.handoutWish(), *m_workbench.font(), style,
                             &m_workbench);
    connect(&dialog, &ui::HandoutDialog::exportClicked, &dialog,
            [this, &dialog] { exportPages(dialog.document(), &dialog); });
    connect(&dialog, &ui::HandoutDialog::printClicked, &dialog,
            [&dialog] { ui::previewPrint(dialog.document(), &dialog); });
    dialog.exec();
}

void Filing::print()
{
    if (auto const pages = m_workbench.pages()) ui::previewPrint(*pages, &m_workbench);
}

} // namespace app
