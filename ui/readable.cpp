#include "ui/readable.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>
#include <QWidget>

#include <map>

namespace ui {

namespace {

std::function<void(QAccessibleEvent&)>& listener()
{
    static std::function<void(QAccessibleEvent&)> beside;
    return beside;
}

Readable* readableOf(QObject* object) { return dynamic_cast<Readable*>(object); }

// The chosen thing; -1: none.
int chosenOf(Readable const& readable)
{
    for (int i = 0; i < readable.readableCount(); ++i)
        if (readable.readableItem(i).chosen) return i;
    return -1;
}

// One thing. It lives as long as the interface of its widget.
class ItemInterface final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    ItemInterface(QWidget* widget, int index) : m_widget(widget), m_index(index) {}

    bool isValid() const override
    {
        Readable const* readable = readableOf(m_widget);
        return readable && m_index < readable->readableCount();
    }
    QObject* object() const override { return nullptr; }
    QWindow* window() const override
    {
        return isValid() ? m_widget->window()->windowHandle() : nullptr;
    }
    QAccessibleInterface* parent() const override
    {
        return QAccessible::queryAccessibleInterface(m_widget);
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(QAccessibleInterface const*) const override { return -1; }
    QString text(QAccessible::Text kind) const override
    {
        return isValid() && kind == QAccessible::Name ? item().name : QString();
    }
    void setText(QAccessible::Text, QString const&) override {}
    QRect rect() const override
    {
        if (!isValid()) return {};
        QRect const box = item().box.toAlignedRect();
        return {m_widget->mapToGlobal(box.topLeft()), box.size()};
    }
    QAccessible::Role role() const override { return QAccessible::ListItem; }
    QAccessible::State state() const override
    {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = true;
            return state;
        }
        bool const chosen = item().chosen;
        state.selectable = true;
        state.focusable = true;
        state.selected = chosen;
        state.focused = chosen && m_widget->hasFocus();
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override
    {
        if (type == QAccessible::ActionInterface)
            return static_cast<QAccessibleActionInterface*>(this);
        return nullptr;
    }
    QStringList actionNames() const override { return {pressAction()}; }
    void doAction(QString const& name) override
    {
        if (isValid() && name == pressAction()) readableOf(m_widget)->pressReadable(m_index);
    }
    QStringList keyBindingsForAction(QString const&) const override { return {}; }

private:
    ReadableItem item() const { return readableOf(m_widget)->readableItem(m_index); }

    QPointer<QWidget> m_widget;
    int m_index;
};

// The widget with its things as children, made when they are asked for.
class ReadableInterface final : public QAccessibleWidget {
public:
    explicit ReadableInterface(QWidget* widget) : QAccessibleWidget(widget, QAccessible::List)
    {}
    ~ReadableInterface() override
    {
        for (auto const& [index, id] : m_children) QAccessible::deleteAccessibleInterface(id);
    }
    int childCount() const override
    {
        // None while the widget is being taken apart.
        Readable const* readable = readableOf(widget());
        return readable ? readable->readableCount() : 0;
    }
    QAccessibleInterface* child(int index) const override
    {
        if (index < 0 || index >= childCount()) return nullptr;
        auto const known = m_children.find(index);
        if (known != m_children.end()) return QAccessible::accessibleInterface(known->second);
        auto* made = new ItemInterface(widget(), index);
        m_children[index] = QAccessible::registerAccessibleInterface(made);
        return made;
    }
    int indexOfChild(QAccessibleInterface const* child) const override
    {
        for (auto const& [index, id] : m_children)
            if (QAccessible::accessibleInterface(id) == child) return index;
        return -1;
    }
    QAccessibleInterface* focusChild() const override
    {
        int const chosen = widget()->hasFocus() ? chosenOf(*readableOf(widget())) : -1;
        return chosen < 0 ? QAccessibleWidget::focusChild() : child(chosen);
    }
    QAccessibleInterface* childAt(int x, int y) const override
    {
        QPointF const point = widget()->mapFromGlobal(QPointF(x, y));
        for (int i = 0; i < childCount(); ++i)
            if (readableOf(widget())->readableItem(i).box.contains(point)) return child(i);
        return nullptr;
    }

private:
    mutable std::map<int, QAccessible::Id> m_children;
};

QAccessibleInterface* readableFactory(QString const&, QObject* object)
{
    if (!readableOf(object)) return nullptr;
    return new ReadableInterface(static_cast<QWidget*>(object));
}

QAccessibleInterface* spokenFactory(QString const&, QObject* object)
{
    auto const* spoken = dynamic_cast<SpokenAs*>(object);
    if (!spoken) return nullptr;
    return new QAccessibleWidget(static_cast<QWidget*>(object), spoken->role());
}

} // namespace

void tellReader(QAccessibleEvent& event)
{
    if (listener()) listener()(event);
    QAccessible::updateAccessibility(&event);
}

bool readerListens() { return QAccessible::isActive() || listener(); }

void listenBesideReader(std::function<void(QAccessibleEvent&)> beside)
{
    listener() = std::move(beside);
}

// Before anything asks for the widget's interface; a factory that is known is not added twice.
Readable::Readable() { QAccessible::installFactory(readableFactory); }

SpokenAs::SpokenAs(QAccessible::Role role) : m_role(role)
{
    QAccessible::installFactory(spokenFactory);
}

void tellReadableFocus(QWidget& widget, int index)
{
    if (!readerListens() || !widget.hasFocus()) return;
    QAccessibleEvent focus(&widget, QAccessible::Focus);
    focus.setChild(index);
    tellReader(focus);
}

// Qt tells of the widget itself only after it has been given the keyboard.
void tellReadableEntered(QWidget& widget)
{
    if (!readerListens()) return;
    QMetaObject::invokeMethod(
        &widget,
        [&widget] {
            Readable const* readable = readableOf(&widget);
            int const chosen = readable ? chosenOf(*readable) : -1;
            if (chosen >= 0) tellReadableFocus(widget, chosen);
        },
        Qt::QueuedConnection);
}

} // namespace ui
