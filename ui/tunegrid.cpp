#include "ui/tunegrid.h"

#include "core/tune/edit/barsums.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double corner = 7;

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

void TuneGrid::setFollowed(std::vector<int> positions)
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

void TuneGrid::setSelected(std::optional<int> position)
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

void TuneGrid::setChosen(std::vector<int> positions)
{
    if (positions.size() < 2) positions.clear();
    if (m_chosen == positions) return;
    for (int const position : m_chosen) updatePosition(position);
    m_chosen = std::move(positions);
    for (int const position : m_chosen) updatePosition(position);
}

bool TuneGrid::isChosen(int position) const
{
    return position == m_selected || std::ranges::binary_search(m_chosen, position);
}

void TuneGrid::setPlayingBar(std::optional<int> bar)
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

LaneMeasure TuneGrid::measured() const
{
    QFontMetricsF const large(scaledFont(*this, 1.25, QFont::Bold));
    QFontMetricsF const plain(font());
    LaneMeasure measure;
    measure.width = viewport()->width();
    measure.height = viewport()->height();
    measure.nameHeight = std::ceil(large.height()) + 5;
    measure.footHeight = std::ceil(plain.height()) + 11;
    measure.gutter = std::ceil(plain.horizontalAdvance(tr("3 times"))) + 6;
    measure.narrowestBar = plain.averageCharWidth() * 16;
    measure.gap = 8;
    return measure;
}

LaneFonts TuneGrid::fonts() const
{
    return {scaledFont(*this, 1.2, QFont::Bold), scaledFont(*this, 1.2),
            scaledFont(*this, 0.95, QFont::DemiBold), scaledFont(*this, 0.82),
            scaledFont(*this, 1.6, QFont::Bold)};
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

LaneLabel TuneGrid::labelOf(LaneChord const& chord) const
{
    auto const& arranged = m_arrangement->positions[static_cast<std::size_t>(chord.position)];
    LaneLabel label;
    label.chord = chord;
    label.name = QString::fromStdString(music::shown(arranged.position.chord));
    if (!passWords(*m_arrangement, chord.position).isEmpty())
        label.time =
            QString::number(arranged.position.played.front().pass) + QChar(0x00D7);
    label.pattern = patternWords(arranged.voicing);
    label.drawn = drawnAt(*m_arrangement, chord.position, m_selected);
    label.rests = arranged.voicing.notes.empty();
    if (arranged.locked)
        label.standing = Standing::Kept;
    else if (std::ranges::find(m_followed, chord.position) != m_followed.end())
        label.standing = Standing::Followed;
    return label;
}

LaneFace TuneGrid::faceOf(std::size_t lane) const
{
    LaneFace face;
    face.lane = m_layout.lanes[lane];
    for (int string = m_layout.lowestString; string <= m_layout.highestString; ++string)
        face.strings.push_back(m_arrangement->harp.string(string).open.letter);
    if (face.lane.timesPlayed == 2) face.times = tr("twice");
    if (face.lane.timesPlayed > 2) face.times = tr("%1 times").arg(face.lane.timesPlayed);
    for (LaneBar const& place : m_layout.bars) {
        if (place.lane != static_cast<int>(lane)) continue;
        tune::Bar const& bar = m_arrangement->tune.bars[static_cast<std::size_t>(place.bar)];
        auto const index = static_cast<std::size_t>(place.bar);
        double const level =
            index < m_difficulty.bars.size() ? m_difficulty.bars[index].level : 0;
        bool const odd = tune::oddBar(m_arrangement->tune.bars, place.bar).has_value();
        face.bars.push_back({place.box, numberWords(place), level, level > m_level + 0.05, odd,
                             bar.repeatCloses || bar.closes == tune::BarLine::Double ||
                                 bar.closes == tune::BarLine::Final,
                             bar.repeatOpens, bar.repeatCloses});
        for (LaneChord const& chord : place.chords) face.labels.push_back(labelOf(chord));
        for (std::size_t i = 0; i < m_snags.size(); ++i) {
            if (m_snags[i].bar != place.bar) continue;
            LaneSnag mark;
            mark.bar = place.bar;
            mark.x = xAt(place, m_snags[i].at, bar.length);
            mark.y = snagHeight(face.lane, m_snags[i].string);
            mark.snag = static_cast<int>(i);
            mark.open = !m_snags[i].decided;
            face.snags.push_back(mark);
        }
    }
    return face;
}

// On its string, where the note would be; without a string near the foot of the lane.
double TuneGrid::snagHeight(Lane const& lane, std::optional<int> string) const
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
        bar->setValue(static_cast<int>(bottom) - viewport()->height());
}

void TuneGrid::updateBox(ui::Box const& box)
{
    viewport()->update(rectOf(box)
                           .adjusted(-6, -4, 6, 4)
                           .translated(0, -verticalScrollBar()->value())
                           .toAlignedRect());
}

void TuneGrid::updatePosition(std::optional<int> position)
{
    if (!position) return;
    if (LaneChord const* chord = chordOf(m_layout, *position)) updateBox(chord->stretch);
}

bool TuneGrid::sharesStretch(std::optional<int> position) const
{
    LaneBar const* bar = position ? barOf(m_layout, *position) : nullptr;
    LaneChord const* here = position ? chordOf(m_layout, *position) : nullptr;
    return bar && std::ranges::any_of(bar->chords, [here](LaneChord const& other) {
               return other.position != here->position && other.stretch == here->stretch;
           });
}

QPixmap const& TuneGrid::painted(std::size_t lane)
{
    auto& [picture, stale] = m_pictures[lane];
    double const scale = devicePixelRatioF();
    ui::Box const box = paintedBox(m_faces[lane].lane);
    QSize const size(static_cast<int>(std::ceil(box.width * scale)),
                     static_cast<int>(std::ceil(box.height * scale)));
    bool const fits = picture.size() == size && picture.devicePixelRatio() == scale;
    if (fits && !stale) return picture;
    stale = false;
    if (!fits) picture = QPixmap(size); // else its memory serves again
    picture.setDevicePixelRatio(scale);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.translate(-box.x, -box.y);
    paintLane(painter, m_faces[lane], fonts(), paletteOf(*this));
    ++m_lanesPainted;
    return picture;
}

void TuneGrid::paintEvent(QPaintEvent* event)
{
    QPainter painter(viewport());
    painter.fillRect(event->rect(), colour(paletteOf(*this).paper));
    painter.setRenderHint(QPainter::Antialiasing);
    double const scrolled = verticalScrollBar()->value();
    painter.translate(0, -scrolled);
    QRectF const seen = QRectF(event->rect()).translated(0, scrolled);
    for (std::size_t i = 0; i < m_faces.size(); ++i) {
        Lane const& lane = m_faces[i].lane;
        ui::Box const box = paintedBox(lane);
        if (!seen.intersects(rectOf(box).adjusted(-6, -4, 6, 4))) continue;
        paintGround(painter, lane);
        painter.drawPixmap(QPointF(box.x, box.y), painted(i));
        paintAbove(painter, lane);
    }
}

// What is chosen, pointed at and sounding lies below the strings.
void TuneGrid::paintGround(QPainter& painter, Lane const& lane)
{
    Palette const& p = paletteOf(*this);
    for (LaneBar const& bar : m_layout.bars) {
        if (bar.bar < lane.firstBar || bar.bar > lane.lastBar) continue;
        bool const inPassage =
            m_passage && bar.bar >= m_passage->firstBar && bar.bar <= m_passage->lastBar;
        if (inPassage)
            painter.fillRect(rectOf(bar.box).adjusted(0, 1, 0, 0), colour(p.leafWash, 0.75));
        if (m_playingBar == bar.bar)
            painter.fillRect(QRectF(bar.box.x, lane.strings.y - 4, bar.box.width, 4),
                             colour(p.amber));
        for (LaneChord const& chord : bar.chords) {
            QRectF const box = rectOf(chord.stretch).adjusted(1.5, 1, -0.5, -0.5);
            if (isChosen(chord.position)) {
                painter.setPen(chord.position == m_selected ? QPen(Qt::NoPen)
                                                            : QPen(colour(p.leaf), 1.2));
                painter.setBrush(colour(p.leafWash));
                painter.drawRoundedRect(box, corner, corner);
            } else if (chord.position == m_pointed && !sharesStretch(m_pointed)) {
                painter.setPen(QPen(faint(p, p.rule, 0.7), 1));
                painter.setBrush(Qt::NoBrush);
                painter.drawRoundedRect(box, corner, corner);
            }
        }
    }
}

void TuneGrid::paintAbove(QPainter& painter, Lane const& lane)
{
    Palette const& p = paletteOf(*this);
    for (LaneBar const& bar : m_layout.bars) { // the ends of a passage, as brackets
        if (!m_passage || bar.bar < lane.firstBar || bar.bar > lane.lastBar) continue;
        constexpr double thick = 3;
        QRectF const box = rectOf(bar.box).adjusted(0, 1, 0, -1);
        if (bar.bar == m_passage->firstBar)
            painter.fillRect(QRectF(box.left() - 1, box.top(), thick, box.height()),
                             colour(p.leaf));
        if (bar.bar == m_passage->lastBar)
            painter.fillRect(QRectF(box.right() - 2, box.top(), thick, box.height()),
                             colour(p.leaf));
    }
    LaneBar const* bar = m_selected ? barOf(m_layout, *m_selected) : nullptr;
    if (!bar || bar->bar < lane.firstBar || bar->bar > lane.lastBar) return;
    QRectF const box =
        rectOf(chordOf(m_layout, *m_selected)->stretch).adjusted(1.5, 1, -0.5, -0.5);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour(p.leaf), 2));
    painter.drawRoundedRect(box, corner, corner);
    if (!hasFocus()) return;
    painter.setPen(QPen(faint(p, p.leaf, 0.35), 3));
    painter.drawRoundedRect(box.adjusted(-2, -2, 2, 2), corner + 2, corner + 2);
}

// "3"; with the time of a bar that is played one time only, "1st 8".
QString TuneGrid::numberWords(LaneBar const& place) const
{
    tune::Bar const& bar = m_arrangement->tune.bars[static_cast<std::size_t>(place.bar)];
    QString number = bar.number > 0 ? QString::number(bar.number) : QString();
    if (auto const odd = tune::oddBar(m_arrangement->tune.bars, place.bar))
        number = (odd->off > music::Length{} ? tr("%1 too long") : tr("%1 too short"))
                     .arg(number)
                     .trimmed();
    if (bar.endings.empty()) return number;
    static char const* const ordinals[] = {QT_TR_NOOP("1st time"), QT_TR_NOOP("2nd time"),
                                           QT_TR_NOOP("3rd time")};
    int const ending = bar.endings.front();
    QString const time = ending >= 1 && ending <= 3 ? tr(ordinals[ending - 1])
                                                    : tr("time %1").arg(ending);
    return QStringLiteral("%1 · %2").arg(time, number);
}

// "Bar 3 asks for level 2.4", and why.
QString TuneGrid::difficultyWords(int bar) const
{
    if (static_cast<std::size_t>(bar) >= m_difficulty.bars.size()) return {};
    hands::BarDifficulty const& asked = m_difficulty.bars[static_cast<std::size_t>(bar)];
    QString words = tr("%1: difficulty %2")
                        .arg(barTitle(m_arrangement->tune, bar))
                        .arg(asked.level, 0, 'f', 1);
    if (auto const odd = tune::oddBar(m_arrangement->tune.bars, bar))
        words += tr("\nThis bar is %1.").arg(QString::fromStdString(oddWords(*odd)));
    constexpr std::size_t told = 4;
    for (std::size_t i = 0; i < std::min(told, asked.reasons.size()); ++i)
        words += tr("\n%1: %2")
                     .arg(asked.reasons[i].level, 0, 'f', 1)
                     .arg(QString::fromStdString(asked.reasons[i].words));
    return words;
}

std::optional<int> TuneGrid::under(QPointF const& point) const
{
    return positionAt(m_layout, point.x(), point.y() + verticalScrollBar()->value(),
                      m_selected);
}

bool TuneGrid::onNoteOfTune(QPointF const& point) const
{
    constexpr double near = 9;
    double const y = point.y() + verticalScrollBar()->value();
    for (Lane const& lane : m_layout.lanes)
        for (Pluck const& pluck : lane.plucks)
            if (pluck.fromTune && pluck.hand == harp::Side::Right &&
                std::abs(pluck.x - point.x()) <= near && std::abs(pluck.y - y) <= near)
                return true;
    return false;
}

std::optional<int> TuneGrid::barUnder(QPointF const& point) const
{
    return barAt(m_layout, point.x(), point.y() + verticalScrollBar()->value());
}

// The passage, or the selected bar where there is none, longer or shorter at its far end.
void TuneGrid::stretchPassage(int bars)
{
    LaneBar const* selected = m_selected ? barOf(m_layout, *m_selected) : nullptr;
    if (!selected) return;
    if (!m_passage || !m_passageFrom) m_passageFrom = selected->bar;
    int const from = *m_passageFrom;
    int to = from;
    if (m_passage) to = m_passage->firstBar == from ? m_passage->lastBar : m_passage->firstBar;
    int const last = static_cast<int>(m_layout.bars.size()) - 1;
    emit passageChosen(passageBetween(from, std::clamp(to + bars, 0, last)));
    if (!m_passage) return;
    int const end = m_passage->firstBar == from ? m_passage->lastBar : m_passage->firstBar;
    showBar(m_layout.bars[static_cast<std::size_t>(end)]);
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
                               m_snags[static_cast<std::size_t>(snag->snag)].words,
                               viewport());
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
    bool const together = event->modifiers() & Qt::AltModifier;
    auto const go = [this, together](Step step) {
        if (!m_selected) return;
        int const next = neighbour(m_layout, *m_selected, step);
        if (!together)
            emit positionClicked(next);
        else if (next != *m_selected) // back over chosen ones lets them go
            emit positionToggled(isChosen(next) ? *m_selected : next);
    };
    if (event->modifiers() & Qt::ShiftModifier) {
        int const lane = m_layout.barsPerLane;
        switch (event->key()) {
        case Qt::Key_Left:
            return stretchPassage(-1);
        case Qt::Key_Right:
            return stretchPassage(+1);
        case Qt::Key_Up:
            return stretchPassage(-lane);
        case Qt::Key_Down:
            return stretchPassage(+lane);
        default:
            break;
        }
    }
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
    case Qt::Key_S:
        openSnagHere();
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

void TuneGrid::focusInEvent(QFocusEvent*) { updatePosition(m_selected); }
void TuneGrid::focusOutEvent(QFocusEvent*) { updatePosition(m_selected); }

} // namespace ui
