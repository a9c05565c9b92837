#include "ui/paint/sheetfonts.h"

#include "core/files/tables/tables.h"

#include <QFile>
#include <QFontDatabase>

#include <mutex>
#include <string_view>

// Resources of a static library are registered by name, once.
static void registerResources() { Q_INIT_RESOURCE(musicfont); }

namespace ui {

namespace {

constexpr char const* fontFile = ":/musicfont/bravura.otf";
constexpr char const* metadataFile = ":/musicfont/metadata.json";

QString musicFamily()
{
    static QString family;
    static std::once_flag once;
    std::call_once(once, [] {
        registerResources();
        int const id = QFontDatabase::addApplicationFont(QLatin1String(fontFile));
        family = QFontDatabase::applicationFontFamilies(id).value(0);
    });
    return family;
}

QFont sized(QFont font)
{
    font.setPixelSize(fontEm);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(false); // the layout measures without it
    return font;
}

} // namespace

QFont musicGlyphFont() { return sized(QFont(musicFamily())); }

QFont textFont(sheet::Face face)
{
    bool const sans = face == sheet::Face::Sans || face == sheet::Face::SansBold;
    QFont font(sans ? QStringList{"TeX Gyre Heros", "Helvetica", "Arial"}
                    : QStringList{"TeX Gyre Termes", "Times", "Times New Roman"});
    font.setStyleHint(sans ? QFont::SansSerif : QFont::Serif);
    font.setBold(face == sheet::Face::Bold || face == sheet::Face::SansBold);
    font.setItalic(face == sheet::Face::Italic);
    return sized(font);
}

base::Result<sheet::MusicFont> musicFont()
{
    registerResources();
    QFile file{QLatin1String(metadataFile)};
    if (!file.open(QIODevice::ReadOnly))
        return base::Fault{base::FaultCode::TableMissing, metadataFile, ""};
    QByteArray const json = file.readAll();
    return files::musicFontFrom({json.constData(), static_cast<std::size_t>(json.size())});
}

} // namespace ui
