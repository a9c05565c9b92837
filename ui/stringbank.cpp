#include "ui/stringbank.h"

#include "ui/motion.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QTimerEvent>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr int frameMs = 16;           // between two pictures of a fading string
constexpr int steadyMs = 200;         // the same where it does not fade
constexpr double steadySeconds = 1.0; // that a string is lit without fading

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
    m_harp = std::move(harp);
    m_ringing = decltype(m_ringing)(m_harp->count(), std::nullopt);
    m_levers = harp::LeverSetting(m_harp->count(), harp::Lever::Down);
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

void StringBank::setSnags(std::vector<harp::StringIndex> strings)
{
    if (m_snags == strings) return;
    m_snags = std::move(strings);
    update();
}

void StringBank::setLeverHint(QString const& words) { m_leverHint = words; }

void StringBank::setTitle(QString const& title)
{
    if (m_title == title) return;
    m_title = title;
    setAccessibleName(title.isEmpty() ? tr("String bank") : tr("String bank, %1").arg(title));
    update();
}

void StringBank::ring(harp::StringIndex string, harp::Side hand)
{
    if (!m_ringing.holds(string)) return;
    m_ringing[string] = Ringing{m_clock.elapsed(), hand};
    if (!m_fade.isActive()) m_fade.start(lessMotion() ? steadyMs : frameMs, this);
    update();
}

void StringBank::still(harp::StringIndex string)
{
    if (!m_ringing.holds(string)) return;
    m_ringing[string].reset();
    update();
}

void StringBank::stillAll()
{
    std::fill(m_ringing.begin(), m_ringing.end(), std::nullopt);
    m_fade.stop();
    update();
}

double StringBank::letters() const { return std::max(1.0, fontMetrics().height() / 24.0); }

// Names of neighbours do not touch, and discs hold their fingers.
QSize StringBank::minimumSizeHint() const
{
    int const strings = m_harp ? m_harp->count() : 34;
    QFontMetrics const metrics = fontMetrics();
    return {std::max(400, strings * metrics.averageCharWidth() * 3 / 2),
            std::max(164, qRound(7.5 * metrics.height()))};
}

void StringBank::layOut()
{
    if (!m_harp) return;
    int const heading = fontMetrics().height() + 12;
    m_layout = layOutBank(*m_harp,
                          {14.0, static_cast<double>(heading), width() - 28.0,
                           static_cast<double>(height() - heading - 6)},
                          letters());
    m_stillStale = true;
    update();
}

// The eye sees a string swing for about a third of the time in which it falls by 60 dB.
double StringBank::glow(harp::StringIndex string) const
{
    auto const& ringing = m_ringing[string];
    if (!ringing) return 0;
    double const seconds = static_cast<double>(m_clock.elapsed() - ringing->since) / 1000.0;
    if (lessMotion()) return seconds < steadySeconds ? 1 : 0;
    return std::exp(-seconds / (harp::ringSeconds(m_harp->string(string)) / 9));
}

harp::Lever StringBank::lever(harp::StringIndex string) const
{
    return m_levers.holds(string) ? m_levers[string] : harp::Lever::Down;
}

music::Pitch StringBank::soundingPitch(harp::StringIndex string) const
{
    return harp::sounding(m_harp->string(string), lever(string));
}

void StringBank::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    m_stillStale = true; // the theme, the font ...
}

void StringBank::resizeEvent(QResizeEvent*) { layOut(); }

void StringBank::pluck(harp::StringIndex string)
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

std::optional<harp::StringIndex> StringBank::leverAt(QPointF where) const
{
    auto const string = leverNear(m_layout, where.x(), where.y());
    if (!string || !m_harp || !m_harp->string(*string).hasLever) return std::nullopt;
    return string;
}

void StringBank::turnLever(harp::StringIndex string, harp::Lever to)
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

ReadableItem StringBank::readableItem(int index) const
{
    harp::StringIndex const string(index);
    ReadableItem item;
    item.name = stringWords(*m_harp, string, soundingPitch(string)) +
                (!m_harp->string(string).hasLever   ? tr(", without a lever")
                 : lever(string) == harp::Lever::Up ? tr(", lever up")
                                                    : tr(", lever down"));
    for (FingerDisc const& disc : m_fingers)
        if (disc.string == string)
            item.name += disc.hand == harp::Side::Left
                             ? tr(", left hand, finger %1").arg(disc.finger)
                             : tr(", right hand, finger %1").arg(disc.finger);
    for (FingerDisc const& disc : m_ahead)
        if (disc.string == string)
            item.name += tr(", next: left hand, finger %1").arg(disc.finger);
    BankString const& place = m_layout.strings[string];
    item.box = {place.x - 6, place.top, 12, place.bottom - place.top};
    item.chosen = m_cursor == string;
    return item;
}

void StringBank::moveCursor(harp::StringIndex string)
{
    m_cursor = std::clamp(string, harp::StringIndex(0), m_harp->highest());
    update();
    tellReadableFocus(*this, *m_cursor);
}

void StringBank::keyPressEvent(QKeyEvent* event)
{
    if (!m_harp) return;
    harp::StringIndex const last = m_harp->highest();
    harp::StringIndex const here = m_cursor.value_or(harp::StringIndex(last / 2));
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
    if (!m_cursor && m_harp) m_cursor = harp::StringIndex(m_harp->count() / 2);
    update();
    tellReadableEntered(*this);
}

void StringBank::timerEvent(QTimerEvent* event)
{
    if (event->timerId() != m_fade.timerId()) return;
    bool any = false;
    bool other = false;
    for (harp::StringIndex const i : m_ringing.indices()) {
        if (!m_ringing[i]) continue;
        if (glow(i) > faintest) {
            any = true;
            continue;
        }
        m_ringing[i].reset();
        other = true;
    }
    if (!any) m_fade.stop();
    if (other || !lessMotion()) update();
}

} // namespace ui
