#include "ui/melodylane.h"

#include "core/tune/edit/barsums.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QKeyEvent>
#include <QPainter>

#include <array>
#include <cmath>

namespace ui {

namespace {

using tune::Stroke;

constexpr std::string_view signs = "abcdefgABCDEFGzZ123456789/*.',-^_=({}|";

struct KeyStroke {
    int key;
    Qt::KeyboardModifiers with;
    Stroke stroke;
};
constexpr std::array strokes{
    KeyStroke{Qt::Key_Left, Qt::NoModifier, Stroke::Left},
    KeyStroke{Qt::Key_Right, Qt::NoModifier, Stroke::Right},
    KeyStroke{Qt::Key_Up, Qt::NoModifier, Stroke::Up},
    KeyStroke{Qt::Key_Down, Qt::NoModifier, Stroke::Down},
    KeyStroke{Qt::Key_Up, Qt::ControlModifier, Stroke::OctaveUp},
    KeyStroke{Qt::Key_Down, Qt::ControlModifier, Stroke::OctaveDown},
    KeyStroke{Qt::Key_Up, Qt::ShiftModifier, Stroke::SemitoneUp},
    KeyStroke{Qt::Key_Down, Qt::ShiftModifier, Stroke::SemitoneDown},
    KeyStroke{Qt::Key_Delete, Qt::NoModifier, Stroke::Delete},
    KeyStroke{Qt::Key_Backspace, Qt::NoModifier, Stroke::BackSpace},
    KeyStroke{Qt::Key_Return, Qt::NoModifier, Stroke::BarAfter},
    KeyStroke{Qt::Key_Enter, Qt::NoModifier, Stroke::BarAfter},
    KeyStroke{Qt::Key_PageDown, Qt::NoModifier, Stroke::BarAfter},
    KeyStroke{Qt::Key_PageUp, Qt::NoModifier, Stroke::BarBefore},
    KeyStroke{Qt::Key_Home, Qt::NoModifier, Stroke::BarBefore},
};

std::optional<Stroke> strokeOf(QKeyEvent const& event)
{
    auto const with = event.modifiers() & ~Qt::KeypadModifier;
    for (KeyStroke const& each : strokes)
        if (each.key == event.key() && each.with == with) return each.stroke;
    return std::nullopt;
}

std::optional<char> signOf(QKeyEvent const& event)
{
    bool const plain =
        (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == 0;
    QString const text = event.text();
    if (!plain || text.size() != 1 || text[0].unicode() > 127) return std::nullopt;
    char const sign = text[0].toLatin1();
    return signs.find(sign) == std::string_view::npos ? std::nullopt : std::optional(sign);
}

QString stringName(int step, music::Key key)
{
    music::Pitch pitch = music::naturalAt(step);
    pitch.alter = alterIn(signature(key), pitch.letter);
    return QString::fromStdString(shown(nameOf(pitch)));
}

void paintStrings(QPainter& painter, MelodyLayout const& layout, music::Key key,
                  Palette const& p)
{
    double const apart = layout.strings.height / (layout.highestStep - layout.lowestStep);
    bool const crowded = apart < 11;
    for (int step = layout.lowestStep; step <= layout.highestStep; ++step) {
        double const y = std::round(yOf(layout, step)) + 0.5;
        music::Letter const letter = music::naturalAt(step).letter;
        bool const red = letter == music::Letter::C;
        bool const blue = letter == music::Letter::F;
        QPen pen(red ? colour(p.red) : blue ? colour(p.blue) : colour(p.edge), 1);
        if (blue) pen.setStyle(Qt::DashLine);
        painter.setPen(pen);
        painter.drawLine(QPointF(layout.strings.x, y), QPointF(layout.strings.right(), y));
        // Where not every name has room, A stands between the coloured strings.
        if (crowded && !red && !blue && letter != music::Letter::A) continue;
        painter.setPen(colour(red ? p.red : blue ? p.blue : p.quiet));
        painter.drawText(QRectF(0, y - 10, layout.strings.x - 8, 20),
                         Qt::AlignRight | Qt::AlignVCenter, stringName(step, key));
    }
}

void paintNote(QPainter& painter, MelodyLayout const& layout, MelodyNote const& at,
               tune::Note const& note, bool here, Palette const& p)
{
    constexpr double half = 5;
    double const wide = std::max(at.to - at.from - 3, 2 * half);
    if (at.rest) {
        double const y = layout.strings.y + layout.strings.height / 2;
        painter.setPen(QPen(faint(p, p.rule, 0.7), 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(at.from, y - half, wide, 2 * half), 2, 2);
    }
    for (std::size_t i = 0; i < at.steps.size(); ++i) {
        double const y = yOf(layout, at.steps[i]);
        painter.fillRect(QRectF(at.from, y - 2, wide, 4), faint(p, p.amber, 0.5));
        painter.setPen(QPen(colour(here ? p.ink : p.paper), here ? 1.6 : 1));
        painter.setBrush(colour(p.amber));
        painter.drawRoundedRect(QRectF(at.from - 1, y - half, 2 * half, 2 * half), 1.5, 1.5);
        if (note.tied) {
            painter.setPen(QPen(colour(p.amber), 1.6));
            painter.setBrush(Qt::NoBrush);
            painter.drawArc(QRectF(at.from + 6, y - 13, wide, 11), 20 * 16, 140 * 16);
        }
    }
    if (!note.graces.empty() && !at.steps.empty()) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(faint(p, p.amber, 0.8));
        double x = at.from - 7.0 * static_cast<double>(note.graces.size());
        for (music::Pitch const& grace : note.graces) {
            painter.drawEllipse(QPointF(x + 2, yOf(layout, diatonicStep(grace))), 2.6, 2.6);
            x += 7;
        }
    }
}

} // namespace

MelodyLane::MelodyLane(QWidget* parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Notes of the bar"));
    setCursor(Qt::IBeamCursor);
}

void MelodyLane::setTyping(tune::Typing typing)
{
    m_typing = std::move(typing);
    layOut();
    update();
}

void MelodyLane::layOut()
{
    if (m_typing) m_layout = layOutMelody(m_typing->tune, m_typing->at, width(), height());
}

void MelodyLane::resizeEvent(QResizeEvent*) { layOut(); }
void MelodyLane::focusInEvent(QFocusEvent*) { update(); }
void MelodyLane::focusOutEvent(QFocusEvent*) { update(); }

// While it has the focus its keys are its own, not those of the menus.
bool MelodyLane::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        auto const& key = *static_cast<QKeyEvent*>(event);
        if (strokeOf(key) || signOf(key) || key.key() == Qt::Key_Escape ||
            key.key() == Qt::Key_Space) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void MelodyLane::keyPressEvent(QKeyEvent* event)
{
    if (auto const stroke = strokeOf(*event)) return emit this->stroke(*stroke);
    if (auto const sign = signOf(*event)) return emit signTyped(*sign);
    if (event->key() == Qt::Key_Space && event->modifiers() == Qt::NoModifier)
        return emit hearWanted();
    if (event->key() == Qt::Key_Escape) return emit left();
    QWidget::keyPressEvent(event);
}

void MelodyLane::mousePressEvent(QMouseEvent* event)
{
    setFocus(Qt::MouseFocusReason);
    if (auto const at = melodyPlaceAt(m_layout, event->position().x())) emit placeClicked(*at);
}

void MelodyLane::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), colour(p.card));
    if (!m_typing) return;
    tune::Tune const& tune = m_typing->tune;
    QFont const small = scaledFont(*this, 0.85);
    painter.setFont(small);
    QFontMetricsF const metrics(small);

    for (MelodyBar const& bar : m_layout.bars) {
        Box const& box = bar.box;
        bool const here = bar.bar == m_typing->at.bar;
        if (here)
            painter.fillRect(QRectF(box.x, box.y, box.width, box.height),
                             colour(p.leafWash, 0.55));
        auto const odd = oddBar(tune.bars, bar.bar);
        QString const words = odd ? tr("%1 · %2").arg(barTitle(tune, bar.bar),
                                                      QString::fromStdString(oddWords(*odd)))
                                  : barTitle(tune, bar.bar);
        painter.setPen(colour(odd ? p.warnInk : here ? p.ink : p.quiet));
        painter.drawText(QRectF(box.x + 6, 2, box.width - 8, box.y - 2),
                         Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(words, Qt::ElideRight, box.width - 10));
    }
    paintStrings(painter, m_layout, tune.bars[m_typing->at.bar].key, p);
    painter.setPen(QPen(colour(p.rule), 1.2));
    for (MelodyBar const& bar : m_layout.bars)
        for (double x : {bar.box.x, bar.box.right()})
            painter.drawLine(QPointF(x, bar.box.y), QPointF(x, bar.box.bottom()));
    for (MelodyNote const& note : m_layout.notes)
        paintNote(painter, m_layout, note, *noteAt(tune, note.at), note.at == m_typing->at, p);
    QRectF const caret(m_layout.caret - 3, m_layout.strings.y - 6, 2.4,
                       m_layout.strings.height + 12);
    painter.fillRect(caret, colour(p.leaf, hasFocus() ? 1 : 0.35));
}

} // namespace ui
