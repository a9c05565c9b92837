#include "ui/paint/printing.h"

#include "ui/paint/inches.h"
#include "ui/paint/sheetpainter.h"

#include <QAction>
#include <QComboBox>
#include <QCoreApplication>
#include <QGraphicsView>
#include <QLabel>
#include <QLineEdit>
#include <QPageLayout>
#include <QPaintEngine>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QToolBar>
#include <QToolButton>

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

// The last button of the preview prints: with its word beside the picture, and a key.
void offerPrinting(QPrintPreviewDialog& preview)
{
    auto const* const bar = preview.findChild<QToolBar*>();
    if (!bar || bar->actions().isEmpty()) return;
    QAction* const print = bar->actions().constLast();
    print->setText(QCoreApplication::translate("Printing", "Print…"));
    print->setShortcuts({QKeySequence(QKeySequence::Print), QKeySequence(Qt::Key_Return)});
    print->setToolTip(QCoreApplication::translate("Printing", "Print (Ctrl+P, or Enter)"));
    // What Qt leaves without a name for readers of the screen.
    auto const named = [](QWidget* widget, QString const& name) {
        if (widget) widget->setAccessibleName(name);
    };
    for (QLineEdit* entry : bar->findChildren<QLineEdit*>())
        named(entry, QCoreApplication::translate("Printing", "Page"));
    for (QComboBox* size : bar->findChildren<QComboBox*>()) {
        named(size, QCoreApplication::translate("Printing", "Size on the screen"));
        auto* const label = new QLabel(size->accessibleName(), size->parentWidget());
        label->setBuddy(size); // by which a choice is named
        label->hide();
        named(size->lineEdit(), size->accessibleName());
    }
    named(preview.findChild<QPrintPreviewWidget*>(),
          QCoreApplication::translate("Printing", "Pages"));
    named(preview.findChild<QGraphicsView*>(),
          QCoreApplication::translate("Printing", "Pages"));
    if (auto* const button = qobject_cast<QToolButton*>(bar->widgetForAction(print)))
        button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
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
    // A file can be searched, and its words copied; a printer and the preview draw outlines
    // alike.
    Lettering const lettering = !printer.outputFileName().isEmpty() &&
                                        painter.paintEngine()->type() == QPaintEngine::Pdf
                                    ? Lettering::Fonts
                                    : Lettering::Outlines;
    for (int number = first; number <= last; ++number) {
        if (number > first) printer.newPage();
        sheet::Page const& page = document.pages[static_cast<std::size_t>(number - 1)];
        painter.save();
        place(painter, printer, page);
        paintPage(painter, page, {}, lettering);
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
    offerPrinting(preview);
    if (parent) preview.resize(parent->window()->size() * 9 / 10);
    preview.exec();
}

} // namespace ui
