#include "ui/tunerows.h"

#include "ui/pastdialog.h"

#include "core/music/key.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <utility>

namespace ui {

namespace {

using collection::Row;

QString asText(std::string const& words) { return QString::fromStdString(words); }

QString fileName(Row const& row) { return QFileInfo(asText(row.name.file)).fileName(); }

// What a column is put in order by.
std::string orderKey(Row const& row, int column)
{
    switch (column) {
    case TuneRows::Kind:
        return kindWords(row.tune);
    case TuneRows::Key:
        return music::plain(row.tune.key);
    case TuneRows::Time:
        return music::text(row.tune.meter);
    case TuneRows::Bars:
        return QString::number(row.tune.bars).rightJustified(6).toStdString();
    case TuneRows::Chords:
        return row.tune.unreadable.empty() ? row.tune.chords ? "0" : "1" : "2";
    case TuneRows::Arranged:
        return row.arrangement ? "0" : row.arranged.empty() ? "2" : "1";
    case TuneRows::Opened:
        return row.opened;
    case TuneRows::File:
        return row.name.file;
    default:
        return collection::folded(row.tune.title);
    }
}

QString arrangedWords(Row const& row)
{
    if (row.arrangement) return TuneRows::tr("arrangement");
    return row.arranged.empty() ? QString() : TuneRows::tr("arranged");
}

QString tip(Row const& row)
{
    if (!row.tune.unreadable.empty()) return asText(row.tune.unreadable);
    QString words = QDir::toNativeSeparators(asText(row.name.file));
    if (!row.tune.otherTitles.empty())
        words.prepend(asText(row.tune.otherTitles) + QLatin1Char('\n'));
    if (!row.arranged.empty())
        words +=
            QLatin1Char('\n') +
            TuneRows::tr("Arranged in %1").arg(QDir::toNativeSeparators(asText(row.arranged)));
    return words;
}

} // namespace

void TuneRows::setRows(std::vector<Row> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    arrange();
    endResetModel();
}

void TuneRows::setWish(collection::Wish const& wish)
{
    beginResetModel();
    m_wish = wish;
    arrange();
    endResetModel();
}

void TuneRows::sort(int column, Qt::SortOrder order)
{
    beginResetModel();
    m_column = column;
    m_order = order;
    arrange();
    endResetModel();
}

void TuneRows::arrange()
{
    m_found = collection::found(m_rows, m_wish);
    m_shown = m_found;
    if (m_column < 0) return;
    std::vector<std::pair<std::string, std::size_t>> keyed;
    keyed.reserve(m_found.size());
    for (std::size_t const row : m_found)
        keyed.emplace_back(orderKey(m_rows[row], m_column), row);
    auto const first = [](auto const& pair) -> std::string const& { return pair.first; };
    if (m_order == Qt::AscendingOrder)
        std::ranges::stable_sort(keyed, std::ranges::less(), first);
    else
        std::ranges::stable_sort(keyed, std::ranges::greater(), first);
    std::ranges::transform(keyed, m_shown.begin(),
                           [](auto const& pair) { return pair.second; });
}

Row const& TuneRows::at(int row) const
{
    return m_rows[m_shown[static_cast<std::size_t>(row)]];
}

int TuneRows::rowCount(QModelIndex const& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}
int TuneRows::columnCount(QModelIndex const& parent) const
{
    return parent.isValid() ? 0 : Columns;
}

QVariant TuneRows::data(QModelIndex const& index, int role) const
{
    Row const& row = at(index.row());
    if (role == Qt::TextAlignmentRole && index.column() == Bars)
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) return tip(row);
    if (role != Qt::DisplayRole) return {};
    bool const read = row.tune.unreadable.empty();
    switch (index.column()) {
    case Title:
        return row.tune.title.empty() ? tr("Untitled") : asText(row.tune.title);
    case Kind:
        return asText(kindWords(row.tune));
    case Key:
        return read ? asText(music::shown(row.tune.key)) : QString();
    case Time:
        return read ? asText(music::text(row.tune.meter)) : QString();
    case Bars:
        return read ? QVariant(row.tune.bars) : QVariant();
    case Chords:
        return !read ? tr("cannot be read") : row.tune.chords ? tr("chords") : tr("no chords");
    case Arranged:
        return arrangedWords(row);
    case Opened:
        return row.opened.empty() ? QString() : whenWords(asText(row.opened));
    case File:
        return fileName(row);
    default:
        return {};
    }
}

QVariant TuneRows::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    QStringList const names{tr("Title"),    tr("Kind"),        tr("Key"),
                            tr("Time"),     tr("Bars"),        tr("Chords"),
                            tr("Arranged"), tr("Last opened"), tr("File")};
    return names.value(section);
}

} // namespace ui
