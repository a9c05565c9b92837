#include "app/filing.h"

#include "app/outputs.h"
#include "app/sharedfolder.h"
#include "core/files/abc.h"
#include "core/files/document.h"
#include "core/files/textfile.h"
#include "ui/bookdialog.h"
#include "ui/paint/sheetpainter.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace app {

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
}

void Filing::askAndOpen()
{
    QString const path = QFileDialog::getOpenFileName(
        &m_workbench, tr("Open a tune"), m_folder,
        tr("Tunes and arrangements (*.abc *.ABC *.txt *.musicxml *.xml *.mxl *.sallow);;"
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
    auto written = writeOutputs(
        {m_session.proposal(), files::ownText(m_book.text, m_book.entries[m_entry]), m_tables},
        {*output}, SheetKind::Arrangement);
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Written: %1").arg(path));
}

void Filing::print()
{
    if (!m_session.isOpen()) return;
    auto document = drawn(m_session.arrangement(), SheetKind::Arrangement);
    if (!document) return m_workbench.tellFault(document.error());

    QPrinter printer(QPrinter::HighResolution);
    printer.setFullPage(true);
    printer.setDocName(QString::fromStdString(document->title));
    QPrintPreviewDialog preview(&printer, &m_workbench);
    connect(&preview, &QPrintPreviewDialog::paintRequested, &preview,
            [&document](QPrinter* paper) {
                QPainter painter(paper);
                double const dotsPerMm = paper->resolution() / 25.4;
                bool first = true;
                for (sheet::Page const& page : document->pages) {
                    if (!first) paper->newPage();
                    first = false;
                    painter.save();
                    painter.scale(dotsPerMm, dotsPerMm);
                    ui::paintPage(painter, page);
                    painter.restore();
                }
            });
    preview.exec();
}

} // namespace app
