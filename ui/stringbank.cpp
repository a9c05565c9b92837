#include "ui/stringbank.h"

#include "ui/theme.h"
#include "ui/words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QTimerEvent>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr int frameMs = 16;       // between two pictures of a fading string
constexpr double faintest = 0.02; // below it a string counts as still

} // namespace

StringBank::StringBank(QWidget* parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("String bank"));
    setAccessibleDescription(tr("The strings of the harp, low to high. Left and Right choose a "
                                "string, Space sounds it, Up and Down flip its lever."));
    m_leverHint = tr("Lever of %1: click to flip it");
    m_clock.start();
}

void StringBank::setHarp(harp::Harp harp)
{
    if (m_harp == harp) return;
    if (m_harp == harp) return;
    m_harp = std::move(harp);
    auto const count = static_cast<std::size_t>(m_harp->count());
    m_ringing.assign(count, std::nullopt);
    m_levers.assign(count, harp::Lever::Down);
    m_fingers.clear();
    m_ahead.clear();
    m_cursor.reset();
    m_pointed.reset();
    layOut();
}

void StringBank::setLevers(harp::LeverSetting levers)
{
    if (m_levers == levers) return;
    m_levers = std::move(levers);
    m_stillStale = true;
    update();
}

void StringBank::setFingers(std::vector<FingerDisc> fingers)
{
    if (m_fingers == fingers) return;
    m_fingers = std::move(fingers);
    update();
}

void StringBank::setAhead(std::vector<FingerDisc> fingers)
{
    if (m_ahead == fingers) return;
    m_ahead = std::move(fingers);
    update();
}

void StringBank::setSnags(std::vector<int> strings)
{
    if (m_snags == strings) return;
    m_snags = std::move(strings);
    update();
}

// A diamond on each string, as in the lane: its points look out behind the finger.
void StringBank::paintSnags(QPainter& painter) const
{
    Palette const& p = paletteOf(*this);
    constexpr double half = 15;
    for (int const string : m_snags) {
        if (string < 0 || string >= static_cast<int>(m_layout.strings.size())) continue;
        QPointF const middle(m_layout.strings[static_cast<std::size_t>(string)].x,
                             m_layout.rightHandY);
        painter.setPen(QPen(colour(p.warnInk), 1.8));
        painter.setBrush(colour(p.warnWash));
        painter.drawPolygon(QPolygonF{{middle + QPointF(0, -half), middle + QPointF(half, 0),
                                       middle + QPointF(0, half), middle + QPointF(-half, 0)}});
    }
}

void StringBank::setLeverHint(QString const& words) { m_leverHint = words; }

void StringBank::setTitle(QString const& title)
{
    if (m_title == title) return;
    m_title = title;
    update();
}

void StringBank::ring(int string, harp::Side hand)
{
    if (string < 0 || string >= static_cast<int>(m_ringing.size())) return;
    m_ringing[static_cast<std::size_t>(string)] = Ringing{m_clock.elapsed(), hand};
    if (!m_fade.isActive()) m_fade.start(frameMs, this);
    update();
}

void StringBank::still(int string)
{
    if (string < 0 || string >= static_cast<int>(m_ringing.size())) return;
    m_ringing[static_cast<std::size_t>(string)].reset();
    update();
}

void StringBank::stillAll()
{
    std::fill(m_ringing.begin(), m_ringing.end(), std::nullopt);
    m_fade.stop();
    update();
}

void StringBank::layOut()
{
    if (!m_harp) return;
    int const heading = fontMetrics().height() + 12;
    m_layout = layOutBank(*m_harp, {14.0, static_cast<double>(heading), width() - 28.0,
                                    static_cast<double>(height() - heading - 6)});
    m_stillStale = true;
    update();
}

// The eye sees a string swing for about a third of the time in which it falls by 60 dB.
double StringBank::glow(int string) const
{
    auto const& ringing = m_ringing[static_cast<std::size_t>(string)];
    if (!ringing) return 0;
    double const seconds = static_cast<double>(m_clock.elapsed() - ringing->since) / 1000.0;
    return std::exp(-seconds / (harp::ringSeconds(m_harp->string(string)) / 9));
}

harp::Lever StringBank::lever(int string) const
{
    auto const index = static_cast<std::size_t>(string);
    return index < m_levers.size() ? m_levers[index] : harp::Lever::Down;
}

music::Pitch StringBank::soundingPitch(int string) const
{
    return harp::sounding(m_harp->string(string), lever(string));
}

QColor StringBank::stringColour(int string) const
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

void StringBank::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    m_stillStale = true; // the theme, the font ...
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
    for (int i = 0; i < m_harp->count(); ++i) paintString(painter, i);
    for (int i = 0; i < m_harp->count(); ++i) paintLever(painter, i);
    for (int i = 0; i < m_harp->count(); ++i) paintLetter(painter, i);
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
    std::vector<int> lively;
    for (int i = 0; i < m_harp->count(); ++i)
        if (glow(i) > faintest || m_pointed == i || isFocused(i)) lively.push_back(i);
    for (int const i : lively) paintLight(painter, i);
    for (int const i : lively) paintString(painter, i);
    for (int const i : lively) paintLever(painter, i);
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
    std::optional<int> const told = m_pointed    ? m_pointed
                                    : hasFocus() ? m_cursor
                                                 : std::nullopt;
    QString const words = told ? stringWords(*m_harp, *told, soundingPitch(*told))
                               : tr("player's side, low to high");
    painter.drawText(line.adjusted(used, 0, 0, 0),
                     (told ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
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
void StringBank::paintLight(QPainter& painter, int index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[static_cast<std::size_t>(index)];
    QPointF const top(string.x, string.top);
    QPointF const bottom(string.x, string.bottom);
    double const glowing = glow(index);
    if (glowing > faintest) {
        bool const left = m_ringing[static_cast<std::size_t>(index)]->hand == harp::Side::Left;
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

void StringBank::paintString(QPainter& painter, int index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[static_cast<std::size_t>(index)];
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
void StringBank::paintLever(QPainter& painter, int index) const
{
    if (!m_harp->string(index).hasLever) return;
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[static_cast<std::size_t>(index)];
    bool const up = lever(index) == harp::Lever::Up;
    double const half = std::min(6.5, m_layout.discRadius * 0.62);
    double const y = up ? m_layout.leverUpY : m_layout.leverDownY;
    QRectF const block(string.x - half, y - 3.2, 2 * half, 6.4);
    painter.setPen(QPen(colour(up ? p.ink : p.rule), 1.1));
    painter.setBrush(colour(up ? p.ink : p.card));
    painter.drawRoundedRect(block, 2, 2);
}

void StringBank::paintLetter(QPainter& painter, int index) const
{
    Palette const& p = paletteOf(*this);
    BankString const& string = m_layout.strings[static_cast<std::size_t>(index)];
    harp::StringColour const kind = colourOf(m_harp->string(index));
    bool const plain = kind == harp::StringColour::White;
    painter.setFont(scaledFont(*this, 0.86, plain ? QFont::Normal : QFont::Bold));
    painter.setPen(plain ? colour(p.quiet) : stringColour(index));
    QString const name =
        QString::fromStdString(music::shown(music::nameOf(soundingPitch(index))));
    painter.drawText(QRectF(string.x - 18, string.bottom + 4, 36, 17), Qt::AlignCenter, name);
}

void StringBank::paintReach(QPainter& painter) const
{
    auto const reach = reachOf(m_fingers);
    if (!reach) return;
    Palette const& p = paletteOf(*this);
    double const left = m_layout.strings[static_cast<std::size_t>(reach->lowest)].x;
    double const right = m_layout.strings[static_cast<std::size_t>(reach->highest)].x;
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
    painter.setFont(scaledFont(*this, radius < 9 ? 0.8 : 1.0, QFont::Bold));
    for (FingerDisc const& disc : m_ahead) {
        QPointF const middle(m_layout.strings[static_cast<std::size_t>(disc.string)].x,
                             m_layout.leftHandY);
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
    painter.setFont(scaledFont(*this, radius < 9 ? 0.8 : 1.0, QFont::Bold));
    for (FingerDisc const& disc : m_fingers) {
        bool const left = disc.hand == harp::Side::Left;
        double const x = m_layout.strings[static_cast<std::size_t>(disc.string)].x;
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

void StringBank::resizeEvent(QResizeEvent*) { layOut(); }

void StringBank::pluck(int string)
{
    ring(string, harp::Side::Right);
    emit stringPlucked(string);
}

void StringBank::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    if (auto const string = leverAt(event->position())) {
        m_cursor = string;
        turnLever(*string,
                  lever(*string) == harp::Lever::Up ? harp::Lever::Down : harp::Lever::Up);
        update();
        return;
    }
    auto const string = stringNear(m_layout, event->position().x(), event->position().y());
    if (!string) return;
    m_cursor = string;
    pluck(*string);
}

std::optional<int> StringBank::leverAt(QPointF where) const
{
    auto const string = leverNear(m_layout, where.x(), where.y());
    if (!string || !m_harp || !m_harp->string(*string).hasLever) return std::nullopt;
    return string;
}

void StringBank::turnLever(int string, harp::Lever to)
{
    if (m_harp->string(string).hasLever && lever(string) != to) emit leverTurned(string, to);
}

// Dragging across the strings plucks each as it is passed.
void StringBank::mouseMoveEvent(QMouseEvent* event)
{
    auto const onLever = leverAt(event->position());
    setCursor(onLever ? Qt::PointingHandCursor : Qt::ArrowCursor);
    setToolTip(onLever
                   ? m_leverHint.arg(QString::fromStdString(harp::stringName(*m_harp, *onLever)))
                   : QString());
    auto const string = stringNear(m_layout, event->position().x(), event->position().y());
    if (string == m_pointed) return;
    m_pointed = string;
    if (string && (event->buttons() & Qt::LeftButton) != 0) pluck(*string);
    update();
}

void StringBank::leaveEvent(QEvent* event)
{
    QWidget::leaveEvent(event);
    m_pointed.reset();
    update();
}

ReadableItem StringBank::readableItem(int string) const
{
    ReadableItem item;
    item.name = stringWords(*m_harp, string, soundingPitch(string)) +
                (lever(string) == harp::Lever::Up ? tr(", lever up") : QString());
    for (FingerDisc const& disc : m_fingers)
        if (disc.string == string)
            item.name += disc.hand == harp::Side::Left
                             ? tr(", left hand, finger %1").arg(disc.finger)
                             : tr(", right hand, finger %1").arg(disc.finger);
    for (FingerDisc const& disc : m_ahead)
        if (disc.string == string)
            item.name += tr(", next: left hand, finger %1").arg(disc.finger);
    BankString const& place = m_layout.strings[static_cast<std::size_t>(string)];
    item.box = {place.x - 6, place.top, 12, place.bottom - place.top};
    item.chosen = m_cursor == string;
    return item;
}

void StringBank::moveCursor(int string)
{
    m_cursor = std::clamp(string, 0, m_harp->count() - 1);
    update();
    tellReadableFocus(*this, *m_cursor);
}

void StringBank::keyPressEvent(QKeyEvent* event)
{
    if (!m_harp) return;
    int const last = m_harp->count() - 1;
    int const here = m_cursor.value_or(last / 2);
    switch (event->key()) {
    case Qt::Key_Left:
        moveCursor(here - 1);
        return;
    case Qt::Key_Right:
        moveCursor(here + 1);
        return;
    case Qt::Key_PageDown:
        moveCursor(here - 7);
        return;
    case Qt::Key_PageUp:
        moveCursor(here + 7);
        return;
    case Qt::Key_Home:
        moveCursor(0);
        return;
    case Qt::Key_End:
        moveCursor(last);
        return;
    case Qt::Key_Up:
    case Qt::Key_Down:
        moveCursor(here);
        turnLever(here, event->key() == Qt::Key_Up ? harp::Lever::Up : harp::Lever::Down);
        return;
    case Qt::Key_Space:
    case Qt::Key_Return:
        moveCursor(here);
        pluck(here);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void StringBank::focusInEvent(QFocusEvent* event)
{
    QWidget::focusInEvent(event);
    if (!m_cursor && m_harp) m_cursor = m_harp->count() / 2;
    update();
}

void StringBank::timerEvent(QTimerEvent* event)
{
    if (event->timerId() != m_fade.timerId()) return;
    bool any = false;
    for (std::size_t i = 0; i < m_ringing.size(); ++i) {
        if (!m_ringing[i]) continue;
        if (glow(static_cast<int>(i)) <= faintest)
            m_ringing[i].reset();
        else
            any = true;
    }
    if (!any) m_fade.stop();
    update();
}

} // namespace ui
