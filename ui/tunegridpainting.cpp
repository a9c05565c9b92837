#include "ui/tunegrid.h"

#include "core/tune/edit/barsums.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double corner = 7;

} // namespace

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

LaneLabel TuneGrid::labelOf(LaneChord const& chord) const
{
    auto const& arranged = m_arrangement->positions[chord.position];
    LaneLabel label;
    label.chord = chord;
    label.name = QString::fromStdString(music::shown(arranged.position.chord));
    if (!passWords(*m_arrangement, chord.position).isEmpty())
        label.time = QString::number(arranged.position.played.front().pass) + QChar(0x00D7);
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
    for (harp::StringIndex string = m_layout.lowestString; string <= m_layout.highestString;
         ++string)
        face.strings.push_back(m_arrangement->harp.string(string).open.letter);
    if (face.lane.timesPlayed == 2) face.times = tr("twice");
    if (face.lane.timesPlayed > 2) face.times = tr("%1 times").arg(face.lane.timesPlayed);
    for (LaneBar const& place : m_layout.bars) {
        if (place.lane != static_cast<int>(lane)) continue;
        tune::Bar const& bar = m_arrangement->tune.bars[place.bar];
        double const level =
            m_difficulty.bars.holds(place.bar) ? m_difficulty.bars[place.bar].level : 0;
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
    tune::Bar const& bar = m_arrangement->tune.bars[place.bar];
    QString number = bar.number > 0 ? QString::number(bar.number) : QString();
    if (auto const odd = tune::oddBar(m_arrangement->tune.bars, place.bar))
        number = (odd->off > music::Length{} ? tr("%1 too long") : tr("%1 too short"))
                     .arg(number)
                     .trimmed();
    if (QString const words = formWords(m_arrangement->tune, place.bar); !words.isEmpty())
        number = number.isEmpty() ? words : QStringLiteral("%1 · %2").arg(words, number);
    if (bar.endings.empty()) return number;
    static char const* const ordinals[] = {QT_TR_NOOP("1st time"), QT_TR_NOOP("2nd time"),
                                           QT_TR_NOOP("3rd time")};
    int const ending = bar.endings.front();
    QString const time =
        ending >= 1 && ending <= 3 ? tr(ordinals[ending - 1]) : tr("time %1").arg(ending);
    return QStringLiteral("%1 · %2").arg(time, number);
}

} // namespace ui
