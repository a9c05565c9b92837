#include "ui/pageview/pageview.h"

#include "ui/motion.h"
#include "ui/pageview/pagebar.h"
#include "ui/paint/inches.h"
#include "ui/paint/sheetpainter.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double zoomStep = 1.2;
constexpr double leastZoom = 0.25;
constexpr double mostZoom = 4;

} // namespace

PageView::PageView(QWidget* parent)
    : QAbstractScrollArea(parent), SpokenAs(QAccessible::Document), m_bar(new PageBar(this))
{
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Sheet"));
    setAccessibleDescription(tr("The printed sheet. Left and Right go from chord to chord."));
    viewport()->setMouseTracking(false);
    setViewportMargins(0, 0, 0, m_bar->sizeHint().height());
    connect(m_bar, &PageBar::turned, this, &PageView::turnPage);
    connect(m_bar, &PageBar::zoomInClicked, this, &PageView::zoomIn);
    connect(m_bar, &PageBar::zoomOutClicked, this, &PageView::zoomOut);
    connect(m_bar, &PageBar::fitWidthClicked, this, &PageView::fitWidth);
    connect(m_bar, &PageBar::fitPageClicked, this, &PageView::fitPage);
}

void PageView::setDocument(sheet::Document document)
{
    m_document = std::move(document);
    m_pictures.clear();
    layOut();
}

void PageView::setChosenPosition(std::optional<arrange::PositionIndex> position)
{
    if (m_chosen == position) return;
    m_chosen = position;
    if (m_chosen)
        if (auto const area = sheet::areaOfPosition(m_document, *m_chosen)) reveal(*area);
    viewport()->update();
}

void PageView::setSoundingBar(std::optional<tune::BarIndex> bar, int pass)
{
    if (m_sounding == bar && m_soundingPass == pass) return;
    m_sounding = bar;
    m_soundingPass = pass;
    if (m_sounding)
        if (auto const area = sheet::areaOfBar(m_document, *m_sounding, pass)) reveal(*area);
    viewport()->update();
}

double PageView::pixelsPerMmAtOne() const { return logicalDpiX() / mmPerInch; }

double PageView::zoom() const { return m_scale / pixelsPerMmAtOne(); }

QSize PageView::sizeHint() const { return {640, 800}; }

void PageView::setZoom(double zoom)
{
    m_fit = Fit::None;
    setScale(std::clamp(zoom, leastZoom, mostZoom) * pixelsPerMmAtOne());
}

void PageView::zoomIn() { setZoom(zoom() * zoomStep); }
void PageView::zoomOut() { setZoom(zoom() / zoomStep); }

void PageView::fitWidth()
{
    m_fit = Fit::Width;
    layOut();
}

void PageView::fitPage()
{
    m_fit = Fit::Page;
    layOut();
}

// Keeps what stands in the middle of the view in its middle.
void PageView::setScale(double pixelsPerMm)
{
    double const middle = verticalScrollBar()->value() + viewport()->height() / 2.0;
    double const share = m_stack.height > 0 ? middle / m_stack.height : 0;
    m_scale = pixelsPerMm;
    m_pictures.clear();
    layOut();
    verticalScrollBar()->setValue(
        static_cast<int>(std::lround(share * m_stack.height - viewport()->height() / 2.0)));
    emit zoomChanged(zoom());
}

void PageView::layOut()
{
    double const before = m_scale;
    double const width = viewport()->width();
    if (m_fit == Fit::Width) m_scale = scaleToWidth(m_document, width);
    if (m_fit == Fit::Page) m_scale = scaleToPage(m_document, width, viewport()->height());
    m_stack = pageStack(m_document, m_scale, width);
    horizontalScrollBar()->setPageStep(viewport()->width());
    horizontalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_stack.width)) - viewport()->width()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(40);
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_stack.height)) - viewport()->height()));
    if (before != m_scale) {
        m_pictures.clear();
        if (m_fit != Fit::None) emit zoomChanged(zoom());
    }
    showPlace();
    viewport()->update();
}

// The bar stands under the view, above a horizontal scroll bar.
void PageView::placeBar()
{
    QRect const view = viewport()->geometry();
    m_bar->setGeometry(view.left(), view.bottom() + 1, view.width(),
                       m_bar->sizeHint().height());
}

void PageView::showPlace()
{
    m_bar->setPage(page(), static_cast<int>(m_stack.leaves.size()));
    m_bar->setZoom(zoom());
    int const words =
        m_bar->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width();
    if (words > minimumWidth()) setMinimumWidth(words);
}

int PageView::page() const
{
    double const middle = verticalScrollBar()->value() + viewport()->height() / 2.0;
    int page = 0;
    for (PageStack::Leaf const& leaf : m_stack.leaves)
        if (page == 0 || leaf.top <= middle) ++page;
    return page;
}

QRectF PageView::onScreen(sheet::PageArea const& area) const
{
    PageStack::Leaf const& leaf = m_stack.leaves[static_cast<std::size_t>(area.page)];
    auto const& [topLeft, bottomRight, bar, position] = area.area;
    return {leaf.left + topLeft.x * m_scale, leaf.top + topLeft.y * m_scale,
            (bottomRight.x - topLeft.x) * m_scale, (bottomRight.y - topLeft.y) * m_scale};
}

// Scrolls no further than it must.
void PageView::reveal(sheet::PageArea const& area)
{
    if (m_stack.leaves.empty()) return;
    QRectF const where = onScreen(area);
    auto const into = [](QScrollBar* bar, double from, double to, int room) {
        if (from < bar->value())
            bar->setValue(static_cast<int>(from) - room / 12);
        else if (to > bar->value() + room)
            bar->setValue(lessMotion() ? static_cast<int>(from) - room / 12
                                       : static_cast<int>(to) - room + room / 12);
    };
    into(verticalScrollBar(), where.top(), where.bottom(), viewport()->height());
    into(horizontalScrollBar(), where.left(), where.right(), viewport()->width());
}

QPixmap const& PageView::picture(std::size_t page)
{
    auto const found = m_pictures.find(page);
    if (found != m_pictures.end()) return found->second;
    PageStack::Leaf const& leaf = m_stack.leaves[page];
    double const ratio = devicePixelRatioF();
    QPixmap picture(QSizeF(leaf.width * ratio, leaf.height * ratio).toSize());
    picture.setDevicePixelRatio(ratio);
    picture.fill(SheetColours{}.paper);
    QPainter painter(&picture);
    painter.scale(m_scale, m_scale);
    paintPage(painter, m_document.pages[page]);
    return m_pictures.emplace(page, std::move(picture)).first->second;
}

void PageView::drawLights(QPainter& painter, std::size_t page) const
{
    QColor light = palette().color(QPalette::Highlight);
    if (m_sounding) {
        auto const area = sheet::areaOfBar(m_document, *m_sounding, m_soundingPass);
        if (area && static_cast<std::size_t>(area->page) == page) {
            light.setAlpha(45);
            painter.fillRect(onScreen(*area), light);
        }
    }
    if (m_chosen) {
        auto const area = sheet::areaOfPosition(m_document, *m_chosen);
        if (area && static_cast<std::size_t>(area->page) == page) {
            light.setAlpha(30);
            painter.setBrush(light);
            light.setAlpha(200);
            painter.setPen(QPen(light, 1.5));
            painter.drawRoundedRect(onScreen(*area), 4, 4);
        }
    }
}

void PageView::paintEvent(QPaintEvent*)
{
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(viewport()->rect(), palette().color(QPalette::Window));
    painter.translate(-horizontalScrollBar()->value(), -verticalScrollBar()->value());
    QRectF const view(horizontalScrollBar()->value(), verticalScrollBar()->value(),
                      viewport()->width(), viewport()->height());
    for (std::size_t page = 0; page < m_stack.leaves.size(); ++page) {
        PageStack::Leaf const& leaf = m_stack.leaves[page];
        QRectF const where(leaf.left, leaf.top, leaf.width, leaf.height);
        if (!where.intersects(view)) {
            m_pictures.erase(page);
            continue;
        }
        painter.drawPixmap(where.topLeft(), picture(page));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Mid), 1));
        painter.drawRect(where);
        drawLights(painter, page);
    }
    if (hasFocus()) {
        painter.resetTransform();
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PageView::resizeEvent(QResizeEvent*)
{
    placeBar();
    layOut();
}

void PageView::scrollContentsBy(int dx, int dy)
{
    QAbstractScrollArea::scrollContentsBy(dx, dy);
    viewport()->update();
    showPlace();
}

void PageView::choose(std::optional<sheet::Place> place)
{
    if (!place) return;
    if (place->position)
        emit positionClicked(*place->position);
    else
        emit barClicked(place->bar);
}

void PageView::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton) return;
    auto const hit = onPage(m_stack, event->position().x() + horizontalScrollBar()->value(),
                            event->position().y() + verticalScrollBar()->value());
    if (hit)
        choose(sheet::placeAt(m_document.pages[static_cast<std::size_t>(hit->page)], hit->at));
}

void PageView::wheelEvent(QWheelEvent* event)
{
    if (!(event->modifiers() & Qt::ControlModifier)) {
        QAbstractScrollArea::wheelEvent(event);
        return;
    }
    constexpr double notch = 120; // Qt: eighths of a degree in one step of a usual wheel
    setZoom(zoom() * std::pow(zoomStep, event->angleDelta().y() / notch));
    event->accept();
}

void PageView::turnPage(int by)
{
    int const top = verticalScrollBar()->value();
    std::size_t page = 0;
    while (page + 1 < m_stack.leaves.size() && m_stack.leaves[page + 1].top <= top + 20) ++page;
    auto const last = static_cast<int>(m_stack.leaves.size()) - 1;
    int const wanted = std::clamp(static_cast<int>(page) + by, 0, std::max(last, 0));
    if (m_stack.leaves.empty()) return;
    verticalScrollBar()->setValue(
        static_cast<int>(m_stack.leaves[static_cast<std::size_t>(wanted)].top) - 10);
}

void PageView::keyPressEvent(QKeyEvent* event)
{
    auto const step = [this](int steps) {
        if (!m_chosen) return;
        if (auto const beside = sheet::positionBeside(m_document, *m_chosen, steps))
            emit positionClicked(*beside);
    };
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomIn();
        return;
    case Qt::Key_Minus:
        zoomOut();
        return;
    case Qt::Key_0:
        fitWidth();
        return;
    case Qt::Key_9:
        fitPage();
        return;
    case Qt::Key_PageDown:
        turnPage(1);
        return;
    case Qt::Key_PageUp:
        turnPage(-1);
        return;
    case Qt::Key_Home:
        verticalScrollBar()->setValue(0);
        return;
    case Qt::Key_End:
        verticalScrollBar()->setValue(verticalScrollBar()->maximum());
        return;
    case Qt::Key_Left:
        step(-1);
        return;
    case Qt::Key_Right:
        step(1);
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

void PageView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange) viewport()->update();
    QAbstractScrollArea::changeEvent(event);
}

} // namespace ui
