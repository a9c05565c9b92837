#pragma once

#include "core/tune/tune.h"

#include <QAbstractTableModel>
#include <QDialog>
#include <QStringList>
#include <QTimer>

#include <functional>
#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;
class QSortFilterProxyModel;
class QTableView;

namespace ui {

// One tune of a tunebook as its head tells of it.
struct BookTune {
    int number = 0; // X:
    QString title, kind, key, meter;
};

// What only reading the tune tells.
struct BookGlance {
    std::optional<tune::Tune> tune;
    int bars = 0;
    bool chords = false;
    QString unreadable; // why; empty: it can be read
};

// The rows of the list. Tunes are read when their rows are first looked at, and the others while
// nothing else happens.
class BookModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { Number, Title, Kind, Key, Meter, Bars, Chords, Columns };
    static constexpr int SortRole = Qt::UserRole;
    static constexpr int SearchRole = Qt::UserRole + 1; // all that may be searched, in one text

    BookModel(std::vector<BookTune> tunes, std::function<BookGlance(int)> glance,
              QObject* parent = nullptr);

    BookGlance const& glance(int row) const;
    int rowCount(QModelIndex const& parent = {}) const override;
    int columnCount(QModelIndex const& parent = {}) const override;
    QVariant data(QModelIndex const& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void readOn();

    std::vector<BookTune> m_tunes;
    std::function<BookGlance(int)> m_read;
    mutable std::vector<std::optional<BookGlance>> m_glances;
    std::size_t m_next = 0; // to be read while nothing else happens
    QTimer m_idle;
};

// The tunes of a tunebook to choose one from: type a part of its title, kind, key or number, go
// through the list with the arrow keys, see how it begins, then Enter.
class BookDialog final : public QDialog {
    Q_OBJECT
public:
    // `glance` reads the tune of a row. `current` is the row chosen at first.
    BookDialog(QString const& book, std::vector<BookTune> tunes,
               std::function<BookGlance(int)> glance, int current, QWidget* parent = nullptr);

    // The chosen row of the tunes; none while the words typed fit none.
    std::optional<int> chosen() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void narrow(QString const& words);
    void preview();

    BookModel* m_model;
    QSortFilterProxyModel* m_shown;
    QLineEdit* m_words;
    QTableView* m_tunes;
    QLabel* m_count;
    QLabel* m_beginning;
    QPushButton* m_open = nullptr;
    QTimer m_soon; // the preview waits until the arrow keys rest
};

} // namespace ui
