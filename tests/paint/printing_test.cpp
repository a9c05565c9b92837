#include "core/sheet/sheet.h"
#include "tests/paint/application.h"
#include "tests/sheet/examples.h"
#include "ui/paint/printing.h"
#include "ui/paint/sheetfonts.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QPrinter>
#include <QTemporaryDir>

namespace {

sheet::Document twoPages(sheet::Paper paper)
{
    application();
    auto const font = ui::musicFont().value();
    tune::Tune tune = example::jig();
    auto const once = tune.bars;
    tune.bars.insert(tune.bars.end(), once.begin() + 1, once.end());
    sheet::SheetStyle style;
    style.paper = paper;
    auto document = sheet::arrangementSheet(example::arrangementOf(tune), font, style);
    REQUIRE(document.pages.size() >= 2);
    return document;
}

QByteArray printed(sheet::Document const& document, QPageSize const* paper, int from = 0,
                   int to = 0)
{
    QTemporaryDir folder;
    QString const path = folder.filePath("print.pdf");
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(path);
    ui::readyFor(printer, document);
    if (paper) printer.setPageSize(*paper);
    printer.setFromTo(from, to);
    ui::printPages(printer, document);
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

int pagesOf(QByteArray const& pdf) { return static_cast<int>(pdf.count("/Type /Page\n")); }

} // namespace

TEST_CASE("A printer gets the paper of the sheet and every page", "[paint]")
{
    // ISO 216: A4 is 210 mm by 297 mm, 595 by 842 points; Letter 8.5 by 11 inches, 612 by 792.
    auto const document = twoPages(sheet::Paper::A4);
    QByteArray const pdf = printed(document, nullptr);
    CHECK(pagesOf(pdf) == static_cast<int>(document.pages.size()));
    CHECK(pdf.contains("/MediaBox [0 0 595"));
    CHECK(printed(twoPages(sheet::Paper::Letter), nullptr).contains("/MediaBox [0 0 612"));
}

TEST_CASE("Other paper in the printer stays as it is, and a range of pages is kept", "[paint]")
{
    auto const document = twoPages(sheet::Paper::A4);
    QPageSize const letter(QPageSize::Letter);
    QByteArray const pdf = printed(document, &letter);
    CHECK(pdf.contains("/MediaBox [0 0 612"));
    CHECK(pagesOf(printed(document, nullptr, 2, 2)) == 1);
}
