#include "ui/chordways.h"

#include "ui/button.h"

#include <QCheckBox>
#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

QString rowWords(ChordWayRow const& row)
{
    QString const changes = row.otherBars == 0 ? ChordWays::tr("as now")
                            : row.otherBars == 1
                                ? ChordWays::tr("1 bar differs")
                                : ChordWays::tr("%1 bars differ").arg(row.otherBars);
    return ChordWays::tr("%1: %2 (%3)\n%4")
        .arg(QString::fromUtf8(wayName(row.way).data(),
                               static_cast<qsizetype>(wayName(row.way).size())),
             QString::fromUtf8(wayWords(row.way).data(),
                               static_cast<qsizetype>(wayWords(row.way).size())),
             changes, row.chords);
}

} // namespace

ChordWays::ChordWays(RowsFor rows, QString const& key, bool written, QWidget* parent)
    : QDialog(parent), m_rowsFor(std::move(rows)), m_list(new QListWidget(this)),
      m_keep(new QCheckBox(tr("Keep the chords that the file has"), this))
{
    setWindowTitle(tr("Chords for the whole tune"));
    auto* heading = new QLabel(tr("Chords you set stay; the rest follow. %1").arg(key), this);
    heading->setWordWrap(true);
    heading->setTextFormat(Qt::PlainText);
    m_list->setAccessibleName(tr("Ways to put chords to the tune"));
    m_list->setWordWrap(true);
    m_list->setSpacing(3);
    // Where the file has a chord everywhere, keeping them would leave nothing to choose.
    auto const kept = written ? m_rowsFor(true) : std::vector<ChordWayRow>{};
    m_keep->setChecked(std::ranges::any_of(
        kept, [](ChordWayRow const& way) { return way.otherBars != 0; }));
    m_keep->setVisible(written);
    auto* use = new Button(tr("Use"), this);
    use->setLook(Button::Look::Main);
    auto* hear = new Button(tr("Hear"), this);
    hear->setToolTip(tr("Some bars of the tune in this way (Ctrl+Space); nothing is kept"));
    hear->setShortcut(Qt::CTRL | Qt::Key_Space);
    auto* leave = new Button(tr("Cancel"), this);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(use);
    buttons->addWidget(hear);
    buttons->addStretch(1);
    buttons->addWidget(leave);
    auto* column = new QVBoxLayout(this);
    column->addWidget(heading);
    column->addWidget(m_list, 1);
    column->addWidget(m_keep);
    column->addLayout(buttons);
    resize(640, 340);

    connect(m_keep, &QCheckBox::toggled, this, &ChordWays::fill);
    connect(m_list, &QListWidget::itemActivated, this, &QDialog::accept);
    connect(use, &Button::clicked, this, &QDialog::accept);
    connect(hear, &Button::clicked, this, &ChordWays::hearWanted);
    connect(leave, &Button::clicked, this, &QDialog::reject);
    fill();
    m_list->setFocus(Qt::OtherFocusReason);
}

harmony::Way ChordWays::way() const
{
    int const row = std::max(0, m_list->currentRow());
    return m_rows[static_cast<std::size_t>(row)].way;
}

bool ChordWays::keepsWritten() const { return m_keep->isChecked(); }

void ChordWays::fill()
{
    int const row = std::max(0, m_list->currentRow());
    m_rows = m_rowsFor(m_keep->isChecked());
    m_list->clear();
    for (ChordWayRow const& way : m_rows) m_list->addItem(rowWords(way));
    m_list->setCurrentRow(row);
}

} // namespace ui
