#include "ui/variantlist.h"

#include "ui/signs.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double corner = 8;
constexpr double inset = 11;
constexpr double pictureWidth = 74; // with letters of the usual size

} // namespace

double VariantList::keySide() const
{
    return std::max(18.0, std::ceil(QFontMetricsF(scaledFont(*this, 0.85)).height()) + 2);
}

double VariantList::actionHeight() const
{
    return std::max(
        27.0, std::ceil(QFontMetricsF(scaledFont(*this, 0.95, QFont::DemiBold)).height()) + 8);
}

// Large letters make the fingers in the picture larger, as far as a quarter of the pane.
double VariantList::pictureScale() const
{
    double const wanted = fontMetrics().height() / 22.0;
    return std::max(1.0, std::min(wanted, viewport()->width() / (4 * pictureWidth)));
}

VariantList::VariantList(QWidget* parent) : QAbstractScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setMouseTracking(true);
    verticalScrollBar()->setSingleStep(24);
    setAccessibleName(tr("Shapes"));
    setAccessibleDescription(tr("Left-hand shapes for the chosen chord, best first. Up and "
                                "Down move through them, Space sounds one, Enter keeps it."));
}

void VariantList::setHarp(harp::Harp harp)
{
    m_harp = std::move(harp);
    viewport()->update();
}

void VariantList::setRows(std::vector<VariantRow> rows)
{
    m_rows = std::move(rows);
    m_layout.current.reset();
    m_pointed.reset();
    layOut();
    verticalScrollBar()->setValue(0);
}

void VariantList::setShown(std::optional<arrange::CandidateIndex> candidate)
{
    std::optional<int> current;
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (candidate && m_rows[i].variant.candidate == *candidate)
            current = static_cast<int>(i);
    m_layout.current = current;
    layOut();
    if (!current) return;
    showRow(*current);
    tellReadableFocus(*this, *current);
}

ReadableItem VariantList::readableItem(int index) const
{
    VariantRow const& told = row(index);
    ReadableItem item;
    item.name = QStringList{patternWords(told.voicing), told.where,
                            regretWords(told.variant.regret), reasonsOf(index, false)}
                    .join(QStringLiteral(", "));
    if (told.variant.locked) item.name += tr(" Kept.");
    item.box = rowBox(index).translated(0, -verticalScrollBar()->value());
    item.chosen = m_layout.current == index;
    return item;
}

void VariantList::layOut()
{
    QFontMetricsF const name(scaledFont(*this, 1.12, QFont::Bold));
    QFontMetricsF const small(scaledFont(*this, 0.92));
    m_layout.rows = static_cast<int>(m_rows.size());
    m_layout.rowHeight =
        std::ceil(name.height() + 2 * small.height() + std::max(34.0, small.height() + 20));
    m_layout.extra = 0;
    if (m_layout.current) {
        QRectF const text = textBox(QRectF(0, 0, rowBox(*m_layout.current).width(), 100));
        double const whole =
            small
                .boundingRect(QRectF(0, 0, text.width(), 10000), Qt::TextWordWrap,
                              reasonsOf(*m_layout.current, true))
                .height();
        double const usual = 2 * small.height();
        m_layout.extra = std::ceil(std::max(0.0, whole - usual) + actionHeight() + 10);
    }
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_layout.height())) - viewport()->height()));
    viewport()->update();
}

void VariantList::showRow(int row)
{
    QScrollBar* bar = verticalScrollBar();
    double const top = m_layout.top(row) - m_layout.margin;
    double const bottom = m_layout.top(row) + m_layout.heightOf(row) + m_layout.margin;
    if (bottom > bar->value() + viewport()->height())
        bar->setValue(static_cast<int>(bottom) - viewport()->height());
    if (top < bar->value()) bar->setValue(static_cast<int>(top));
}

QString VariantList::reasonsOf(int index, bool all) const
{
    QString text;
    for (std::string const& reason : row(index).variant.reasons) {
        QString sentence = QString::fromStdString(reason);
        if (!text.isEmpty()) text += all ? QStringLiteral("\n") : QStringLiteral(" ");
        if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
        if (!sentence.endsWith(QLatin1Char('.'))) sentence += QLatin1Char('.');
        text += sentence;
    }
    return text;
}

QString VariantList::useWords(int index) const
{
    return row(index).variant.locked ? tr("Let it change") : tr("Keep");
}

// Boxes are in the list's own height; the viewport shows a part of it.
QRectF VariantList::rowBox(int index) const
{
    return {m_layout.margin, m_layout.top(index), viewport()->width() - 2 * m_layout.margin,
            m_layout.heightOf(index)};
}

QRectF VariantList::pictureBox(QRectF const& box) const
{
    return {box.left() + inset, box.top() + inset, pictureWidth * pictureScale(),
            m_layout.rowHeight - 2 * inset};
}

QRectF VariantList::textBox(QRectF const& box) const
{
    double const left = pictureBox(box).right() + 12;
    return {left, box.top() + inset - 2, box.right() - inset - left,
            box.height() - 2 * inset + 4};
}

QRectF VariantList::hearBox(int index) const
{
    QRectF const text = textBox(rowBox(index));
    QFontMetricsF const metrics(scaledFont(*this, 0.95, QFont::DemiBold));
    double const width = metrics.horizontalAdvance(tr("Hear")) + 34;
    // In a narrow pane both buttons need the whole row.
    double const both =
        width + 7 + metrics.horizontalAdvance(useWords(index)) + 38;
    double const left = both > text.width() ? rowBox(index).left() + inset : text.left();
    return {left, rowBox(index).bottom() - actionHeight() - 9, width, actionHeight()};
}

QRectF VariantList::useBox(int index) const
{
    QRectF const hear = hearBox(index);
    QFontMetricsF const metrics(scaledFont(*this, 0.95, QFont::DemiBold));
    double const width = metrics.horizontalAdvance(useWords(index)) + 38;
    return {hear.right() + 7, hear.top(), width, actionHeight()};
}

void VariantList::paintEvent(QPaintEvent* event)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(viewport());
    // Strings stand low at the left in any language, and what is said of them beside them.
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.fillRect(event->rect(), colour(p.paper));
    painter.setRenderHint(QPainter::Antialiasing);
    double const scrolled = verticalScrollBar()->value();
    painter.translate(0, -scrolled);
    double const from = event->rect().top() + scrolled;
    double const to = event->rect().bottom() + scrolled;
    for (int i = 0; i < m_layout.rows; ++i) {
        if (m_layout.top(i) > to) break;
        if (m_layout.top(i) + m_layout.heightOf(i) >= from) paintRow(painter, i);
    }
}

void VariantList::paintRow(QPainter& painter, int index) const
{
    Palette const& p = paletteOf(*this);
    VariantRow const& shownRow = row(index);
    bool const current = m_layout.current == index;
    bool const chosen = shownRow.variant.chosen;
    bool const pointed = m_pointed && m_pointed->row == index;
    QRectF const box = rowBox(index).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.setPen(QPen(colour(current ? p.leaf : pointed ? p.rule : p.edge), current ? 2 : 1));
    painter.setBrush(colour(chosen ? p.leafWash : p.card));
    painter.drawRoundedRect(current ? box.adjusted(0.5, 0.5, -0.5, -0.5) : box, corner, corner);
    if (current && hasFocus()) {
        painter.setPen(QPen(faint(p, p.leaf, 0.35), 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box.adjusted(-2, -2, 2, 2), corner + 2, corner + 2);
    }
    paintPicture(painter, pictureBox(rowBox(index)), shownRow.voicing);

    QRectF const text = textBox(rowBox(index));
    QRectF name = text;
    name.setHeight(QFontMetricsF(scaledFont(*this, 1.12, QFont::Bold)).height());
    if (index < 9) {
        QRectF const key(text.right() - keySide(), text.top(), keySide(), keySide());
        painter.setPen(QPen(colour(p.edge), 1));
        painter.setBrush(colour(p.card));
        painter.drawRoundedRect(key.adjusted(0.5, 0.5, -0.5, -0.5), 4, 4);
        painter.setPen(colour(p.quiet));
        painter.setFont(scaledFont(*this, 0.85));
        painter.drawText(key, Qt::AlignCenter, QString::number(index + 1));
    }
    name.setRight(text.right() - keySide() - 6);
    if (shownRow.variant.locked) {
        paintSign(painter, Sign::Locked, {name.right() - 13, name.center().y() - 6.5, 13, 13},
                  colour(p.leaf));
        name.setRight(name.right() - 19);
    }
    painter.setFont(scaledFont(*this, 1.12, QFont::Bold));
    painter.setPen(colour(p.ink));
    QString const pattern = painter.fontMetrics().elidedText(
        patternWords(shownRow.voicing), Qt::ElideRight, static_cast<int>(name.width()));
    painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter, pattern);
    name.setLeft(name.left() + painter.fontMetrics().horizontalAdvance(pattern) + 8);
    painter.setFont(scaledFont(*this, 0.88));
    painter.setPen(colour(p.quiet));
    if (name.width() > 30)
        painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter,
                         painter.fontMetrics().elidedText(shownRow.where, Qt::ElideRight,
                                                          static_cast<int>(name.width())));

    QFont const small = scaledFont(*this, 0.92);
    QFontMetricsF const metrics(small);
    double const actions = current ? actionHeight() + 10 : 0;
    double const barBlock = metrics.height() + 2;
    QRectF reasons(text.left(), name.bottom() + 2, text.width(),
                   box.bottom() - 8 - actions - barBlock - name.bottom() - 2);
    painter.setFont(small);
    painter.setPen(colour(p.quiet));
    if (current)
        painter.drawText(reasons, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                         reasonsOf(index, true));
    else
        painter.drawText(reasons, Qt::AlignLeft | Qt::AlignTop,
                         elidedLines(reasonsOf(index, false), small, text.width(), 2));

    double const middle = box.bottom() - 8 - actions - barBlock / 2;
    QString const words = regretWords(shownRow.variant.regret);
    double const wordsWidth = metrics.horizontalAdvance(words);
    double const barWidth = text.width() - wordsWidth - 9;
    if (barWidth > 24) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(p.edge));
        painter.drawRoundedRect(QRectF(text.left(), middle - 2, barWidth, 4), 2, 2);
        painter.setBrush(colour(p.leaf));
        double const filled = std::max(4.0, barWidth * regretShare(shownRow.variant.regret));
        painter.drawRoundedRect(QRectF(text.left(), middle - 2, filled, 4), 2, 2);
    }
    painter.setPen(colour(p.quiet));
    painter.drawText(QRectF(text.right() - wordsWidth - 1, middle - metrics.height() / 2,
                            wordsWidth + 2, metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, words);
    if (current) paintActions(painter, index);
}

void VariantList::paintActions(QPainter& painter, int index) const
{
    Palette const& p = paletteOf(*this);
    auto const button = [&](QRectF const& box, Sign sign, QString const& words, bool main,
                            Part part) {
        bool const pointed = m_pointed == Hit{index, part};
        painter.setPen(QPen(colour(pointed ? p.ink : main ? p.leaf : p.rule), 1));
        painter.setBrush(colour(main ? p.leaf : p.raised));
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
        QColor const ink = colour(main ? p.onLeaf : p.ink);
        paintSign(painter, sign, {box.left() + 9, box.center().y() - 6, 12, 12}, ink);
        painter.setFont(scaledFont(*this, 0.95, QFont::DemiBold));
        painter.setPen(ink);
        painter.drawText(box.adjusted(26, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words);
    };
    bool const locked = row(index).variant.locked;
    button(hearBox(index), Sign::Play, tr("Hear"), false, Part::Hear);
    button(useBox(index), locked ? Sign::Unlocked : Sign::Locked, useWords(index), !locked,
           Part::Use);
}

// A window on the harp: the strings round the shape, low left, with the fingers on them, later
// notes higher.
void VariantList::paintPicture(QPainter& painter, QRectF const& box,
                               arrange::Voicing const& voicing) const
{
    Palette const& p = paletteOf(*this);
    if (!m_harp) return;
    harp::StringIndex lowest = voicing.rootString;
    harp::StringIndex highest = voicing.rootString;
    for (arrange::VoicedNote const& note : voicing.notes) {
        lowest = std::min(lowest, note.string);
        highest = std::max(highest, note.string);
    }
    constexpr harp::StringIndex first = 0;
    lowest = std::max(first, lowest - 1);
    harp::StringIndex const last =
        std::min(m_harp->highest(), std::max(highest + 1, lowest + 12));
    lowest = std::max(first, std::min(lowest, last - 12));
    double const apart = box.width() / std::max(1, last - lowest);
    auto const xOf = [&](harp::StringIndex string) {
        return box.left() + apart * (string - lowest);
    };
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (harp::StringIndex i = lowest; i <= last; ++i) {
        harp::StringColour const kind = colourOf(m_harp->string(i));
        bool const red = kind == harp::StringColour::Red;
        bool const blue = kind == harp::StringColour::Blue;
        QColor const ink = red    ? faint(p, p.red, 0.85)
                           : blue ? faint(p, p.blue, 0.85)
                                  : faint(p, p.string, 0.55);
        // Filled and on whole pixels, which is many times as fast as lines.
        int const thick = red || blue ? 2 : 1;
        int const left = qRound(xOf(i) - thick / 2.0);
        int const bottom = qRound(box.bottom());
        int const dash = blue ? 5 : bottom;
        int const gap = blue ? 3 : 0;
        for (int y = qRound(box.top()); y < bottom; y += dash + gap)
            painter.fillRect(left, y, thick, std::min(dash, bottom - y), ink);
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
    // Notes plucked together lie at one height, rolled ones a little apart.
    double const radius = 6.4 * pictureScale();
    std::vector<double> times;
    for (arrange::VoicedNote const& note : voicing.notes) {
        bool const later = times.empty() || note.at != voicing.notes[times.size() - 1].at ||
                           note.rollOrder > 0;
        times.push_back(times.empty() ? 0 : times.back() + (later ? 1 : 0));
    }
    double const latest = times.empty() ? 0 : times.back();
    QPolygonF discs;
    for (std::size_t i = 0; i < times.size(); ++i) {
        double const rise = latest > 0 ? times[i] / latest : 0.5;
        discs << QPointF(xOf(voicing.notes[i].string),
                         box.bottom() - radius - rise * (box.height() - 2 * radius));
    }
    painter.setPen(QPen(faint(p, p.leaf, 0.5), 1.4));
    painter.setBrush(Qt::NoBrush);
    for (std::size_t i = 1; i < times.size(); ++i) {
        bool const afterBlock = i > 1 && times[i - 1] == times[i - 2];
        if (!afterBlock || times[i] == times[i - 1])
            painter.drawLine(discs[static_cast<int>(i) - 1], discs[static_cast<int>(i)]);
    }
    QFont number = scaledFont(*this, 0.74, QFont::Bold);
    if (QFontMetricsF(number).capHeight() > 1.5 * radius)
        number.setPixelSize(qRound(1.6 * radius)); // as large as a disc holds
    painter.setFont(number);
    for (int i = 0; i < discs.size(); ++i) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour(p.leaf));
        painter.drawEllipse(discs[i], radius, radius);
        painter.setPen(colour(p.onLeaf));
        painter.drawText(
            QRectF(discs[i] - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius)),
            Qt::AlignCenter | Qt::TextDontClip,
            QString::number(voicing.notes[static_cast<std::size_t>(i)].finger));
    }
}

std::optional<VariantList::Hit> VariantList::hitAt(QPointF const& point) const
{
    QPointF const inList(point.x(), point.y() + verticalScrollBar()->value());
    auto const found = m_layout.rowAt(inList.y());
    if (!found || !rowBox(*found).contains(inList)) return std::nullopt;
    if (m_layout.current == found) {
        if (hearBox(*found).contains(inList)) return Hit{*found, Part::Hear};
        if (useBox(*found).contains(inList)) return Hit{*found, Part::Use};
    }
    return Hit{*found, Part::Row};
}

void VariantList::act(Hit const& hit)
{
    VariantRow const& shownRow = row(hit.row);
    switch (hit.part) {
    case Part::Row:
        emit shownClicked(shownRow.variant.candidate);
        return;
    case Part::Hear:
        emit hearClicked(shownRow.variant.candidate);
        return;
    case Part::Use:
        if (shownRow.variant.locked)
            emit unlockClicked();
        else
            emit useClicked(shownRow.variant.candidate);
        return;
    }
}

void VariantList::go(int index)
{
    if (m_rows.empty()) return;
    int const last = static_cast<int>(m_rows.size()) - 1;
    emit shownClicked(row(std::clamp(index, 0, last)).variant.candidate);
}

void VariantList::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    if (auto const hit = hitAt(event->position())) act(*hit);
}

void VariantList::mouseDoubleClickEvent(QMouseEvent* event)
{
    auto const hit = hitAt(event->position());
    if (event->button() != Qt::LeftButton || !hit) return;
    if (hit->part != Part::Row)
        act(*hit);
    else
        emit useClicked(row(hit->row).variant.candidate);
}

void VariantList::mouseMoveEvent(QMouseEvent* event)
{
    auto const hit = hitAt(event->position());
    if (hit == m_pointed) return;
    m_pointed = hit;
    viewport()->setCursor(hit ? Qt::PointingHandCursor : Qt::ArrowCursor);
    viewport()->update();
}

void VariantList::keyPressEvent(QKeyEvent* event)
{
    int const current = m_layout.current.value_or(0);
    int const page = std::max(
        1, static_cast<int>(viewport()->height() / (m_layout.rowHeight + m_layout.gap)) - 1);
    bool const some = m_layout.current.has_value();
    switch (event->key()) {
    case Qt::Key_Up:
        go(current - 1);
        return;
    case Qt::Key_Down:
        go(some ? current + 1 : 0);
        return;
    case Qt::Key_PageUp:
        go(current - page);
        return;
    case Qt::Key_PageDown:
        go(current + page);
        return;
    case Qt::Key_Home:
        go(0);
        return;
    case Qt::Key_End:
        go(static_cast<int>(m_rows.size()) - 1);
        return;
    case Qt::Key_Space:
        if (some) emit hearClicked(row(current).variant.candidate);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (some) emit useClicked(row(current).variant.candidate);
        return;
    case Qt::Key_Escape:
    case Qt::Key_Left:
        emit backClicked();
        return;
    default:
        break;
    }
    bool const bare = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    int const rank = event->key() - Qt::Key_1;
    if (bare && rank >= 0 && rank < 9 && rank < static_cast<int>(m_rows.size())) {
        emit useClicked(row(rank).variant.candidate);
        return;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void VariantList::resizeEvent(QResizeEvent*)
{
    layOut();
    if (m_layout.current) showRow(*m_layout.current);
}

bool VariantList::event(QEvent* event)
{
    if (event->type() == QEvent::FontChange) layOut();
    return QAbstractScrollArea::event(event);
}

bool VariantList::viewportEvent(QEvent* event)
{
    if (event->type() == QEvent::Leave) {
        m_pointed.reset();
        viewport()->update();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

void VariantList::focusInEvent(QFocusEvent*)
{
    viewport()->update();
    tellReadableEntered(*this);
}
void VariantList::focusOutEvent(QFocusEvent*) { viewport()->update(); }

} // namespace ui
