#include "ui/withinreach.h"

#include "ui/scrollsheet.h"
#include "ui/taborder.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QEvent>
#include <QLabel>
#include <QMainWindow>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

// Which plain dialogs are put together from others' parts in this folder, too.
bool isOurs(QWidget const& widget)
{
    QByteArrayView const kind(widget.metaObject()->className());
    if (!widget.isWindow() || qobject_cast<QMainWindow const*>(&widget)) return false;
    return kind.startsWith("ui::") || kind == "QDialog";
}

bool isWithinOurs(QWidget const& widget)
{
    QWidget const* window = widget.window();
    return isOurs(*window) ||
           QByteArrayView(window->metaObject()->className()).startsWith("ui::");
}

// Rows of a window that does not ask how high its words are at their width cut them.
void giveHeight(QLabel& label)
{
    int const needs = label.wordWrap() ? label.heightForWidth(label.width()) : 0;
    if (needs > label.height() && needs > label.minimumHeight()) label.setMinimumHeight(needs);
}

bool hasLabel(QComboBox const& box)
{
    QWidget const* parent = box.parentWidget();
    if (parent == nullptr) return true;
    for (QObject const* child : parent->children())
        if (auto const* label = qobject_cast<QLabel const*>(child);
            label && label->buddy() == &box)
            return true;
    return false;
}

} // namespace

void nameChoices(QWidget& window)
{
    for (QComboBox* box : window.findChildren<QComboBox*>()) {
        if (box->accessibleName().isEmpty() || hasLabel(*box)) continue;
        auto* name = new QLabel(box->accessibleName(), box->parentWidget());
        name->setBuddy(box);
        name->hide();
    }
}

void fitOnScreen(QWidget& window)
{
    QLayout* whole = window.layout();
    if (whole == nullptr || window.findChild<QScrollArea*>(QStringLiteral("sheet"))) return;
    QSize const room = window.screen()->availableGeometry().size();
    whole->activate();
    QSize least = whole->totalMinimumSize();
    if (whole->hasHeightForWidth()) {
        int const across = std::min(std::max(window.width(), least.width()), room.width());
        least.setHeight(std::max(least.height(), whole->totalMinimumHeightForWidth(across)));
    }
    if (least.width() <= room.width() && least.height() <= room.height()) {
        window.resize(window.size().expandedTo(least).boundedTo(room));
        return;
    }
    QWidget* const at = window.focusWidget();
    auto* contents = new QWidget;
    contents->setLayout(whole); // with all that stands in it
    auto* sheet = new ScrollSheet(&window);
    sheet->setObjectName(QStringLiteral("sheet"));
    sheet->hold(contents);
    auto* around = new QVBoxLayout(&window);
    around->setContentsMargins(0, 0, 0, 0);
    around->addWidget(sheet);
    window.setMinimumSize(0, 0);
    window.setMaximumSize(QWIDGETSIZE_MAX, QWIDGETSIZE_MAX);
    constexpr int bar = 20; // a scroll bar
    window.resize(least.expandedTo(whole->totalSizeHint())
                      .grownBy(QMargins(0, 0, bar, bar))
                      .expandedTo(window.size())
                      .boundedTo(room));
    window.move(window.screen()->availableGeometry().topLeft());
    if (at != nullptr) at->setFocus(Qt::OtherFocusReason);
}

WithinReach::WithinReach(QApplication& application, QObject* parent) : QObject(parent)
{
    application.installEventFilter(this);
}

bool WithinReach::eventFilter(QObject* watched, QEvent* event)
{
    bool const polishes = event->type() == QEvent::Polish;
    if ((polishes || event->type() == QEvent::Show) && watched->isWidgetType()) {
        auto& widget = *static_cast<QWidget*>(watched);
        if (isOurs(widget) && polishes) {
            nameChoices(widget);
            tabAsRead(widget);
        }
        if (isOurs(widget) && !polishes) fitOnScreen(widget);
    }
    if (event->type() == QEvent::Resize)
        if (auto* label = qobject_cast<QLabel*>(watched); label && isWithinOurs(*label))
            giveHeight(*label);
    return QObject::eventFilter(watched, event);
}

} // namespace ui
