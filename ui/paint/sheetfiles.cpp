#include "ui/paint/sheetfiles.h"

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

constexpr double mmPerInch = 25.4;

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
    double const scale = dotsPerInch / mmPerInch;
    QSizeF const size = stackedMm(document) * scale;
    QImage image(std::max(1, static_cast<int>(std::ceil(size.width()))),
                 std::max(1, static_cast<int>(std::ceil(size.height()))), QImage::Format_RGB32);
    image.fill(QColor(0xe6, 0xe4, 0xdc)); // between the pages
    image.setDotsPerMeterX(static_cast<int>(std::lround(1000 * scale)));
    image.setDotsPerMeterY(static_cast<int>(std::lround(1000 * scale)));
    image.setText("Title", QString::fromStdString(document.title));
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintStacked(painter, document);
    return image;
}

QByteArray pngFile(sheet::Document const& document, double dotsPerInch)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    sheetImage(document, dotsPerInch).save(&buffer, "PNG");
    return bytes;
}

} // namespace ui
