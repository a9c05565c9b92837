#include "ui/tunegrid.h"

#include "core/tune/edit/barsums.h"
#include "ui/motion.h"
#include "ui/numbers.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace ui {

TuneGrid::TuneGrid(QWidget* parent) : QAbstractScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setMouseTracking(true);
    verticalScrollBar()->setSingleStep(24);
    setAccessibleName(tr("Tune grid"));
    setAccessibleDescription(
        tr("The tune on its strings, a lane for each phrase. Arrow keys choose a chord, Enter "
           "goes to its shapes, Space lets you hear the bar."));
}

void TuneGrid::setArrangement(arrange::Arrangement arrangement)
{
    bool const first = !m_arrangement;
    m_arrangement = std::move(arrangement);
    layOut();
    if (first) viewport()->update();
}

void TuneGrid::setDifficulty(hands::Difficulty difficulty, int level)
{
    m_difficulty = std::move(difficulty);
    m_level = level;
    refresh();
}

void TuneGrid::setFollowed(std::vector<arrange::PositionIndex> positions)
{
    if (m_followed == positions) return;
    m_followed = std::move(positions);
    refresh();
}

void TuneGrid::clear()
{
    m_difficulty = {};
    m_arrangement.reset();
    m_selected.reset();
    m_chosen.clear();
    m_playingBar.reset();
    m_passage.reset();
    m_followed.clear();
    m_snags.clear();
    layOut();
}

void TuneGrid::setSelected(std::optional<arrange::PositionIndex> position)
{
    if (m_selected == position) return;
    std::optional<int> const before = m_selected;
    m_selected = position;
    if (sharesStretch(before) || sharesStretch(position)) layOut(); // another time is drawn
    updatePosition(before);
    updatePosition(position);
    if (!position) return;
    if (LaneBar const* bar = barOf(m_layout, *position)) showBar(*bar);
    tellReadableFocus(*this, *position);
}

void TuneGrid::setChosen(std::vector<arrange::PositionIndex> positions)
{
    if (positions.size() < 2) positions.clear();
    if (m_chosen == positions) return;
    for (int const position : m_chosen) updatePosition(position);
    m_chosen = std::move(positions);
    for (int const position : m_chosen) updatePosition(position);
}

bool TuneGrid::isChosen(arrange::PositionIndex position) const
{
    return position == m_selected || std::ranges::binary_search(m_chosen, position);
}

void TuneGrid::setPlayingBar(std::optional<tune::BarIndex> bar)
{
    if (m_playingBar == bar) return;
    auto const before = m_playingBar;
    m_playingBar = bar;
    for (LaneBar const& one : m_layout.bars) {
        if (bar && one.bar == *bar) showBar(one);
        if (one.bar == before || one.bar == bar) updateBox(one.box);
    }
}

void TuneGrid::setSnags(std::vector<SnagMark> snags)
{
    if (m_snags == snags) return;
    m_snags = std::move(snags);
    m_snagOpened = -1;
    refresh();
}

void TuneGrid::setPassage(std::optional<Passage> passage)
{
    if (m_passage == passage) return;
    updatePassage(m_passage);
    m_passage = passage;
    updatePassage(m_passage);
}

void TuneGrid::updatePassage(std::optional<Passage> passage)
{
    for (LaneBar const& bar : m_layout.bars)
        if (passage && bar.bar >= passage->firstBar && bar.bar <= passage->lastBar)
            updateBox(bar.box);
}

void TuneGrid::layOut()
{
    m_layout = m_arrangement ? layOutLanes(*m_arrangement, measured(), m_selected)
                             : LaneLayout();
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_layout.height)) - viewport()->height()));
    refresh();
}

// Lanes that look the same as before keep their pictures and are not painted again.
void TuneGrid::refresh()
{
    std::vector<LaneFace> faces;
    for (std::size_t i = 0; i < m_layout.lanes.size(); ++i) faces.push_back(faceOf(i));
    bool const moved = faces.size() != m_faces.size();
    m_pictures.resize(faces.size());
    for (std::size_t i = 0; i < faces.size(); ++i) {
        if (!moved && faces[i] == m_faces[i]) continue;
        m_pictures[i].stale = true;
        updateBox(paintedBox(faces[i].lane));
        if (i < m_faces.size()) updateBox(paintedBox(m_faces[i].lane));
    }
    m_faces = std::move(faces);
    if (moved) viewport()->update();
}

// On its string, where the note would be; without a string near the foot of the lane.
double TuneGrid::snagHeight(Lane const& lane, std::optional<harp::StringIndex> string) const
{
    constexpr double clear = 9;
    if (!string) return lane.strings.bottom() - clear;
    int const highest = m_layout.highestString - m_layout.lowestString;
    int const place = std::clamp(*string - m_layout.lowestString, 0, std::max(highest, 0));
    return std::round(lane.strings.bottom() -
                      lane.strings.height * place / std::max(1, highest));
}

void TuneGrid::showBar(LaneBar const& bar)
{
    ui::Box box = bar.box;
    if (bar.lane == 0) box.y = 0;
    showBox(box);
}

void TuneGrid::showBox(ui::Box const& box)
{
    QScrollBar* bar = verticalScrollBar();
    double const top = box.y - 6;
    double const bottom = box.bottom() + 6;
    if (top < bar->value())
        bar->setValue(static_cast<int>(top));
    else if (bottom > bar->value() + viewport()->height())
        bar->setValue(lessMotion() ? static_cast<int>(top)
                                   : static_cast<int>(bottom) - viewport()->height());
}

void TuneGrid::updateBox(ui::Box const& box)
{
    viewport()->update(rectOf(box)
                           .adjusted(-6, -4, 6, 4)
                           .translated(0, -verticalScrollBar()->value())
                           .toAlignedRect());
}

void TuneGrid::updatePosition(std::optional<arrange::PositionIndex> position)
{
    if (!position) return;
    if (LaneChord const* chord = chordOf(m_layout, *position)) updateBox(chord->stretch);
}

bool TuneGrid::sharesStretch(std::optional<arrange::PositionIndex> position) const
{
    LaneBar const* bar = position ? barOf(m_layout, *position) : nullptr;
    LaneChord const* here = position ? chordOf(m_layout, *position) : nullptr;
    return bar && std::ranges::any_of(bar->chords, [here](LaneChord const& other) {
               return other.position != here->position && other.stretch == here->stretch;
           });
}

// "Bar 3 asks for level 2.4", and why.
QString TuneGrid::difficultyWords(tune::BarIndex bar) const
{
    if (!m_difficulty.bars.holds(bar)) return {};
    hands::BarDifficulty const& asked = m_difficulty.bars[bar];
    QString words = tr("%1: difficulty %2")
                        .arg(barTitle(m_arrangement->tune, bar))
                        .arg(decimal(asked.level, 1));
    if (auto const odd = tune::oddBar(m_arrangement->tune.bars, bar))
        words += tr("\nThis bar is %1.").arg(QString::fromStdString(oddWords(*odd)));
    constexpr std::size_t told = 4;
    for (std::size_t i = 0; i < std::min(told, asked.reasons.size()); ++i)
        words += tr("\n%1: %2")
                     .arg(decimal(asked.reasons[i].level, 1))
                     .arg(QString::fromStdString(asked.reasons[i].words));
    return words;
}

// The selected chord stays in sight.
void TuneGrid::resizeEvent(QResizeEvent*)
{
    layOut();
    if (!m_selected) return;
    verticalScrollBar()->setValue(0);
    if (LaneBar const* bar = barOf(m_layout, *m_selected)) showBar(*bar);
}

bool TuneGrid::event(QEvent* event)
{
    // Pictures of the lanes are in the colours and letters of their time.
    if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange ||
        event->type() == QEvent::StyleChange) {
        m_faces.clear();
        layOut();
    }
    return QAbstractScrollArea::event(event);
}

int TuneGrid::readableCount() const
{
    return m_arrangement ? m_arrangement->positions.size() : 0;
}

ReadableItem TuneGrid::readableItem(int index) const
{
    arrange::PositionIndex const position(index);
    auto const& arranged = m_arrangement->positions[position];
    ReadableItem item;
    item.name = positionTitle(*m_arrangement, position) + QStringLiteral(", ") +
                patternWords(arranged.voicing);
    if (arranged.locked) item.name += tr(", kept");
    if (std::ranges::find(m_followed, position) != m_followed.end())
        item.name += tr(", followed");
    if (auto const odd = tune::oddBar(m_arrangement->tune.bars, arranged.position.bar))
        item.name += tr(", bar %1").arg(QString::fromStdString(oddWords(*odd)));
    for (SnagMark const& snag : m_snags)
        if (snag.bar == arranged.position.bar) item.name += tr(", snag: %1").arg(snag.words);
    if (LaneChord const* chord = chordOf(m_layout, position))
        item.box = rectOf(chord->stretch).translated(0, -verticalScrollBar()->value());
    if (!m_chosen.empty() && isChosen(position)) item.name += tr(", chosen with others");
    item.chosen = m_selected == position;
    return item;
}

void TuneGrid::focusInEvent(QFocusEvent*)
{
    updatePosition(m_selected);
    tellReadableEntered(*this);
}
void TuneGrid::focusOutEvent(QFocusEvent*) { updatePosition(m_selected); }

} // namespace ui
