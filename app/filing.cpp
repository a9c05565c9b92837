#include "app/filing.h"

#include "app/outputs.h"
#include "app/sharedfolder.h"
#include "ui/bookdialog.h"
#include "ui/paint/sheetpainter.h"
#include "ui/session.h"
#include "ui/workbench.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>

namespace app {

Filing::Filing(ui::Workbench& workbench, ui::Session& session)
    : QObject(&workbench), m_workbench(workbench), m_session(session)
{
    connect(&workbench, &ui::Workbench::openRequested, this, &Filing::askAndOpen);
    connect(&workbench, &ui::Workbench::otherTuneRequested, this, &Filing::openOtherTune);
    connect(&workbench, &ui::Workbench::fileDropped, this, &Filing::open);
    connect(&workbench, &ui::Workbench::demoRequested, this, &Filing::openDemo);
    connect(&workbench, &ui::Workbench::exportRequested, this, &Filing::exportTo);
    connect(&workbench, &ui::Workbench::printRequested, this, &Filing::print);
}

void Filing::askAndOpen()
{
    QString const path =
        QFileDialog::getOpenFileName(&m_workbench, tr("Open a tune"), m_folder,
                                     tr("Lead sheets (*.abc *.ABC *.txt);;All files (*)"));
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
    auto book = openBook(path.toStdString());
    if (!book) return m_workbench.tellFault(book.error());
    m_book = *std::move(book);
    m_folder = QFileInfo(path).absolutePath();
    m_workbench.actions().otherTune->setEnabled(m_book.entries.size() > 1);
    openEntry(0);
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
    if (chosen) openEntry(static_cast<std::size_t>(*chosen));
}

void Filing::openEntry(std::size_t entry)
{
    m_entry = entry;
    auto tune = readTune(m_book, m_book.entries[entry]);
    if (!tune) return m_workbench.tellFault(tune.error());
    m_session.open(*std::move(tune));
}

void Filing::exportTo()
{
    if (!m_session.isOpen()) return;
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString const path = QFileDialog::getSaveFileName(
        &m_workbench, tr("Export the arrangement"),
        m_folder + '/' + title + QStringLiteral(".pdf"),
        tr("Sheet (*.pdf *.svg *.png);;Sound (*.wav *.flac *.ogg);;MIDI (*.mid);;"
           "Plan (*.plan.json)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    auto written = writeOutputs(m_session.proposal(), {*output}, SheetKind::Arrangement);
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tell(tr("Written: %1").arg(path));
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
