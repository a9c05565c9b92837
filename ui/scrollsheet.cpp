#include "ui/scrollsheet.h"

#include <QEvent>

namespace ui {

ScrollSheet::ScrollSheet(QWidget* parent) : QScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setWidgetResizable(false);
}

void ScrollSheet::hold(QWidget* contents)
{
    setWidget(contents);
    contents->installEventFilter(this);
    fit();
}

void ScrollSheet::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

// What is asked for while parts are being placed is done when they stand.
bool ScrollSheet::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == widget() && event->type() == QEvent::LayoutRequest && !m_soon) {
        m_soon = true;
        QMetaObject::invokeMethod(
            this,
            [this] {
                m_soon = false;
                fit();
            },
            Qt::QueuedConnection);
    }
    return QScrollArea::eventFilter(watched, event);
}

// A few times at most: parts may need more height at the width they get, and bars take room.
void ScrollSheet::fit()
{
    if (m_fitting || !widget()) return;
    m_fitting = true;
    constexpr int passes = 4;
    for (int pass = 0; pass < passes; ++pass) {
        QSize const least = widget()->minimumSizeHint().expandedTo(widget()->minimumSize());
        QSize const wanted = viewport()->size().expandedTo(least);
        if (widget()->size() == wanted) break;
        widget()->resize(wanted);
    }
    m_fitting = false;
}

} // namespace ui
