#include "app/filing.h"

#include "app/commands/levels.h"
#include "ui/handoutdialog.h"
#include "ui/levelsdialog.h"
#include "ui/paint/printing.h"
#include "ui/pngdialog.h"
#include "ui/session.h"
#include "ui/transport.h"
#include "ui/workbench.h"

#include <QFileDialog>
#include <QFileInfo>

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

// The end of the tune slows as it is set for practice.
SoundWish endAsHeard(ui::Workbench const& workbench)
{
    SoundWish wish;
    wish.slowing = workbench.transport()->practice().slowing;
    return wish;
}

// The output as it is asked for: PNG in a resolution. False: given up.
bool asksHow(Output& output, std::size_t pages, QWidget* over)
{
    if (output.kind != OutputKind::Png) return true;
    ui::PngDialog dialog(
        QString::fromStdString(output.path), static_cast<int>(pages),
        [&output](int page) { return QString::fromStdString(numbered(output.path, page)); },
        over);
    if (dialog.exec() != QDialog::Accepted) return false;
    output.dotsPerInch = dialog.resolution();
    return true;
}

// What was made: the path, or that of the first of a file a page.
QString madeOf(Output const& output, std::size_t pages)
{
    bool const several = output.dotsPerInch && pages > 1;
    return QString::fromStdString(several ? numbered(output.path, 1) : output.path);
}

} // namespace

void Filing::exportTo()
{
    if (!m_session.isOpen()) return;
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString const path = QFileDialog::getSaveFileName(
        &m_workbench, tr("Export the arrangement"),
        m_folder + '/' + title + QStringLiteral(".pdf"),
        tr("Sheet (*.pdf *.svg *.png);;Sound (*.wav *.flac *.ogg);;Music for other programs "
           "(*.musicxml *.mxl *.abc);;MIDI (*.mid);;Arrangement as data (*.plan.json)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    if (isPages(output->kind)) return exportShown(*output);
    auto written = writeOutputs({m_session.proposal(), ownText(), m_tables}, {*output},
                                kindOf(m_workbench.paperKind()), {}, endAsHeard(m_workbench));
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Exported: %1").arg(path));
}

// The paper that is shown; what is missing for it has been told.
void Filing::exportShown(Output const& output)
{
    if (auto const pages = m_workbench.pages()) writeAsked(*pages, output, &m_workbench);
}

void Filing::writeAsked(sheet::Document const& document, Output output, QWidget* over)
{
    if (!asksHow(output, document.pages.size(), over)) return;
    auto written = writePages(document, {output});
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Exported: %1").arg(madeOf(output, document.pages.size())));
}

void Filing::exportLevels()
{
    if (!m_session.isOpen()) return;
    ui::LevelsDialog wish(&m_workbench);
    if (wish.exec() != QDialog::Accepted) return;
    std::vector<int> const levels = wish.levels();
    QString const title = QString::fromStdString(m_session.brief().tune.title);
    QString const path = QFileDialog::getSaveFileName(&m_workbench, tr("Export levels"),
                                                      m_folder + '/' + title + tr(", levels") +
                                                          QStringLiteral(".pdf"),
                                                      tr("Sheets (*.pdf *.svg *.png)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    sheet::SheetStyle style;
    style.paper = m_workbench.paper();
    style = ui::styled(style, m_workbench.reading());
    if (isPages(output->kind)) {
        auto const pages =
            levelPages(m_session.brief(), levels, m_tables, style, endAsHeard(m_workbench));
        if (!pages) return m_workbench.tellFault(pages.error());
        return writeAsked(*pages, *output, &m_workbench);
    }
    OutputNames names;
    auto written = writeLevels(m_session.brief(), ownText(), levels, m_tables, {*output},
                               SheetKind::Arrangement, style, names, endAsHeard(m_workbench));
    if (!written) return m_workbench.tellFault(written.error());
    m_workbench.tellDone(tr("Exported: %1").arg(path));
}

void Filing::exportPages(sheet::Document const& document, QWidget* over)
{
    QString const path = QFileDialog::getSaveFileName(
        over, tr("Export the handout"),
        m_folder + '/' + QString::fromStdString(document.title) + QStringLiteral(".pdf"),
        tr("Pages (*.pdf *.svg *.png)"));
    if (path.isEmpty()) return;
    m_folder = QFileInfo(path).absolutePath();
    auto const output = outputFor(path.toStdString());
    if (!output) return m_workbench.tellFault(output.error());
    writeAsked(document, *output, over);
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
