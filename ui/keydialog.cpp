#include "ui/keydialog.h"

#include "core/harp/levers.h"
#include "ui/numbers.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <set>

namespace ui {

namespace {

QString shownText(std::string const& text) { return QString::fromStdString(text); }

// Sorts by numbers where a column holds numbers.
class Row final : public QTreeWidgetItem {
public:
    using QTreeWidgetItem::QTreeWidgetItem;
    bool operator<(QTreeWidgetItem const& other) const override
    {
        int const column = treeWidget()->sortColumn();
        return data(column, Qt::UserRole).toDouble() <
               other.data(column, Qt::UserRole).toDouble();
    }
};

enum Column { Place, Name, Levers, Flips, Room, LeftHand };

} // namespace

KeyDialog::KeyDialog(harp::Harp const& harp, std::vector<proposal::RankedKey> const& keys,
                     music::Key current, QWidget* parent)
    : QDialog(parent), m_list(new QTreeWidget(this)), m_reason(new QLabel(this))
{
    setWindowTitle(tr("Keys for this tune"));
    std::set<std::string> told;
    for (proposal::RankedKey const& key : keys)
        if (told.insert(music::plain(key.fit.key)).second) m_keys.push_back(key);

    m_list->setAccessibleName(tr("Keys, best first"));
    m_list->setHeaderLabels({tr("Rank"), tr("Key"), tr("Levers set before playing"),
                             tr("Lever flips"), tr("Strings below the tune"),
                             tr("Score a chord (lower is better)")});
    m_list->setRootIsDecorated(false);
    m_list->setAllColumnsShowFocus(true);
    constexpr double last = 1e9;
    for (std::size_t i = 0; i < m_keys.size(); ++i) {
        proposal::RankedKey const& key = m_keys[i];
        auto* row = new Row(m_list);
        bool const possible = key.possible();
        row->setText(Place, possible ? QString::number(i + 1) : tr("–"));
        row->setText(Name, shownText(music::shown(key.fit.key)));
        row->setData(Place, Qt::UserRole, static_cast<double>(i));
        row->setData(Name, Qt::UserRole, music::fifths(key.fit.key.tonic));
        if (possible) {
            row->setText(Levers, shownText(setupLine(harp, key.fit.setup)));
            row->setText(Flips, QString::number(key.fit.flips));
            row->setText(Room, QString::number(key.fit.roomBelow));
        }
        double const points =
            key.cost ? static_cast<double>(*key.cost) / 1000 / std::max(1, key.chords) : last;
        if (key.cost) row->setText(LeftHand, decimal(points, 2));
        row->setData(Levers, Qt::UserRole, possible ? key.leversRaised : last);
        row->setData(Flips, Qt::UserRole, possible ? key.fit.flips : last);
        row->setData(Room, Qt::UserRole, possible ? -key.fit.roomBelow : last);
        row->setData(LeftHand, Qt::UserRole, points);
        for (int column : {Flips, Room, LeftHand})
            row->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        if (!possible) // still to be looked at, for its reason
            for (int column = 0; column <= LeftHand; ++column)
                row->setForeground(column,
                                   palette().color(QPalette::Disabled, QPalette::WindowText));
        if (key.fit.key == current) m_list->setCurrentItem(row);
    }
    m_list->setSortingEnabled(true);
    m_list->sortByColumn(Place, Qt::AscendingOrder);
    for (int column = 0; column < m_list->columnCount(); ++column)
        m_list->resizeColumnToContents(column);
    m_reason->setWordWrap(true);
    m_reason->setMinimumHeight(3 * fontMetrics().lineSpacing());
    m_reason->setAlignment(Qt::AlignTop | Qt::AlignLeft);

    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* const use = buttons->addButton(tr("Use this key"), QDialogButtonBox::AcceptRole);
    use->setObjectName(QStringLiteral("use"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_list, &QTreeWidget::currentItemChanged, this, [this, use] {
        look();
        use->setEnabled(chosen().has_value());
    });
    connect(m_list, &QTreeWidget::itemActivated, this, [this] {
        if (chosen()) accept();
    });

    auto* const column = new QVBoxLayout(this);
    column->addWidget(m_list, 1);
    column->addWidget(m_reason);
    column->addWidget(buttons);
    resize(860, 460);
    look();
    use->setEnabled(chosen().has_value());
}

std::optional<music::Key> KeyDialog::chosen() const
{
    QTreeWidgetItem const* const row = m_list->currentItem();
    if (!row) return std::nullopt;
    auto const& key = m_keys[row->data(Place, Qt::UserRole).toUInt()];
    if (!key.possible()) return std::nullopt;
    return key.fit.key;
}

void KeyDialog::look()
{
    QTreeWidgetItem const* const row = m_list->currentItem();
    m_reason->setText(row ? shownText(m_keys[row->data(Place, Qt::UserRole).toUInt()].reason)
                          : tr("Choose a key to see why it has this rank."));
}

} // namespace ui
