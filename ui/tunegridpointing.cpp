#include "ui/tunegrid.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>
#include <optional>

namespace ui {

namespace {

std::optional<Step> stepOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return Step::Left;
    case Qt::Key_Right:
        return Step::Right;
    case Qt::Key_Up:
        return Step::Up;
    case Qt::Key_Down:
        return Step::Down;
    case Qt::Key_Home:
        return Step::First;
    case Qt::Key_End:
        return Step::Last;
    default:
        return std::nullopt;
    }
}

// By how much an arrow key stretches a passage.
std::optional<int> barsOf(int key, int barsPerLane)
{
    switch (key) {
    case Qt::Key_Left:
        return -1;
    case Qt::Key_Right:
        return +1;
    case Qt::Key_Up:
        return -barsPerLane;
    case Qt::Key_Down:
        return +barsPerLane;
    default:
        return std::nullopt;
    }
}

} // namespace

std::optional<LaneSnag> TuneGrid::snagUnder(QPointF const& point) const
{
    constexpr double near = 10;
    double const y = point.y() + verticalScrollBar()->value();
    for (LaneFace const& face : m_faces)
        for (LaneSnag const& snag : face.snags)
            if (std::abs(snag.x - point.x()) + std::abs(snag.y - y) <= near) return snag;
    return std::nullopt;
}

// The next snag of the selected bar, in turn.
void TuneGrid::openSnagHere()
{
    LaneBar const* bar = m_selected ? barOf(m_layout, *m_selected) : nullptr;
    if (!bar) return;
    std::vector<LaneSnag> here;
    for (LaneFace const& face : m_faces)
        for (LaneSnag const& snag : face.snags)
            if (snag.bar == bar->bar) here.push_back(snag);
    if (here.empty()) return;
    auto next = std::ranges::find_if(
        here, [this](LaneSnag const& snag) { return snag.snag > m_snagOpened; });
    if (next == here.end()) next = here.begin();
    m_snagOpened = next->snag;
    emit snagClicked(next->snag,
                     viewport()->mapToGlobal(QPoint(
                         qRound(next->x), qRound(next->y) - verticalScrollBar()->value())));
}

std::optional<arrange::PositionIndex> TuneGrid::under(QPointF const& point) const
{
    return positionAt(m_layout, point.x(), point.y() + verticalScrollBar()->value(),
                      m_selected);
}

bool TuneGrid::onNoteOfTune(QPointF const& point) const
{
    constexpr double near = 9;
    double const y = point.y() + verticalScrollBar()->value();
    for (Lane const& lane : m_layout.lanes)
        for (PluckDot const& pluck : lane.plucks)
            if (pluck.fromTune && pluck.hand == harp::Side::Right &&
                std::abs(pluck.x - point.x()) <= near && std::abs(pluck.y - y) <= near)
                return true;
    return false;
}

bool TuneGrid::onChordName(QPointF const& point) const
{
    double const y = point.y() + verticalScrollBar()->value();
    return std::ranges::any_of(m_layout.bars, [&](LaneBar const& bar) {
        return std::ranges::any_of(bar.chords, [&](LaneChord const& chord) {
            return chord.name.contains(point.x(), y);
        });
    });
}

std::optional<tune::BarIndex> TuneGrid::barUnder(QPointF const& point) const
{
    return barAt(m_layout, point.x(), point.y() + verticalScrollBar()->value());
}

// The passage, or the selected bar where there is none, longer or shorter at its far end.
void TuneGrid::stretchPassage(int bars)
{
    LaneBar const* selected = m_selected ? barOf(m_layout, *m_selected) : nullptr;
    if (!selected) return;
    if (!m_passage || !m_passageFrom) m_passageFrom = selected->bar;
    tune::BarIndex const from = *m_passageFrom;
    tune::BarIndex to = from;
    if (m_passage) to = m_passage->firstBar == from ? m_passage->lastBar : m_passage->firstBar;
    tune::BarIndex const last = m_layout.bars.beyond() - 1;
    emit passageChosen(passageBetween(from, std::clamp(to + bars, tune::BarIndex(0), last)));
    if (!m_passage) return;
    tune::BarIndex const end =
        m_passage->firstBar == from ? m_passage->lastBar : m_passage->firstBar;
    showBar(m_layout.bars[end]);
}

bool TuneGrid::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::Leave) {
        updatePosition(m_pointed);
        m_pointed.reset();
    }
    if (event->type() == QEvent::ToolTip) {
        auto const* help = static_cast<QHelpEvent*>(event);
        if (auto const snag = snagUnder(help->pos())) {
            QToolTip::showText(help->globalPos(),
                               m_snags[static_cast<std::size_t>(snag->snag)].words, viewport());
            return true;
        }
        auto const position = under(help->pos());
        LaneBar const* bar = position ? barOf(m_layout, *position) : nullptr;
        QToolTip::showText(help->globalPos(), bar ? difficultyWords(bar->bar) : QString(),
                           viewport());
        return true;
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void TuneGrid::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    if (auto const snag = snagUnder(event->position())) {
        emit snagClicked(snag->snag, event->globalPosition().toPoint());
        return;
    }
    auto const bar = barUnder(event->position());
    LaneBar const* selected = m_selected ? barOf(m_layout, *m_selected) : nullptr;
    if (event->modifiers() & Qt::ShiftModifier && bar && selected) {
        if (!m_passage || !m_passageFrom) m_passageFrom = selected->bar;
        emit passageChosen(passageBetween(*m_passageFrom, *bar));
        return;
    }
    m_pressedBar = bar;
    auto const position = under(event->position());
    if (m_passage) emit passageChosen(std::nullopt);
    if (!position) return;
    if (event->modifiers() & Qt::ControlModifier)
        emit positionToggled(*position);
    else
        emit positionClicked(*position);
}

void TuneGrid::mouseReleaseEvent(QMouseEvent*) { m_pressedBar.reset(); }

void TuneGrid::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || !under(event->position())) return;
    if (onNoteOfTune(event->position()))
        emit notesWanted();
    else if (onChordName(event->position()))
        emit chordWanted();
    else
        emit variantsClicked();
}

void TuneGrid::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons() & Qt::LeftButton && m_pressedBar) {
        auto const bar = barUnder(event->position());
        if (!bar || (*bar == *m_pressedBar && !m_passage)) return;
        m_passageFrom = m_pressedBar;
        auto const dragged = passageBetween(*m_pressedBar, *bar);
        if (m_passage != dragged) emit passageChosen(dragged);
        return;
    }
    auto const position = under(event->position());
    if (position == m_pointed) return;
    updatePosition(m_pointed);
    m_pointed = position;
    updatePosition(m_pointed);
    viewport()->setCursor(position ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void TuneGrid::keyPressEvent(QKeyEvent* event)
{
    auto const modifiers = event->modifiers();
    if (modifiers & Qt::ShiftModifier)
        if (auto const bars = barsOf(event->key(), m_layout.barsPerLane))
            return stretchPassage(*bars);
    if (auto const step = stepOf(event->key())) return go(*step, modifiers & Qt::AltModifier);
    switch (event->key()) {
    case Qt::Key_S:
        return openSnagHere();
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
    bool const bare = (modifiers & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (bare && event->key() >= Qt::Key_1 && event->key() <= Qt::Key_9) {
        emit rankTyped(event->key() - Qt::Key_1);
        return;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void TuneGrid::go(Step step, bool together)
{
    if (!m_selected) return;
    arrange::PositionIndex const next = neighbour(m_layout, *m_selected, step);
    if (!together)
        emit positionClicked(next);
    else if (next != *m_selected) // back over chosen ones lets them go
        emit positionToggled(isChosen(next) ? *m_selected : next);
}

void TuneGrid::contextMenuEvent(QContextMenuEvent* event)
{
    bool const byKey = event->reason() == QContextMenuEvent::Keyboard;
    auto const position = byKey ? m_selected : under(event->pos());
    LaneChord const* chord = position ? chordOf(m_layout, *position) : nullptr;
    if (!chord) return;
    if (!isChosen(*position)) emit positionClicked(*position);
    QPoint const corner(qRound(chord->stretch.x) + 20,
                        qRound(chord->stretch.y) + 30 - verticalScrollBar()->value());
    emit menuWanted(byKey ? viewport()->mapToGlobal(corner) : event->globalPos());
}

} // namespace ui
