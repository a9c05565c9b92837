#include "ui/paint/printing.h"

#include "ui/paint/inches.h"
#include "ui/paint/sheetpainter.h"

#include <QPageLayout>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include <algorithm>

namespace ui {

namespace {

QPageSize paperOf(sheet::Page const& page)
{
    QSizeF const size(page.widthMm, page.heightMm);
    return QPageSize(size, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch);
}

// Puts a page of the document on the paper that is in the printer.
void place(QPainter& painter, QPrinter const& printer, sheet::Page const& page)
{
    QSizeF const paper = printer.pageLayout().fullRect(QPageLayout::Millimeter).size();
    double const scale =
        std::min({1.0, paper.width() / page.widthMm, paper.height() / page.heightMm});
    double const dots = printer.resolution() / mmPerInch;
    painter.scale(dots, dots);
    painter.translate((paper.width() - scale * page.widthMm) / 2,
                      (paper.height() - scale * page.heightMm) / 2);
    painter.scale(scale, scale);
}

} // namespace

void readyFor(QPrinter& printer, sheet::Document const& document)
{
    printer.setFullPage(true);
    printer.setDocName(QString::fromStdString(document.title));
    if (document.pages.empty()) return;
    printer.setPageSize(paperOf(document.pages.front()));
    printer.setPageMargins({}, QPageLayout::Millimeter);
}

void printPages(QPrinter& printer, sheet::Document const& document)
{
    int const count = static_cast<int>(document.pages.size());
    int const first = printer.fromPage() > 0 ? printer.fromPage() : 1;
    int const last = printer.toPage() > 0 ? std::min(printer.toPage(), count) : count;
    if (first > last) return;
    QPainter painter(&printer);
    for (int number = first; number <= last; ++number) {
        if (number > first) printer.newPage();
        sheet::Page const& page = document.pages[static_cast<std::size_t>(number - 1)];
        painter.save();
        place(painter, printer, page);
        paintPage(painter, page);
        painter.restore();
    }
}

void previewPrint(sheet::Document const& document, QWidget* parent)
{
    QPrinter printer(QPrinter::HighResolution);
    readyFor(printer, document);
    QPrintPreviewDialog preview(&printer, parent);
    QObject::connect(&preview, &QPrintPreviewDialog::paintRequested, &preview,
                     [&document](QPrinter* paper) { printPages(*paper, document); });
    preview.exec();
}

} // namespace ui
