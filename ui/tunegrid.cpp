#include "ui/tunegrid.h"

#include "ui/signs.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double corner = 8;

QRectF rectOf(Box const& box) { return {box.x, box.y, box.width, box.height}; }

} // namespace

TuneGrid::TuneGrid(QWidget* parent) : QAbstractScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setMouseTracking(true);
    verticalScrollBar()->setSingleStep(24);
    setAccessibleName(tr("Tune grid"));
    setAccessibleDescription(
        tr("The tune in bars. Arrow keys choose a chord, Enter goes to its "
           "variants, Space plays the bar."));
}

void TuneGrid::setArrangement(arrange::Arrangement arrangement)
{
    m_arrangement = std::move(arrangement);
    layOut();
}

void TuneGrid::setDifficulty(hands::Difficulty difficulty, int level)
{
    m_difficulty = std::move(difficulty);
    m_level = level;
    viewport()->update();
}

void TuneGrid::clear()
{
    m_difficulty = {};
    m_arrangement.reset();
    m_selected.reset();
    m_playingBar.reset();
    layOut();
}

void TuneGrid::setSelected(std::optional<int> position)
{
    bool const moved = m_selected != position;
    m_selected = position;
    viewport()->update();
    if (!moved || !position) return;
    if (GridCard const* card = cardOf(m_layout, *position)) showCard(*card);
    tellReadableFocus(*this, *position);
}

void TuneGrid::setPlayingBar(std::optional<int> bar)
{
    if (m_playingBar == bar) return;
    m_playingBar = bar;
    for (GridCard const& card : m_layout.cards)
        if (bar && card.bar == *bar) showCard(card);
    viewport()->update();
}

void TuneGrid::layOut()
{
    if (!m_arrangement) {
        m_layout = {};
    } else {
        QFontMetricsF const large(scaledFont(*this, 1.25, QFont::Bold));
        QFontMetricsF const plain(font());
        GridMeasure measure;
        measure.width = viewport()->width();
        measure.nameHeight = std::ceil(large.height()) + 9;
        measure.footHeight = std::ceil(plain.height()) + 7;
        measure.cardHeight = measure.nameHeight + measure.footHeight + 76;
        measure.headingHeight = std::ceil(plain.height()) + 14;
        measure.narrowestCard = plain.averageCharWidth() * 19;
        m_layout = layOutGrid(*m_arrangement, measure);
    }
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_layout.height)) - viewport()->height()));
    viewport()->update();
}

void TuneGrid::showCard(GridCard const& card)
{
    QScrollBar* bar = verticalScrollBar();
    double const top = card.row == 0 ? 0 : card.box.y - 10;
    double const bottom = card.box.bottom() + 10;
    if (top < bar->value()) bar->setValue(static_cast<int>(top));
    if (bottom > bar->value() + viewport()->height())
        bar->setValue(static_cast<int>(bottom) - viewport()->height());
}

tune::Bar const& TuneGrid::barOf(GridCard const& card) const
{
    return m_arrangement->tune.bars[static_cast<std::size_t>(card.bar)];
}

// Of the passes that share a stretch one is drawn: the selected one, or else the first.
bool TuneGrid::drawn(GridCard const& card, GridSpan const& span) const
{
    int shownOne = span.position;
    bool found = false;
    for (GridSpan const& other : card.spans) {
        if (!(other.stretch == span.stretch)) continue;
        if (!found) shownOne = other.position;
        found = true;
        if (m_selected == other.position) shownOne = other.position;
    }
    return shownOne == span.position;
}

void TuneGrid::paintEvent(QPaintEvent* event)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(viewport());
    painter.fillRect(event->rect(), colour(p.paper));
    if (!m_arrangement) return;
    painter.setRenderHint(QPainter::Antialiasing);
    double const scrolled = verticalScrollBar()->value();
    painter.translate(0, -scrolled);
    QRectF const seen = QRectF(event->rect()).translated(0, scrolled);
    for (GridSection const& section : m_layout.sections)
        if (seen.intersects(rectOf(section.heading))) paintSection(painter, section);
    for (GridCard const& card : m_layout.cards)
        if (seen.intersects(rectOf(card.box).adjusted(-3, -3, 3, 3))) paintCard(painter, card);
}

void TuneGrid::paintSection(QPainter& painter, GridSection const& section) const
{
    Palette const& p = paletteOf(*this);
    auto const& bars = m_arrangement->tune.bars;
    int first = bars[static_cast<std::size_t>(section.firstBar)].number;
    int const last = bars[static_cast<std::size_t>(section.lastBar)].number;
    first = std::max(first, 1);
    QRectF const box = rectOf(section.heading);
    double x = box.left() + 1;
    if (!section.part.empty()) {
        painter.setFont(scaledFont(*this, 1.0, QFont::Bold));
        painter.setPen(colour(p.ink));
        QString const part = QString::fromStdString(section.part);
        painter.drawText(QRectF(x, box.top(), 200, box.height()),
                         Qt::AlignVCenter | Qt::AlignLeft, part);
        x += painter.fontMetrics().horizontalAdvance(part) + 8;
    }
    QString words = tr("bars %1–%2").arg(first).arg(last);
    if (section.timesPlayed == 2)
        words += tr(" · twice");
    else if (section.timesPlayed > 2)
        words += tr(" · %1 times").arg(section.timesPlayed);
    painter.setFont(font());
    painter.setPen(colour(p.quiet));
    painter.drawText(QRectF(x, box.top(), 400, box.height()), Qt::AlignVCenter | Qt::AlignLeft,
                     words);
    x += painter.fontMetrics().horizontalAdvance(words) + 12;
    painter.setPen(QPen(colour(p.edge), 1));
    painter.drawLine(QPointF(x, box.center().y() + 0.5),
                     QPointF(box.right(), box.center().y() + 0.5));
}

void TuneGrid::paintCard(QPainter& painter, GridCard const& card) const
{
    Palette const& p = paletteOf(*this);
    bool const chosen = m_selected && cardOf(m_layout, *m_selected) == &card;
    bool const pointed = m_pointed && cardOf(m_layout, *m_pointed) == &card;
    bool const playing = m_playingBar == card.bar;
    QRectF const box = rectOf(card.box).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(colour(pointed ? p.rule : p.edge), 1));
    painter.setBrush(colour(p.card));
    painter.drawRoundedRect(box, corner, corner);

    QPainterPath inside;
    inside.addRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
    painter.save();
    painter.setClipPath(inside);
    if (chosen && card.spans.size() > 1) {
        GridSpan const* span = spanOf(m_layout, *m_selected);
        painter.fillRect(rectOf(span->stretch), colour(p.leafWash, 0.6));
    }
    if (playing)
        painter.fillRect(QRectF(box.left(), box.top(), box.width(), 4), colour(p.amber));
    painter.restore();

    paintDifficulty(painter, card);
    paintStrings(painter, card);
    paintTune(painter, card);
    for (GridSpan const& span : card.spans) paintSpan(painter, card, span);

    painter.setFont(scaledFont(*this, 0.88));
    painter.setPen(colour(p.quiet));
    painter.drawText(QRectF(card.box.x, card.box.y + 5, card.box.width - 9, 20),
                     Qt::AlignRight | Qt::AlignTop, numberWords(card));

    if (chosen) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour(p.leaf), 2));
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
        if (hasFocus()) {
            painter.setPen(QPen(colour(p.leaf, 0.35), 3));
            painter.drawRoundedRect(box.adjusted(-2, -2, 2, 2), corner + 2, corner + 2);
        }
    }
}

// "3", "2. ending  9", in a narrow card "2.  9"
QString TuneGrid::numberWords(GridCard const& card) const
{
    tune::Bar const& bar = barOf(card);
    QString const number = bar.number > 0 ? QString::number(bar.number) : QString();
    if (bar.endings.empty()) return number;
    bool const narrow = card.box.width < 160 || card.spans.size() > 1;
    return (narrow ? tr("%1.  %2") : tr("%1. ending  %2")).arg(bar.endings.front()).arg(number);
}

// Every C and F string as a line, the C whole and the F dashed; the others where there is room.
void TuneGrid::paintStrings(QPainter& painter, GridCard const& card) const
{
    Palette const& p = paletteOf(*this);
    double const left = card.drawing.x;
    double const right = card.drawing.right();
    double const apart =
        card.drawing.height / std::max(1, m_layout.highestStep - m_layout.lowestStep);
    for (int step = m_layout.lowestStep; step <= m_layout.highestStep; ++step) {
        music::Letter const letter = music::naturalAt(step).letter;
        bool const isC = letter == music::Letter::C;
        bool const isF = letter == music::Letter::F;
        if (!isC && !isF && apart < 4) continue;
        QPen pen(isC   ? colour(p.red, 0.55)
                 : isF ? colour(p.blue, 0.5)
                       : colour(p.edge, 0.5),
                 1);
        if (isF) pen.setDashPattern({4, 3});
        painter.setPen(pen);
        double const y = std::round(yAt(m_layout, card.drawing, step)) + 0.5;
        painter.drawLine(QPointF(left, y), QPointF(right, y));
    }
}

// A quiet strip at the foot: as long as the bar is hard, of another colour where it asks for
// more than the level that is set.
void TuneGrid::paintDifficulty(QPainter& painter, GridCard const& card) const
{
    auto const bar = static_cast<std::size_t>(card.bar);
    if (bar >= m_difficulty.bars.size()) return;
    constexpr double most = 5;
    constexpr double thick = 2.5;
    Palette const& p = paletteOf(*this);
    double const level = m_difficulty.bars[bar].level;
    double const inset = corner;
    double const room = card.box.width - 2 * inset;
    double const top = card.box.bottom() - thick - 1.5;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(p.edge, 0.7));
    painter.drawRoundedRect(QRectF(card.box.x + inset, top, room, thick), 1, 1);
    painter.setBrush(level > m_level + 0.05 ? colour(p.amber) : colour(p.leaf, 0.55));
    painter.drawRoundedRect(
        QRectF(card.box.x + inset, top, room * std::min(level, most) / most, thick), 1, 1);
}

// "Bar 3 asks for level 2.4", and why.
QString TuneGrid::difficultyWords(int bar) const
{
    if (static_cast<std::size_t>(bar) >= m_difficulty.bars.size()) return {};
    hands::BarDifficulty const& asked = m_difficulty.bars[static_cast<std::size_t>(bar)];
    QString words = tr("%1 asks for level %2")
                        .arg(barTitle(m_arrangement->tune, bar))
                        .arg(asked.level, 0, 'f', 1);
    constexpr std::size_t told = 4;
    for (std::size_t i = 0; i < std::min(told, asked.reasons.size()); ++i)
        words += tr("\n%1: %2")
                     .arg(asked.reasons[i].level, 0, 'f', 1)
                     .arg(QString::fromStdString(asked.reasons[i].words));
    return words;
}

void TuneGrid::paintTune(QPainter& painter, GridCard const& card) const
{
    Palette const& p = paletteOf(*this);
    tune::Bar const& bar = barOf(card);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(p.amber));
    for (tune::Note const& note : bar.notes) {
        double const from = xAt(card, note.at, bar.length);
        double const to = xAt(card, note.at + note.length, bar.length);
        for (music::Pitch const pitch : note.pitches) {
            double const y = yAt(m_layout, card.drawing, diatonicStep(pitch));
            painter.drawRoundedRect(QRectF(from + 1, y - 2.5, std::max(3.0, to - from - 2), 5),
                                    2.5, 2.5);
        }
    }
    painter.setBrush(colour(p.amber, 0.6)); // what the right hand adds
    for (arrange::AddedBelow const& added : m_arrangement->added) {
        if (added.bar != card.bar) continue;
        tune::Note const& note = bar.notes[static_cast<std::size_t>(added.note)];
        double const from = xAt(card, note.at, bar.length);
        double const to = xAt(card, note.at + note.length, bar.length);
        for (music::Pitch const pitch : added.pitches) {
            double const y = yAt(m_layout, card.drawing, diatonicStep(pitch));
            painter.drawRoundedRect(
                QRectF(from + 1, y - 1.75, std::max(3.0, to - from - 2), 3.5), 1.75, 1.75);
        }
    }
}

void TuneGrid::paintSpan(QPainter& painter, GridCard const& card, GridSpan const& span) const
{
    Palette const& p = paletteOf(*this);
    auto const& arranged = m_arrangement->positions[static_cast<std::size_t>(span.position)];
    bool const shownOne = drawn(card, span);
    bool const first = span.stretch.x <= card.box.x + 0.5;
    if (!first && span.name.x <= span.stretch.x + 0.5) {
        painter.setPen(QPen(colour(p.edge), 1, Qt::DashLine));
        painter.drawLine(QPointF(span.stretch.x, card.box.y + 5),
                         QPointF(span.stretch.x, card.box.bottom() - 5));
    }
    double const inset = first && span.name.x <= card.box.x + 0.5 ? 10 : 5;
    QRectF name = rectOf(span.name).adjusted(inset, 6, -2, 0);
    if (span.name.right() > card.box.right() - 1) // the bar's number stands there
        name.setRight(
            name.right() - 10 -
            QFontMetricsF(scaledFont(*this, 0.88)).horizontalAdvance(numberWords(card)));
    painter.setFont(scaledFont(*this, 1.25, shownOne ? QFont::Bold : QFont::Normal));
    painter.setPen(colour(shownOne ? p.ink : p.quiet));
    QString const chord = QString::fromStdString(music::shown(arranged.position.chord));
    painter.drawText(name, Qt::AlignLeft | Qt::AlignTop,
                     painter.fontMetrics().elidedText(chord, Qt::ElideRight,
                                                      static_cast<int>(name.width())));
    QString const pass = passWords(*m_arrangement, span.position);
    if (!pass.isEmpty()) {
        double const after = painter.fontMetrics().horizontalAdvance(chord) + 4;
        painter.setFont(scaledFont(*this, 0.8));
        painter.setPen(colour(p.quiet));
        painter.drawText(name.adjusted(after, 4, 0, 0), Qt::AlignLeft | Qt::AlignTop,
                         QString::number(arranged.position.played.front().pass) +
                             QChar(0x00D7));
    }
    if (!shownOne) return;

    paintLeftHand(painter, card, span);
    double const foot = card.drawing.bottom();
    QRectF label(span.stretch.x + inset, foot, span.stretch.width - inset - 6,
                 card.box.bottom() - foot - 5);
    if (arranged.locked) {
        double const side = 12;
        paintSign(painter, Sign::Locked,
                  {label.right() - side, label.center().y() - side / 2, side, side},
                  colour(p.leaf));
        label.setRight(label.right() - side - 4);
    }
    painter.setFont(scaledFont(*this, 0.95, QFont::DemiBold));
    painter.setPen(colour(arranged.voicing.notes.empty() ? p.quiet : p.leaf));
    painter.drawText(label, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(patternWords(arranged.voicing),
                                                      Qt::ElideRight,
                                                      static_cast<int>(label.width())));
}

void TuneGrid::paintLeftHand(QPainter& painter, GridCard const& card,
                             GridSpan const& span) const
{
    Palette const& p = paletteOf(*this);
    auto const& arranged = m_arrangement->positions[static_cast<std::size_t>(span.position)];
    tune::Bar const& bar = barOf(card);
    auto const& notes = arranged.voicing.notes;
    double const rollShift = 3;
    std::vector<QPointF> dots;
    for (arrange::VoicedNote const& note : notes) {
        int const step = diatonicStep(m_arrangement->harp.string(note.string).open);
        dots.emplace_back(xAt(card, arranged.position.at + note.at, bar.length) + 4 +
                              rollShift * note.rollOrder,
                          yAt(m_layout, card.drawing, step));
    }
    // Together: a stem. One after the other: a thread, but none between two blocks.
    painter.setBrush(Qt::NoBrush);
    for (std::size_t i = 1; i < notes.size(); ++i) {
        bool const together = notes[i].at == notes[i - 1].at;
        bool const afterBlock = i > 1 && notes[i - 1].at == notes[i - 2].at;
        if (afterBlock && !together) continue;
        painter.setPen(together ? QPen(colour(p.leaf), 2.4) : QPen(colour(p.leaf, 0.5), 1.8));
        painter.drawLine(dots[i - 1], dots[i]);
    }
    painter.setPen(QPen(colour(p.card), 1));
    painter.setBrush(colour(p.leaf));
    for (QPointF const& dot : dots) painter.drawEllipse(dot, 4.6, 4.6);
}

std::optional<int> TuneGrid::under(QPointF const& point) const
{
    return positionAt(m_layout, point.x(), point.y() + verticalScrollBar()->value(),
                      m_selected);
}

// The selected chord stays in sight.
void TuneGrid::resizeEvent(QResizeEvent*)
{
    layOut();
    if (!m_selected) return;
    verticalScrollBar()->setValue(0);
    if (GridCard const* card = cardOf(m_layout, *m_selected)) showCard(*card);
}

bool TuneGrid::event(QEvent* event)
{
    if (event->type() == QEvent::FontChange) layOut();
    return QAbstractScrollArea::event(event);
}

bool TuneGrid::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::Leave) {
        m_pointed.reset();
        viewport()->update();
    }
    if (event->type() == QEvent::ToolTip) {
        auto const* help = static_cast<QHelpEvent*>(event);
        auto const position = under(help->pos());
        GridCard const* card = position ? cardOf(m_layout, *position) : nullptr;
        QToolTip::showText(help->globalPos(), card ? difficultyWords(card->bar) : QString(),
                           viewport());
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void TuneGrid::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    if (auto const position = under(event->position())) emit positionClicked(*position);
}

void TuneGrid::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && under(event->position())) emit variantsClicked();
}

void TuneGrid::mouseMoveEvent(QMouseEvent* event)
{
    auto const position = under(event->position());
    if (position == m_pointed) return;
    m_pointed = position;
    viewport()->setCursor(position ? Qt::PointingHandCursor : Qt::ArrowCursor);
    viewport()->update();
}

void TuneGrid::keyPressEvent(QKeyEvent* event)
{
    auto const go = [this](Step step) {
        if (m_selected) emit positionClicked(neighbour(m_layout, *m_selected, step));
    };
    switch (event->key()) {
    case Qt::Key_Left:
        go(Step::Left);
        return;
    case Qt::Key_Right:
        go(Step::Right);
        return;
    case Qt::Key_Up:
        go(Step::Up);
        return;
    case Qt::Key_Down:
        go(Step::Down);
        return;
    case Qt::Key_Home:
        go(Step::First);
        return;
    case Qt::Key_End:
        go(Step::Last);
        return;
    case Qt::Key_Space:
        emit hearClicked();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        emit variantsClicked();
        return;
    default:
        break;
    }
    bool const bare = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (bare && event->key() >= Qt::Key_1 && event->key() <= Qt::Key_9) {
        emit rankTyped(event->key() - Qt::Key_1);
        return;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

int TuneGrid::readableCount() const
{
    return m_arrangement ? static_cast<int>(m_arrangement->positions.size()) : 0;
}

ReadableItem TuneGrid::readableItem(int position) const
{
    auto const& arranged = m_arrangement->positions[static_cast<std::size_t>(position)];
    ReadableItem item;
    item.name = positionTitle(*m_arrangement, position) + QStringLiteral(", ") +
                patternWords(arranged.voicing);
    if (arranged.locked) item.name += tr(", locked");
    if (GridSpan const* span = spanOf(m_layout, position))
        item.box = rectOf(span->stretch).translated(0, -verticalScrollBar()->value());
    item.chosen = m_selected == position;
    return item;
}

void TuneGrid::contextMenuEvent(QContextMenuEvent* event)
{
    bool const byKey = event->reason() == QContextMenuEvent::Keyboard;
    auto const position = byKey ? m_selected : under(event->pos());
    GridSpan const* span = position ? spanOf(m_layout, *position) : nullptr;
    if (!span) return;
    emit positionClicked(*position);
    QPoint const corner(qRound(span->stretch.x) + 20,
                        qRound(span->stretch.y) + 30 - verticalScrollBar()->value());
    emit menuWanted(byKey ? viewport()->mapToGlobal(corner) : event->globalPos());
}

void TuneGrid::focusInEvent(QFocusEvent*) { viewport()->update(); }
void TuneGrid::focusOutEvent(QFocusEvent*) { viewport()->update(); }

} // namespace ui
