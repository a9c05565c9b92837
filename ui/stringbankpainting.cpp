#include "ui/stringbank.h"

#include "ui/theme.h"
#include "ui/words.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace ui {

QColor StringBank::stringColour(harp::StringIndex string) const
{
    Palette const& p = paletteOf(*this);
    switch (colourOf(m_harp->string(string))) {
    case harp::StringColour::Red:
        return colour(p.red);
    case harp::StringColour::Blue:
        return colour(p.blue);
    case harp::StringColour::White:
        break;
    }
    return colour(p.string);
}

// The strings at rest with all that seldom changes: painted once, while strings swing above it
// many times a second.
QPixmap const& StringBank::stillPicture()
{
    double const scale = devicePixelRatioF();
    QSize const size = (QSizeF(this->size()) * scale).toSize();
    bool const fits = m_still.size() == size && m_still.devicePixelRatio() == scale;
    if (fits && !m_stillStale) return m_still;
    m_stillStale = false;
    if (!fits) m_still = QPixmap(size);
    m_still.setDevicePixelRatio(scale);
    m_still.fill(colour(paletteOf(*this).sunk));
    QPainter painter(&m_still);
    painter.setFont(font());
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter);
    for (harp::StringIndex const i : m_harp->indices()) paintString(painter, i);
    for (harp::StringIndex const i : m_harp->indices()) paintLever(painter, i);
    for (harp::StringIndex const i : m_harp->indices()) paintLetter(painter, i);
    return m_still;
}

void StringBank::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    if (!m_harp) {
        painter.fillRect(rect(), colour(paletteOf(*this).sunk));
        return;
    }
    painter.drawPixmap(0, 0, stillPicture());
    painter.setRenderHint(QPainter::Antialiasing);
    paintHeading(painter);
    std::vector<harp::StringIndex> lively;
    for (harp::StringIndex const i : m_harp->indices())
        if (glow(i) > faintest || m_pointed == i || isFocused(i)) lively.push_back(i);
    for (harp::StringIndex const i : lively) paintLight(painter, i);
    for (harp::StringIndex const i : lively) paintString(painter, i);
    for (harp::StringIndex const i : lively) paintLever(painter, i);
    paintReach(painter);
    paintSnags(painter);
    paintAhead(painter);
    paintDiscs(painter);
}

void StringBank::paintHeading(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    QRectF const line(16, 7, width() - 32, fontMetrics().height());
    painter.setFont(scaledFont(*this, 1.0, QFont::DemiBold));
    painter.setPen(colour(p.ink));
    QString const title = m_title.isEmpty() ? tr("String bank") : m_title;
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, title);
    double const used = painter.fontMetrics().horizontalAdvance(title) + 14;
    painter.setFont(font());
    painter.setPen(colour(p.quiet));
    std::optional<harp::StringIndex> const told = m_pointed    ? m_pointed
                                                  : hasFocus() ? m_cursor
                                                               : std::nullopt;
    QString const words = told ? stringWords(*m_harp, *told, soundingPitch(*told))
                               : tr("player's side, low to high");
    QRectF const rest =
        isRightToLeft() ? line.adjusted(0, 0, -used, 0) : line.adjusted(used, 0, 0, 0);
    painter.drawText(rest, (told ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(words, Qt::ElideRight,
                                                      static_cast<int>(line.width() - used)));
}

// The neck along the top and the soundboard under the strings.
void StringBank::paintFrame(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    auto const& strings = m_layout.strings;
    double const left = strings.front().x - 16;
    double const right = strings.back().x + 16;
    double const neck = strings.front().top;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(p.wood));
    painter.drawRoundedRect(QRectF(left, neck - 6, right - left, 7), 3.5, 3.5);
    QPainterPath board;
    board.moveTo(left, strings.front().bottom);
    for (BankString const& string : strings) board.lineTo(string.x, string.bottom);
    board.lineTo(right, strings.back().bottom);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour(p.wood), 5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(board);
}

// Behind a string that sounds, or that is pointed at or chosen by the keyboard.
void StringBank::paintLight(QPainter& painter, harp::StringIndex index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[index];
    QPointF const top(string.x, string.top);
    QPointF const bottom(string.x, string.bottom);
    double const glowing = glow(index);
    if (glowing > faintest) {
        bool const left = m_ringing[index]->hand == harp::Side::Left;
        QColor const hand = colour(left ? p.leaf : p.amber, 0.25 + 0.6 * glowing);
        // A plucked string swings: widest in its middle.
        double const swing = 2 + 5 * glowing;
        double const middle = (string.top + string.bottom) / 2;
        QPainterPath belly(top);
        belly.quadTo(QPointF(string.x + 2 * swing, middle), bottom);
        belly.quadTo(QPointF(string.x - 2 * swing, middle), top);
        painter.setPen(Qt::NoPen);
        painter.setBrush(hand);
        painter.drawPath(belly);
    }
    bool const focused = isFocused(index);
    if (!focused && m_pointed != index) return;
    painter.setPen(QPen(colour(p.leaf, focused ? 0.55 : 0.3), string.thickness + 7,
                        Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(top + QPointF(0, 22), bottom - QPointF(0, 5));
}

void StringBank::paintString(QPainter& painter, harp::StringIndex index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[index];
    QPointF const top(string.x, string.top);
    QPointF const bottom(string.x, string.bottom);
    painter.setPen(QPen(stringColour(index), string.thickness, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(top, bottom);
    if (m_harp->string(index).wound) {
        // The winding catches the light.
        QPen winding(colour(p.sunk, 0.55), string.thickness * 0.45, Qt::DotLine);
        painter.setPen(winding);
        painter.drawLine(top + QPointF(0, 22), bottom);
    }
}

// Up: a dark block at the neck, pressed on the string. Down: a pale block hanging lower.
void StringBank::paintLever(QPainter& painter, harp::StringIndex index) const
{
    if (!m_harp->string(index).hasLever) return;
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[index];
    bool const up = lever(index) == harp::Lever::Up;
    double const half = std::min(6.5, m_layout.discRadius * 0.62);
    double const y = up ? m_layout.leverUpY : m_layout.leverDownY;
    QRectF const block(string.x - half, y - 3.2, 2 * half, 6.4);
    painter.setPen(QPen(colour(up ? p.ink : p.rule), 1.1));
    painter.setBrush(colour(up ? p.ink : p.card));
    painter.drawRoundedRect(block, 2, 2);
}

// As large as a disc holds.
static QFont fingerFont(QWidget const& widget, double radius)
{
    QFont font = scaledFont(widget, radius < 9 ? 0.8 : 1.0, QFont::Bold);
    if (QFontMetricsF(font).capHeight() > 1.5 * radius) font.setPixelSize(qRound(1.6 * radius));
    return font;
}

void StringBank::paintLetter(QPainter& painter, harp::StringIndex index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[index];
    harp::StringColour const kind = colourOf(m_harp->string(index));
    bool const plain = kind == harp::StringColour::White;
    painter.setFont(scaledFont(*this, 0.86, plain ? QFont::Normal : QFont::Bold));
    painter.setPen(plain ? colour(p.quiet) : stringColour(index));
    QString const name =
        QString::fromStdString(music::shown(music::nameOf(soundingPitch(index))));
    double const across = 36 * letters();
    painter.drawText(QRectF(string.x - across / 2, string.bottom + 4, across, 17 * letters()),
                     Qt::AlignCenter, name);
}

// A diamond on each string, as in the lane: its points look out behind the finger.
void StringBank::paintSnags(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    constexpr double half = 15;
    for (harp::StringIndex const string : m_snags) {
        if (!m_layout.strings.holds(string)) continue;
        QPointF const middle(m_layout.strings[string].x, m_layout.rightHandY);
        painter.setPen(QPen(colour(p.warnInk), 1.8));
        painter.setBrush(colour(p.warnWash));
        painter.drawPolygon(QPolygonF{{middle + QPointF(0, -half), middle + QPointF(half, 0),
                                       middle + QPointF(0, half), middle + QPointF(-half, 0)}});
    }
}

void StringBank::paintReach(QPainter& painter) const
{
    auto const reach = reachOf(m_fingers);
    if (!reach) return;
    Palette const& p = paletteOf(*this);
    double const left = m_layout.strings[reach->lowest].x;
    double const right = m_layout.strings[reach->highest].x;
    double const y = m_layout.bracketY;
    painter.setPen(QPen(colour(p.leaf), 1.8, Qt::SolidLine, Qt::RoundCap));
    painter.drawPolyline(QPolygonF({{left, y - 5}, {left, y}, {right, y}, {right, y - 5}}));
    QString const words = reachWords(reach->strings());
    painter.setFont(scaledFont(*this, 0.92, QFont::DemiBold));
    QFontMetricsF const metrics(painter.font());
    double const width = metrics.horizontalAdvance(words) + 14;
    double const height = metrics.height() + 2;
    double x = (left + right - width) / 2;
    x = std::clamp(x, 6.0, this->width() - width - 6.0);
    QRectF const plate(x, m_layout.reachY - height / 2, width, height);
    // In a low bank the words would cover the fingers: the bracket says it alone.
    if (plate.top() < m_layout.leftHandY + m_layout.discRadius - 2) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(p.sunk));
    painter.drawRoundedRect(plate, height / 2, height / 2);
    painter.setPen(colour(p.leaf));
    painter.drawText(plate, Qt::AlignCenter, words);
}

// Rings, not discs; round a disc where the finger's string is played now as well.
void StringBank::paintAhead(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    double const radius = m_layout.discRadius;
    painter.setFont(fingerFont(*this, radius));
    for (FingerDisc const& disc : m_ahead) {
        QPointF const middle(m_layout.strings[disc.string].x, m_layout.leftHandY);
        bool const covered = std::ranges::any_of(m_fingers, [&](FingerDisc const& now) {
            return now.hand == harp::Side::Left && now.string == disc.string;
        });
        double const ring = covered ? radius + 3 : radius - 1;
        painter.setPen(QPen(colour(p.leaf), 2));
        painter.setBrush(colour(p.sunk));
        painter.drawEllipse(middle, ring, ring);
        if (!covered)
            painter.drawText(QRectF(middle.x() - ring, middle.y() - ring, 2 * ring, 2 * ring),
                             Qt::AlignCenter, QString::number(disc.finger));
    }
}

void StringBank::paintDiscs(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    double const radius = m_layout.discRadius;
    painter.setFont(fingerFont(*this, radius));
    for (FingerDisc const& disc : m_fingers) {
        bool const left = disc.hand == harp::Side::Left;
        double const x = m_layout.strings[disc.string].x;
        double const y = left ? m_layout.leftHandY : m_layout.rightHandY;
        painter.setPen(QPen(colour(p.sunk), 1.5));
        painter.setBrush(colour(left ? p.leaf : p.amber));
        QRectF const box(x - radius, y - radius, 2 * radius, 2 * radius);
        // The hands differ in shape as well as in colour: round left, squarish right.
        if (left)
            painter.drawEllipse(box);
        else
            painter.drawRoundedRect(box, radius * 0.45, radius * 0.45);
        painter.setPen(colour(left ? p.onLeaf : p.onAmber));
        painter.drawText(box, Qt::AlignCenter, QString::number(disc.finger));
    }
}

} // namespace ui
