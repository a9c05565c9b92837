#pragma once

#include "core/collection/listing.h"

#include <QAbstractTableModel>

#include <vector>

namespace ui {

// The rows of the list of the harper's tunes that fit what she looks for: best first, or by the
// column that she chose.
class TuneRows final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Title, Kind, Key, Time, Bars, Chords, Arranged, Opened, File, Columns };

    using QAbstractTableModel::QAbstractTableModel;

    void setRows(std::vector<collection::Row> rows);
    void setWish(collection::Wish const& wish);
    std::vector<collection::Row> const& all() const { return m_rows; }
    collection::Row const& at(int row) const; // of those that fit

    int rowCount(QModelIndex const& parent = {}) const override;
    int columnCount(QModelIndex const& parent = {}) const override;
    QVariant data(QModelIndex const& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    void sort(int column, Qt::SortOrder order) override; // column -1: the best first

private:
    void arrange();

    std::vector<collection::Row> m_rows;
    collection::Wish m_wish;
    std::vector<std::size_t> m_found; // the best first
    std::vector<std::size_t> m_shown; // in the order of the column
    int m_column = -1;
    Qt::SortOrder m_order = Qt::AscendingOrder;
};

} // namespace ui
