#pragma once

#include <QRectF>
#include <QString>

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
};

// The keyboard is on this thing now.
void tellReadableFocus(QWidget& widget, int index);

} // namespace ui
