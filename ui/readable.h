#pragma once

#include <QAccessible>
#include <QRectF>
#include <QString>

#include <functional>

class QWidget;

namespace ui {

// One painted thing as a reader of the screen tells it.
struct ReadableItem {
    QString name;
    QRectF box; // in the coordinates of the widget
    bool chosen = false;
};

// A widget that paints many things (bars, variants, strings) derives from this as well, so that
// each can be found, told and pressed by assistive technology.
class Readable {
public:
    Readable(); // makes its things known to the desktop
    Readable(Readable const&) = delete;
    Readable& operator=(Readable const&) = delete;
    virtual ~Readable() = default;
    virtual int readableCount() const = 0;
    virtual ReadableItem readableItem(int index) const = 0;
    virtual void pressReadable(int index) = 0;
    // Its things are the places of the tune, so that whoever moves through them hears where.
    virtual bool tellsPlaces() const { return false; }
};

// A widget that a reader of the screen tells as something else than a pane: a message, a
// heading, a page. Its name and description are its own (QWidget::setAccessibleName).
class SpokenAs {
public:
    explicit SpokenAs(QAccessible::Role role);
    SpokenAs(SpokenAs const&) = delete;
    SpokenAs& operator=(SpokenAs const&) = delete;
    virtual ~SpokenAs() = default;
    QAccessible::Role role() const { return m_role; }

private:
    QAccessible::Role m_role;
};

// Tells assistive technology, and whoever listens beside it.
void tellReader(QAccessibleEvent& event);
bool readerListens(); // either of them

// Hears all that is told so, with a reader of the screen or without one; nothing: no longer.
void listenBesideReader(std::function<void(QAccessibleEvent&)> listener);

// The keyboard is on this thing now.
void tellReadableFocus(QWidget& widget, int index);

// The keyboard has come to the widget: the chosen thing is told after the widget's own name.
void tellReadableEntered(QWidget& widget);

} // namespace ui
