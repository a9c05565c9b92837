#include "ui/lanepainter.h"

#include "ui/theme.h"

#include <QFontMetricsF>
#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double radius = 4.5;

void paintStrings(QPainter& painter, LaneFace const& face, Palette const& p)
{
    Box const& strings = face.lane.strings;
    double const apart =
        strings.height / std::max(1.0, static_cast<double>(face.strings.size()) - 1);
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (std::size_t i = 0; i < face.strings.size(); ++i) {
        bool const isC = face.strings[i] == music::Letter::C;
        bool const isF = face.strings[i] == music::Letter::F;
        QColor const ink = isC   ? faint(p, p.red, 0.6)
                           : isF ? faint(p, p.blue, 0.6)
                                 : faint(p, p.edge, 0.8);
        // Filled, not drawn as lines: a line is blended pixel by pixel, which takes most of the
        // time of a lane.
        double const y = std::round(strings.bottom() - apart * static_cast<double>(i));
        double const dash = isF ? 5 : strings.width;
        double const gap = isF ? 3 : 0;
        for (double x = strings.x; x < strings.right(); x += dash + gap)
            painter.fillRect(QRectF(x, y, std::min(dash, strings.right() - x), 1), ink);
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
}

void paintBarLines(QPainter& painter, LaneFace const& face, Palette const& p)
{
    Box const& strings = face.lane.strings;
    auto const line = [&](double x, double wide, Rgb ink) {
        painter.fillRect(QRectF(x - wide / 2, strings.y, wide, strings.height), colour(ink));
    };
    auto const dots = [&](double x) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(p.quiet));
        for (double const share : {0.4, 0.6})
            painter.drawEllipse(QPointF(x, strings.y + share * strings.height), 1.8, 1.8);
    };
    for (std::size_t i = 0; i < face.bars.size(); ++i) {
        LaneBarFace const& bar = face.bars[i];
        line(bar.box.x, bar.repeatOpens ? 3 : 1.2, bar.repeatOpens ? p.quiet : p.rule);
        if (bar.repeatOpens) dots(bar.box.x + 5);
        bool const last = i + 1 == face.bars.size();
        double const right = last ? strings.right() : bar.box.right();
        if (last || bar.closes || bar.repeatCloses)
            line(right - (bar.closes ? 1.5 : 0.6), bar.closes ? 3 : 1.2,
                 bar.closes ? p.quiet : p.rule);
        if (bar.repeatCloses) dots(right - 6);
    }
}

void paintTails(QPainter& painter, LaneFace const& face, Palette const& p)
{
    painter.setBrush(Qt::NoBrush);
    for (Tail const& tail : face.lane.tails) {
        if (tail.to - tail.from < 0.5) continue;
        Rgb const ink = tail.hand == harp::Side::Left ? p.leaf : p.amber;
        double const strong = std::max(tail.held ? 0.62 : 0.42, p.leastOpacity);
        auto const shade = [&](double loud) { return colour(ink, strong * loud * loud); };
        QLinearGradient fade(tail.from, 0, tail.to, 0);
        fade.setColorAt(0, shade(tail.loudFrom));
        fade.setColorAt(1, shade(tail.loudTo));
        double const thick = tail.held ? 4 : 2.6;
        painter.fillRect(QRectF(tail.from, tail.y - thick / 2, tail.to - tail.from, thick),
                         fade);
    }
}

// Round its note, which is plucked otherwise or not at all.
void paintSnags(QPainter& painter, LaneFace const& face, Palette const& p)
{
    for (LaneSnag const& snag : face.snags) {
        constexpr double half = 9.5;
        QPolygonF const diamond{{QPointF(snag.x, snag.y - half), QPointF(snag.x + half, snag.y),
                                 QPointF(snag.x, snag.y + half),
                                 QPointF(snag.x - half, snag.y)}};
        painter.setPen(QPen(colour(snag.open ? p.warnInk : p.leaf), 1.8));
        painter.setBrush(colour(snag.open ? p.warnWash : p.paper));
        painter.drawPolygon(diamond);
    }
}

void paintPlucks(QPainter& painter, LaneFace const& face, Palette const& p)
{
    for (Thread const& thread : face.lane.threads) {
        painter.setPen(thread.together ? QPen(colour(p.leaf), 2.4)
                                       : QPen(faint(p, p.leaf, 0.6), 1.4));
        painter.drawLine(QPointF(thread.fromX, thread.fromY), QPointF(thread.toX, thread.toY));
    }
    painter.setPen(QPen(colour(p.paper), 1));
    for (PluckDot const& pluck : face.lane.plucks) {
        if (pluck.hand != harp::Side::Right) continue;
        double const half = pluck.fromTune ? radius - 0.3 : radius - 1.3;
        painter.setBrush(faint(p, p.amber, pluck.fromTune ? 1 : 0.65));
        painter.drawRoundedRect(
            QRectF(pluck.x - half, pluck.y - half, 2 * half, 2 * half), 1.5, 1.5);
    }
    painter.setBrush(colour(p.leaf));
    for (PluckDot const& pluck : face.lane.plucks)
        if (pluck.hand == harp::Side::Left)
            painter.drawEllipse(QPointF(pluck.x, pluck.y), radius, radius);
}

void paintDifficulty(QPainter& painter, LaneFace const& face, Palette const& p)
{
    constexpr double most = 5;
    for (LaneBarFace const& bar : face.bars) {
        if (bar.level <= 0) continue;
        double const thick = bar.hard ? 3.5 : 2;
        painter.fillRect(QRectF(bar.box.x + 6, bar.box.bottom() - thick,
                                (bar.box.width - 12) * std::min(bar.level, most) / most, thick),
                         bar.hard ? colour(p.amber) : faint(p, p.leaf, 0.35));
    }
}

void paintLabel(QPainter& painter, LaneFace const& face, LaneLabel const& label,
                LaneFonts const& fonts, Palette const& p)
{
    constexpr double inset = 7;
    Box const& name = label.chord.name;
    double right = name.right() - 3;
    for (LaneBarFace const& bar : face.bars) // the bar's number stands there
        if (name.right() > bar.box.right() - 1 && name.right() < bar.box.right() + 1)
            right -= QFontMetricsF(fonts.small).horizontalAdvance(bar.number) + 6;
    QRectF const room(name.x + inset, name.y, std::max(0.0, right - name.x - inset),
                      name.height - 4);
    painter.setFont(label.drawn ? fonts.chord : fonts.chordPlain);
    painter.setPen(colour(label.drawn ? p.ink : p.quiet));
    QFontMetricsF const metrics(painter.font());
    painter.drawText(room, Qt::AlignLeft | Qt::AlignBottom,
                     metrics.elidedText(label.name, Qt::ElideRight, room.width()));
    if (!label.time.isEmpty()) {
        double const after = metrics.horizontalAdvance(label.name) + 4;
        painter.setFont(fonts.small);
        painter.setPen(colour(p.quiet));
        painter.drawText(room.adjusted(after, 0, 0, -2), Qt::AlignLeft | Qt::AlignBottom,
                         label.time);
    }
    if (!label.drawn) return;

    Box const& stretch = label.chord.stretch;
    double const top = face.lane.strings.bottom() + 3;
    QRectF const foot(stretch.x + inset, top, std::max(0.0, stretch.width - inset - 5),
                      stretch.bottom() - top - 5);
    painter.setFont(fonts.pattern);
    QFontMetricsF const plain(fonts.pattern);
    QString const words = plain.elidedText(label.pattern, Qt::ElideRight, foot.width());
    double const wide = plain.horizontalAdvance(words);
    painter.setPen(colour(label.rests ? p.quiet : p.leaf));
    painter.drawText(foot, Qt::AlignLeft | Qt::AlignTop, words);
    double const below = top + plain.height();
    if (label.standing == Standing::Kept) {
        for (double const y : {below + 0.5, below + 3.5})
            painter.fillRect(QRectF(foot.left(), y, wide, 1.5), colour(p.leaf));
    }
    if (label.standing == Standing::Followed) {
        double const x = foot.left() + wide + 9;
        double const middle = top + plain.height() / 2;
        if (x + 4 < foot.right()) {
            painter.setPen(QPen(colour(p.leaf), 1.8));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QPointF(x, middle), 3.6, 3.6);
        } else { // no room beside the name
            painter.setPen(QPen(colour(p.leaf), 1.8));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QPointF(foot.left() + 4, below + 3), 2.6, 2.6);
        }
        QString const word = QObject::tr("followed");
        QFontMetricsF const small(fonts.small);
        if (x + 8 + small.horizontalAdvance(word) < foot.right()) {
            painter.setFont(fonts.small);
            painter.setPen(colour(p.quiet));
            painter.drawText(QPointF(x + 8, top + plain.ascent()), word);
        }
    }
}

void paintPart(QPainter& painter, LaneFace const& face, LaneFonts const& fonts,
               Palette const& p)
{
    if (face.lane.part.empty()) return;
    Box const room = paintedBox(face.lane);
    QRectF box(room.x + 2, face.lane.strings.y - 4, face.lane.box.x - room.x - 8, 40);
    painter.setFont(fonts.part);
    painter.setPen(colour(p.ink));
    QFontMetricsF const large(fonts.part);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignTop,
                     large.elidedText(QString::fromStdString(face.lane.part), Qt::ElideRight,
                                      box.width()));
    painter.setFont(fonts.small);
    painter.setPen(colour(p.quiet));
    painter.drawText(box.translated(0, large.height()), Qt::AlignLeft | Qt::AlignTop,
                     face.times);
}

} // namespace

Box paintedBox(Lane const& lane)
{
    constexpr double side = 4;
    double const left = std::min(lane.box.x - side, lane.part.empty() ? lane.box.x : 8.0);
    return {left, lane.box.y, lane.box.right() + side - left, lane.box.height};
}

void paintLane(QPainter& painter, LaneFace const& face, LaneFonts const& fonts,
               Palette const& palette)
{
    painter.setRenderHint(QPainter::Antialiasing);
    paintStrings(painter, face, palette);
    paintTails(painter, face, palette);
    paintBarLines(painter, face, palette);
    paintDifficulty(painter, face, palette);
    paintSnags(painter, face, palette);
    paintPlucks(painter, face, palette);
    for (LaneLabel const& label : face.labels) paintLabel(painter, face, label, fonts, palette);
    painter.setFont(fonts.small);
    for (LaneBarFace const& bar : face.bars) {
        painter.setPen(colour(bar.odd ? palette.warnInk : palette.quiet));
        painter.drawText(QRectF(bar.box.x, bar.box.y,
                                bar.box.width - 4,
                                face.lane.strings.y - bar.box.y - 5),
                         Qt::AlignRight | Qt::AlignBottom, bar.number);
    }
    paintPart(painter, face, fonts, palette);
}

} // namespace ui
