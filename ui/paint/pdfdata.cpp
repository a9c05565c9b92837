#include "ui/paint/pdfdata.h"

#define POINTERHOLDER_TRANSITION 4
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <QDateTime>

#include <algorithm>
#include <array>
#include <cctype>
#include <exception>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ui {

namespace {

using Object = QPDFObjectHandle;
using Pages = std::vector<QPDFPageObjectHelper>;

constexpr double pointsPerMm = 72 / 25.4;

Object text(std::string const& utf8) { return Object::newUnicodeString(utf8); }

// "The top of this page, from here down": PDF 32000-1:2008, 12.3.2.2.
Object destination(Pages const& pages, sheet::Document const& document,
                   sheet::Bookmark const& bookmark)
{
    auto const page = static_cast<std::size_t>(bookmark.page);
    double const fromFoot = document.pages[page].heightMm - bookmark.yMm;
    return Object::newArray({pages[page].getObjectHandle(), Object::newName("/XYZ"),
                             Object::newNull(), Object::newReal(fromFoot * pointsPerMm),
                             Object::newNull()});
}

// The outline tree of PDF 32000-1:2008, 12.3.3: the title, and its parts below it.
void addOutline(QPDF& file, Pages const& pages, sheet::Document const& document)
{
    auto const dictionary = [&file] {
        return file.makeIndirectObject(Object::newDictionary());
    };
    Object outline = dictionary();
    Object title = dictionary();
    outline.replaceKey("/Type", Object::newName("/Outlines"));
    outline.replaceKey("/First", title);
    outline.replaceKey("/Last", title);
    int const all = static_cast<int>(document.bookmarks.size());
    outline.replaceKey("/Count", Object::newInteger(1 + all));
    title.replaceKey("/Title", text(document.title));
    title.replaceKey("/Parent", outline);
    title.replaceKey("/Dest", destination(pages, document, {"", 0, 0}));
    if (all > 0) title.replaceKey("/Count", Object::newInteger(all));
    std::array<Object, 3> last; // the newest item of each depth
    last[0] = title;
    for (sheet::Bookmark const& bookmark : document.bookmarks) {
        std::size_t const depth = bookmark.level > 0 && last[1].isInitialized() ? 2 : 1;
        Object parent = last[depth - 1];
        Object item = dictionary();
        item.replaceKey("/Title", text(bookmark.text));
        item.replaceKey("/Parent", parent);
        item.replaceKey("/Dest", destination(pages, document, bookmark));
        if (last[depth].isInitialized()) {
            item.replaceKey("/Prev", last[depth]);
            last[depth].replaceKey("/Next", item);
        } else {
            parent.replaceKey("/First", item);
        }
        parent.replaceKey("/Last", item);
        if (depth == 2)
            parent.replaceKey("/Count", Object::newInteger(
                                            parent.hasKey("/Count")
                                                ? parent.getKey("/Count").getIntValueAsInt() + 1
                                                : 1));
        last[depth] = item;
        if (depth == 1) last[2] = Object();
    }
    file.getRoot().replaceKey("/Outlines", outline);
}

// Two pages that belong together lie open side by side, and a printer is asked not to put the
// second on the back of the first: PDF 32000-1:2008, 7.7.2 and 12.2.
void addOpening(QPDF& file, sheet::Opening opening)
{
    if (opening == sheet::Opening::PageByPage) return;
    bool const book = opening == sheet::Opening::AsABook;
    Object preferences = Object::newDictionary();
    preferences.replaceKey("/Duplex",
                           Object::newName(book ? "/DuplexFlipLongEdge" : "/Simplex"));
    file.getRoot().replaceKey("/PageLayout",
                              Object::newName(book ? "/TwoPageRight" : "/TwoPageLeft"));
    file.getRoot().replaceKey("/ViewerPreferences", preferences);
}

// The code points of the music font and of Unicode for the signs that stand in words:
// SMuFL 1.4, "Standard accidentals (12-EDO)"; Unicode 15, "Miscellaneous Symbols".
constexpr std::array<std::pair<std::string_view, std::string_view>, 3> accidentals{
    {{"<e260>", "<266d>"}, {"<e261>", "<266e>"}, {"<e262>", "<266f>"}}};

// Whoever searches or copies the text finds flats, naturals and sharps as such: the tables that
// say what the characters of a font mean (PDF 32000-1:2008, 9.10.3) name those of Unicode.
void nameAccidentals(QPDF& file)
{
    for (Object& object : file.getAllObjects()) {
        if (!object.isDictionary() || !object.hasKey("/ToUnicode")) continue;
        Object table = object.getKey("/ToUnicode");
        if (!table.isStream()) continue;
        auto const data = table.getStreamData();
        std::string text(reinterpret_cast<char const*>(data->getBuffer()), data->getSize());
        std::string lower = text;
        std::transform(lower.begin(), lower.end(), lower.begin(),
                       [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        bool found = false;
        for (auto const& [ours, unicode] : accidentals)
            for (auto at = lower.find(ours); at != std::string::npos;
                 at = lower.find(ours, at + 1)) {
                text.replace(at, unicode.size(), unicode);
                found = true;
            }
        if (found) table.replaceStreamData(text, Object::newNull(), Object::newNull());
    }
}

// Builds that must give the same bytes each time name the moment they stand for: seconds since 1970 in
// SOURCE_DATE_EPOCH (the specification of reproducible-builds.org). As PDF writes it (7.9.4).
std::optional<std::string> namedMoment()
{
    bool isNumber = false;
    qint64 const seconds = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&isNumber);
    if (!isNumber) return std::nullopt;
    QDateTime const moment = QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC);
    if (!moment.isValid()) return std::nullopt;
    return moment.toString("'D:'yyyyMMddHHmmss'Z'").toStdString();
}

QByteArray rewritten(QByteArray const& pdf, sheet::Document const& document)
{
    QPDF file;
    file.processMemoryFile("sheet", pdf.constData(), static_cast<std::size_t>(pdf.size()));
    Pages const pages = QPDFPageDocumentHelper(file).getAllPages();
    addOutline(file, pages, document);
    addOpening(file, document.opening);
    nameAccidentals(file);
    file.getRoot().replaceKey("/Lang", Object::newString("en-GB"));
    Object info = file.getTrailer().getKey("/Info");
    if (info.isDictionary() && !document.author.empty())
        info.replaceKey("/Author", text(document.author));
    if (auto const moment = namedMoment(); moment && info.isDictionary())
        info.replaceKey("/CreationDate", Object::newString(*moment));
    QPDFWriter writer(file);
    writer.setDeterministicID(true);
    writer.setOutputMemory();
    writer.write();
    auto const buffer = writer.getBufferSharedPointer();
    return QByteArray(reinterpret_cast<char const*>(buffer->getBuffer()),
                      static_cast<qsizetype>(buffer->getSize()));
}

} // namespace

QByteArray withReadersData(QByteArray const& pdf, sheet::Document const& document)
{
    if (document.pages.empty()) return pdf;
    try {
        return rewritten(pdf, document);
    } catch (std::exception const&) {
        return pdf; // still a good sheet
    }
}

} // namespace ui
