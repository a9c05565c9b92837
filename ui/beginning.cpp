#include "ui/beginning.h"

#include "ui/paint/sheetfonts.h"
#include "ui/paint/sheetpainter.h"

#include "core/sheet/sheet.h"

#include <QPainter>

#include <algorithm>

namespace ui {

namespace {

constexpr int previewBars = 4;

} // namespace

QPixmap beginningOf(tune::Tune tune, int width, int height, double ratio)
{
    static auto const font = musicFont();
    if (!font || tune.bars.empty()) return {};
    tune.bars.resize(std::min(tune.bars.size(), previewBars));
    for (std::string* words : {&tune.title, &tune.composer, &tune.origin, &tune.source,
                               &tune.arranger, &tune.copyright, &tune.rhythm})
        words->clear();
    tune.notes.clear();
    tune.words.clear();
    tune.otherTitles.clear();
    tune.partOrder.clear();
    sheet::Document const document = sheet::leadSheet(tune, *font, {});
    if (document.pages.empty() || document.pages.front().areas.empty()) return {};
    sheet::Page const& page = document.pages.front();
    QRectF music;
    for (sheet::Area const& area : page.areas)
        music |= QRectF(QPointF(area.topLeft.x, area.topLeft.y),
                        QPointF(area.bottomRight.x, area.bottomRight.y));
    music = QRectF(0, music.top() - 3, page.widthMm, music.height() + 5);
    double const scale = std::min(width / music.width(), height / music.height());
    QPixmap picture(QSize(width, height) * ratio);
    picture.setDevicePixelRatio(ratio);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    painter.translate(-music.topLeft());
    paintPage(painter, page);
    return picture;
}

} // namespace ui
