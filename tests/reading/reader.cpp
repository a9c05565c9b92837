#include "reader.h"

#include "ui/readable.h"

#include <QAccessible>
#include <QApplication>
#include <QWidget>

#include <array>
#include <functional>

namespace reading {

namespace {

Reader* listening = nullptr;

struct Role {
    QAccessible::Role role;
    char const* word;
    bool control; // is to have a name
};

// Roles that are told; others are told only by what is in them.
constexpr std::array roles{
    Role{QAccessible::Window, "window", true},
    Role{QAccessible::Dialog, "dialog", true},
    Role{QAccessible::MenuBar, "menu bar", false},
    Role{QAccessible::PopupMenu, "menu", false},
    Role{QAccessible::MenuItem, "menu item", true},
    Role{QAccessible::ToolBar, "tool bar", false},
    Role{QAccessible::StatusBar, "status", true},
    Role{QAccessible::Heading, "heading", true},
    Role{QAccessible::AlertMessage, "alert", true},
    Role{QAccessible::Notification, "notification", false},
    Role{QAccessible::Document, "page", true},
    Role{QAccessible::StaticText, "text", false},
    Role{QAccessible::Button, "button", true},
    Role{QAccessible::ButtonMenu, "menu button", true},
    Role{QAccessible::CheckBox, "toggle", true},
    Role{QAccessible::RadioButton, "one of several", true},
    Role{QAccessible::ComboBox, "choice", true},
    Role{QAccessible::EditableText, "entry", true},
    Role{QAccessible::SpinBox, "number", true},
    Role{QAccessible::Slider, "slider", true},
    Role{QAccessible::ProgressBar, "progress", true},
    Role{QAccessible::List, "list", true},
    Role{QAccessible::ListItem, "item", true},
    Role{QAccessible::Tree, "tree", true},
    Role{QAccessible::TreeItem, "item", true},
    Role{QAccessible::Table, "table", true},
    Role{QAccessible::Cell, "cell", false},
    Role{QAccessible::Graphic, "picture", false},
};

Role const* roleOf(QAccessibleInterface const& thing)
{
    for (Role const& one : roles)
        if (one.role == thing.role()) return &one;
    return nullptr;
}

bool isBetweenLines(QAccessible::Role role)
{
    return role == QAccessible::ScrollBar || role == QAccessible::Grip ||
           role == QAccessible::Separator || role == QAccessible::ToolTip ||
           role == QAccessible::RowHeader || role == QAccessible::ColumnHeader;
}

// Their parts are told by themselves.
bool isWhole(QAccessible::Role role)
{
    return role == QAccessible::SpinBox || role == QAccessible::ComboBox ||
           role == QAccessible::ButtonMenu || role == QAccessible::MenuBar;
}

bool isList(QAccessible::Role role)
{
    return role == QAccessible::List || role == QAccessible::Table || role == QAccessible::Tree;
}

QString line(QString text) { return text.simplified(); }

// On some desktops the name of a choice is what is chosen; its own is that of its label.
QString nameOf(QAccessibleInterface const& thing)
{
    if (thing.role() == QAccessible::ComboBox) {
        for (auto const& [label, kind] : thing.relations(QAccessible::Label))
            return line(label->text(QAccessible::Name).remove(QLatin1Char('&')));
        return {};
    }
    return line(thing.text(QAccessible::Name).remove(QLatin1Char('&')));
}

QString valueOf(QAccessibleInterface& thing)
{
    if (thing.role() == QAccessible::Slider || thing.role() == QAccessible::ProgressBar)
        if (auto* value = thing.valueInterface()) return value->currentValue().toString();
    return line(thing.text(QAccessible::Value));
}

QStringList statesOf(QAccessibleInterface& thing)
{
    QAccessible::State const state = thing.state();
    QStringList out;
    if (state.disabled) out << QStringLiteral("not available");
    bool const toggle = state.checkable || thing.role() == QAccessible::CheckBox;
    if (toggle) out << (state.checked ? QStringLiteral("on") : QStringLiteral("off"));
    if (state.hasPopup && thing.role() != QAccessible::ButtonMenu &&
        thing.role() != QAccessible::ComboBox)
        out << QStringLiteral("opens a menu");
    if (state.selected && !toggle) out << QStringLiteral("selected");
    return out;
}

QString placeOf(QAccessibleInterface const& thing)
{
    QAccessibleInterface const* list = thing.parent();
    if (thing.role() != QAccessible::ListItem || !list || list->role() != QAccessible::List)
        return {};
    return QStringLiteral("%1 of %2")
        .arg(list->indexOfChild(&thing) + 1)
        .arg(list->childCount());
}

// Calls for everything in sight; what() answers whether its parts are wanted as well.
void walk(QAccessibleInterface* thing, int depth,
          std::function<bool(QAccessibleInterface&, int)> const& what)
{
    if (!thing || thing->state().invisible || isBetweenLines(thing->role())) return;
    int const deeper = what(*thing, depth) ? depth + 1 : depth;
    if (isWhole(thing->role())) return;
    int shown = 0;
    for (int i = 0; i < thing->childCount(); ++i) {
        QAccessibleInterface* child = thing->child(i);
        constexpr int few = 3;
        if (child && isList(thing->role()) && shown >= few && !child->state().selected)
            continue;
        if (child && !child->state().invisible && !isBetweenLines(child->role())) ++shown;
        walk(child, deeper, what);
    }
}

void hear(QAccessibleEvent* event)
{
    if (!listening) return;
    QAccessibleInterface* thing = event->accessibleInterface();
    if (!thing) return;
    switch (event->type()) {
    case QAccessible::Focus:
        listening->note(told(thing));
        return;
    case QAccessible::Alert:
        listening->note(QStringLiteral("(announced) ") + nameOf(*thing));
        return;
    default:
        return;
    }
}

} // namespace

QString told(QAccessibleInterface const* thing)
{
    auto& it = const_cast<QAccessibleInterface&>(*thing);
    Role const* role = roleOf(it);
    QString out = role ? QString::fromLatin1(role->word) : QStringLiteral("pane");
    QString const name = nameOf(it);
    out += name.isEmpty() ? QString() : QStringLiteral(" “%1”").arg(name);
    QString const value = valueOf(it);
    if (!value.isEmpty() && value != name) out += QStringLiteral(", ") + value;
    for (QString const& state : statesOf(it)) out += QStringLiteral(", ") + state;
    QString const place = placeOf(it);
    if (!place.isEmpty()) out += QStringLiteral(", ") + place;
    return out;
}

QStringList tree(QWidget& window)
{
    QStringList out;
    walk(QAccessible::queryAccessibleInterface(&window), 0,
         [&out](QAccessibleInterface& thing, int depth) {
             bool const isPane = !roleOf(thing);
             QString const name = nameOf(thing);
             bool const empty =
                 name.isEmpty() && (isPane || thing.role() == QAccessible::StaticText);
             if (empty || thing.role() == QAccessible::Notification) return false;
             QString const hint = line(thing.text(QAccessible::Description));
             out << QString(2 * depth, QLatin1Char(' ')) + told(&thing) +
                        (hint.isEmpty() || hint == name ? QString()
                                                        : QStringLiteral(" (%1)").arg(hint));
             if (thing.role() == QAccessible::MenuBar)
                 for (int i = 0; i < thing.childCount(); ++i)
                     out << QString(2 * depth + 2, QLatin1Char(' ')) + told(thing.child(i));
             return true;
         });
    return out;
}

QStringList unnamed(QWidget& window)
{
    QStringList out;
    walk(QAccessible::queryAccessibleInterface(&window), 0,
         [&out](QAccessibleInterface& thing, int) {
             Role const* role = roleOf(thing);
             auto const* widget = qobject_cast<QWidget const*>(thing.object());
             bool const reached = widget && (widget->focusPolicy() & Qt::TabFocus) != 0;
             bool const within =
                 widget && ((thing.role() == QAccessible::Window && !widget->isWindow()) ||
                            widget->focusProxy() != nullptr);
             if (!within && nameOf(thing).isEmpty() && (reached || (role && role->control)))
                 out << QStringLiteral("%1 %2 in %3")
                            .arg(role ? QString::fromLatin1(role->word)
                                      : QStringLiteral("pane"),
                                 widget ? QString::fromLatin1(widget->metaObject()->className())
                                        : QString(),
                                 widget && widget->parentWidget()
                                     ? QString::fromLatin1(
                                           widget->parentWidget()->metaObject()->className())
                                     : QString());
             return true;
         });
    return out;
}

// The widget that has the keyboard is told by the desktop's own means; here by the signal.
Reader::Reader()
{
    listening = this;
    ui::listenBesideReader([](QAccessibleEvent& event) { hear(&event); });
    m_focus =
        QObject::connect(qApp, &QApplication::focusChanged, [this](QWidget*, QWidget* now) {
            if (now) note(told(QAccessible::queryAccessibleInterface(now)));
        });
}

Reader::~Reader()
{
    ui::listenBesideReader({});
    QObject::disconnect(m_focus);
    listening = nullptr;
}

QStringList Reader::heard()
{
    QStringList out;
    out.swap(m_lines);
    return out;
}

void Reader::hideFolder(QString const& path) { m_folder = path; }

QString Reader::masked(QString text) const
{
    return m_folder.isEmpty() ? text : text.replace(m_folder, QStringLiteral("~"));
}

// What is told twice over is read once.
void Reader::note(QString const& text)
{
    QString const said = masked(text);
    if (m_lines.isEmpty() || m_lines.last() != said) m_lines << said;
}

} // namespace reading
