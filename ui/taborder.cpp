#include "ui/taborder.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPointer>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTextEdit>
#include <QWidget>

#include <algorithm>
#include <set>
#include <tuple>
#include <vector>

namespace ui {

namespace {

class Order {
public:
    explicit Order(QWidget& window) { addParts(window); }
    std::vector<QWidget*> const& stops() const { return m_stops; }

private:
    void add(QWidget* widget)
    {
        if (widget == nullptr || widget->isWindow() || !m_seen.insert(widget).second) return;
        bool const stop = (widget->focusPolicy() & Qt::TabFocus) != 0 && !widget->focusProxy();
        if (stop) m_stops.push_back(widget);
        if (isWhole(*widget)) return;
        addParts(*widget);
    }

    // What is in them is theirs.
    static bool isWhole(QWidget const& widget)
    {
        return qobject_cast<QAbstractSpinBox const*>(&widget) ||
               qobject_cast<QComboBox const*>(&widget) ||
               qobject_cast<QLineEdit const*>(&widget) ||
               qobject_cast<QAbstractItemView const*>(&widget) ||
               qobject_cast<QTextEdit const*>(&widget);
    }

    void addParts(QWidget& widget)
    {
        if (auto const* panes = qobject_cast<QSplitter*>(&widget))
            for (int i = 0; i < panes->count(); ++i) add(panes->widget(i));
        else if (auto const* pages = qobject_cast<QStackedWidget*>(&widget))
            for (int i = 0; i < pages->count(); ++i) add(pages->widget(i));
        else if (auto const* scrolled = qobject_cast<QScrollArea*>(&widget))
            add(scrolled->widget());
        if (widget.layout()) addLayout(*widget.layout());
        // What is placed by hand, in the order in which it was made.
        for (QObject* child : widget.children())
            if (auto* part = qobject_cast<QWidget*>(child)) add(part);
    }

    void addLayout(QLayout& layout)
    {
        std::vector<std::pair<std::tuple<int, int>, QLayoutItem*>> items;
        auto const* grid = qobject_cast<QGridLayout*>(&layout);
        for (int i = 0; i < layout.count(); ++i) {
            int row = 0, column = i, rows = 1, columns = 1;
            if (grid) grid->getItemPosition(i, &row, &column, &rows, &columns);
            items.push_back({{row, column}, layout.itemAt(i)});
        }
        std::ranges::stable_sort(items, {}, [](auto const& item) { return item.first; });
        for (auto const& [where, item] : items) {
            if (item->widget()) add(item->widget());
            if (item->layout()) addLayout(*item->layout());
        }
    }

    std::vector<QWidget*> m_stops;
    std::set<QWidget*> m_seen;
};

} // namespace

// A box of buttons is no stop of its own: Tab would come to it from its last button and go back
// to its first.
void tabAsRead(QWidget& window)
{
    for (QDialogButtonBox* box : window.findChildren<QDialogButtonBox*>()) {
        box->setFocusProxy(nullptr);
        box->setFocusPolicy(Qt::NoFocus);
    }
    Order const order(window);
    std::vector<QWidget*> const& stops = order.stops();
    for (std::size_t i = 1; i < stops.size(); ++i) QWidget::setTabOrder(stops[i - 1], stops[i]);
}

QWidget* besideInOrder(QWidget& window, bool next)
{
    std::vector<QWidget*> stops = Order(window).stops();
    QWidget* const here = window.focusWidget();
    std::erase_if(stops, [&](QWidget const* stop) {
        return stop != here && !(stop->isVisibleTo(&window) && stop->isEnabled());
    });
    auto const found = std::ranges::find(stops, here);
    if (found == stops.end()) return nullptr;
    auto const count = stops.size();
    auto const at = static_cast<std::size_t>(found - stops.begin());
    return stops[(at + (next ? 1 : count - 1)) % count];
}

} // namespace ui
