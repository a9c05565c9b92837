#include "ui/paint/sheetfiles.h"

#include "ui/paint/inches.h"
#include "ui/paint/pdfdata.h"
#include "ui/paint/sheetpainter.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

QPageSize sizeOf(sheet::Page const& page)
{
    return QPageSize(QSizeF(page.widthMm, page.heightMm), QPageSize::Millimeter);
}

// Title and author as XMP (ISO 16684-1): Qt's own has no place for an author, and holds the time and a
// number drawn by lot.
QByteArray metadataOf(sheet::Document const& document)
{
    auto const words = [](std::string const& text) {
        return QString::fromStdString(text).toHtmlEscaped().toUtf8();
    };
    QByteArray const author =
        document.author.empty()
            ? QByteArray()
            : "<dc:creator><rdf:Seq><rdf:li>" + words(document.author) +
                  "</rdf:li></rdf:Seq></dc:creator>";
    return "<?xpacket begin='\xEF\xBB\xBF' id='W5M0MpCehiHzreSzNTczkc9d'?>"
           "<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
           "<rdf:Description rdf:about='' xmlns:dc='http://purl.org/dc/elements/1.1/'>"
           "<dc:title><rdf:Alt><rdf:li xml:lang='x-default'>" +
           words(document.title) +
           "</rdf:li></rdf:Alt></dc:title>" +
           author +
           "</rdf:Description></rdf:RDF>"
           "<?xpacket end='w'?>";
}

void paintStacked(QPainter& painter, sheet::Document const& document)
{
    for (sheet::Page const& page : document.pages) {
        painter.fillRect(QRectF(0, 0, page.widthMm, page.heightMm), SheetColours{}.paper);
        paintPage(painter, page);
        painter.translate(0, page.heightMm + betweenPagesMm);
    }
}

QImage blank(QSize size, double dotsPerInch, sheet::Document const& document)
{
    QImage image(size.expandedTo({1, 1}), QImage::Format_RGB32);
    int const dotsPerMetre = static_cast<int>(std::lround(1000 * dotsPerInch / mmPerInch));
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    image.setText("Title", QString::fromStdString(document.title));
    return image;
}

QByteArray asPng(QImage const& image)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

QSizeF stackedMm(sheet::Document const& document)
{
    QSizeF size;
    for (sheet::Page const& page : document.pages) {
        double const gap = size.height() > 0 ? betweenPagesMm : 0;
        size = QSizeF(std::max(size.width(), page.widthMm),
                      std::max(size.height(), 0.0) + gap + page.heightMm);
    }
    return size;
}

QByteArray pdfFile(sheet::Document const& document)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    constexpr int dotsPerInch = 1200;
    writer.setResolution(dotsPerInch);
    writer.setTitle(QString::fromStdString(document.title));
    writer.setCreator("Sallow");
    writer.setDocumentXmpMetadata(metadataOf(document));
    writer.setPageMargins({});
    if (document.pages.empty()) return bytes;
    writer.setPageSize(sizeOf(document.pages.front()));
    QPainter painter(&writer);
    for (std::size_t i = 0; i < document.pages.size(); ++i) {
        if (i > 0) {
            writer.setPageSize(sizeOf(document.pages[i]));
            writer.newPage();
        }
        painter.resetTransform();
        painter.scale(dotsPerInch / mmPerInch, dotsPerInch / mmPerInch);
        paintPage(painter, document.pages[i], {}, Lettering::Fonts);
    }
    painter.end();
    return withReadersData(bytes, document);
}

QImage sheetImage(sheet::Document const& document, double dotsPerInch)
{
    QSizeF const size = stackedMm(document) * (dotsPerInch / mmPerInch);
    QImage image = blank(QSize(static_cast<int>(std::ceil(size.width())),
                               static_cast<int>(std::ceil(size.height()))),
                         dotsPerInch, document);
    image.fill(QColor(0xe6, 0xe4, 0xdc)); // between the pages
    QPainter painter(&image);
    painter.scale(dotsPerInch / mmPerInch, dotsPerInch / mmPerInch);
    paintStacked(painter, document);
    return image;
}

QByteArray pngFile(sheet::Document const& document, double dotsPerInch)
{
    return asPng(sheetImage(document, dotsPerInch));
}

QByteArray pngFileOfPage(sheet::Document const& document, std::size_t page, double dotsPerInch)
{
    double const scale = dotsPerInch / mmPerInch;
    sheet::Page const& drawn = document.pages[page];
    QImage image =
        blank((QSizeF(drawn.widthMm, drawn.heightMm) * scale).toSize(), dotsPerInch, document);
    image.fill(SheetColours{}.paper);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintPage(painter, drawn);
    painter.end();
    return asPng(image);
}

} // namespace ui
