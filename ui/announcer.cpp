#include "ui/announcer.h"

#include <QAccessible>

namespace ui {

Announcer::Announcer(QWidget* window) : QWidget(window), SpokenAs(QAccessible::Notification)
{
    setGeometry(0, 0, 1, 1);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
    lower();
}

// Desktops differ in what they hear: a notification that comes into sight, an alert, a new
// name.
void Announcer::say(QString const& sentence)
{
    if (sentence.isEmpty() || !readerListens()) return;
    setAccessibleName(sentence); // tells of the new name
    for (QAccessible::Event const kind : {QAccessible::ObjectShow, QAccessible::Alert}) {
        QAccessibleEvent event(this, kind);
        tellReader(event);
    }
}

} // namespace ui
