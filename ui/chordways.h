#pragma once

#include "core/harmony/findchords.h"

#include <QDialog>

#include <optional>
#include <vector>

class QCheckBox;
class QListWidget;

namespace ui {

// One way to put chords to the whole tune, and how it would read.
struct ChordWayRow {
    harmony::Way way = harmony::Way::Usual;
    QString chords;    // "Am · Am G · Am"
    int otherBars = 0; // that have other chords than now
};

// Chords for the whole tune: clearly different ways, with the chords each would put. Those that
// the arranger set stay; whether the file's stay, too, she says here.
class ChordWays final : public QDialog {
    Q_OBJECT
public:
    using RowsFor = std::function<std::vector<ChordWayRow>(bool keepWritten)>;

    // `key`: what is said of the key found. `written`: the file has chords of its own.
    ChordWays(RowsFor rows, QString const& key, bool written, QWidget* parent);

    harmony::Way way() const; // that is chosen
    bool keepsWritten() const;
    QListWidget* list() const { return m_list; }

signals:
    void hearWanted(); // the way that is chosen

private:
    void fill();

    RowsFor m_rowsFor;
    std::vector<ChordWayRow> m_rows;
    QListWidget* m_list;
    QCheckBox* m_keep;
};

} // namespace ui
