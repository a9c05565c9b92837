#include "ui/signs.h"

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include <algorithm>

namespace ui {

namespace {

// All signs are drawn on a square of 16 by 16.
void paintPlay(QPainter& painter, QColor const& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({{4, 2.5}, {13.5, 8}, {4, 13.5}}));
}

void paintStop(QPainter& painter, QColor const& colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRoundedRect(QRectF(3.5, 3.5, 9, 9), 1.2, 1.2);
}

void paintLoop(QPainter& painter)
{
    painter.drawArc(QRectF(2.5, 3, 11, 10), 60 * 16, 250 * 16);
    painter.drawPolyline(QPolygonF({{8.4, 1}, {11, 3.6}, {7.8, 5.6}}));
}

void paintFromHere(QPainter& painter, QColor const& colour)
{
    painter.drawLine(QPointF(3, 3), QPointF(3, 13));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({{6, 3}, {14, 8}, {6, 13}}));
}

void paintPadlock(QPainter& painter, QColor const& colour, bool locked)
{
    QPainterPath shackle;
    shackle.moveTo(5, 8);
    shackle.lineTo(5, 5);
    shackle.arcTo(QRectF(5, 2, 6, 6), 180, -180);
    shackle.lineTo(11, locked ? 8 : 5.5);
    painter.drawPath(shackle);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawRoundedRect(QRectF(3, 7.5, 10, 7), 1.5, 1.5);
}

void paintNotice(QPainter& painter, QColor const& colour)
{
    painter.drawEllipse(QRectF(1.5, 1.5, 13, 13));
    painter.drawLine(QPointF(8, 4.6), QPointF(8, 8.8));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(QPointF(8, 11.4), 1.1, 1.1);
}

} // namespace

void paintSign(QPainter& painter, Sign sign, QRectF const& box, QColor const& colour)
{
    double const side = std::min(box.width(), box.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(box.center().x() - side / 2, box.center().y() - side / 2);
    painter.scale(side / 16, side / 16);
    painter.setPen(QPen(colour, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    switch (sign) {
    case Sign::None:
        break;
    case Sign::Play:
        paintPlay(painter, colour);
        break;
    case Sign::Stop:
        paintStop(painter, colour);
        break;
    case Sign::Loop:
        paintLoop(painter);
        break;
    case Sign::FromHere:
        paintFromHere(painter, colour);
        break;
    case Sign::Locked:
        paintPadlock(painter, colour, true);
        break;
    case Sign::Unlocked:
        paintPadlock(painter, colour, false);
        break;
    case Sign::Close:
        painter.drawLine(QPointF(4, 4), QPointF(12, 12));
        painter.drawLine(QPointF(12, 4), QPointF(4, 12));
        break;
    case Sign::Notice:
        paintNotice(painter, colour);
        break;
    case Sign::Done:
        painter.drawPolyline(QPolygonF{{3, 8.5}, {6.5, 12}, {13, 4.5}});
        break;
    case Sign::Rest:
        painter.drawLine(QPointF(4, 8), QPointF(12, 8));
        break;
    }
    painter.restore();
}

double paintNote(QPainter& painter, music::Length length, QRectF const& box,
                 QColor const& colour)
{
    bool const dotted = length.wholes.numerator() == 3;
    auto const plain = dotted ? length.wholes * music::Rational(2, 3) : length.wholes;
    bool const open = plain >= music::Rational(1, 2);
    bool const flagged = plain <= music::Rational(1, 8);
    double const unit = box.height() / 14;
    double const headWidth = 5.2 * unit;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.2 * unit, Qt::SolidLine, Qt::RoundCap));
    painter.setBrush(open ? QBrush(Qt::NoBrush) : QBrush(colour));
    painter.translate(box.left() + headWidth / 2 + unit / 2, box.bottom() - 2.4 * unit);
    painter.save();
    painter.rotate(-20);
    painter.drawEllipse(QPointF(0, 0), headWidth / 2 - unit / 2, 1.7 * unit);
    painter.restore();
    double const stem = headWidth / 2 - 0.3 * unit;
    painter.drawLine(QPointF(stem, -unit), QPointF(stem, -11 * unit));
    if (flagged)
        painter.drawLine(QPointF(stem, -11 * unit), QPointF(stem + 3 * unit, -6 * unit));
    double width = headWidth + unit;
    if (dotted) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(QPointF(headWidth / 2 + 2.2 * unit, -0.6 * unit), 0.9 * unit,
                            0.9 * unit);
        width += 3 * unit;
    }
    painter.restore();
    return width;
}

} // namespace ui
