#include "ui/bookdialog.h"

#include "ui/beginning.h"
#include "ui/theme.h"

#include "core/tune/kindwords.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QElapsedTimer>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr int previewHeight = 96;

// "Bb" as it is printed.
QString withSigns(QString key)
{
    if (key.size() > 1 && key[1] == 'b') key[1] = QChar(0x266D);
    if (key.size() > 1 && key[1] == '#') key[1] = QChar(0x266F);
    return key;
}

// What its notes sound like, where the tune names no kind.
QString likelyKind(BookGlance const& glance)
{
    if (!glance.tune) return {};
    tune::Kind const kind = tune::kindOf(*glance.tune);
    if (kind == tune::Kind::Other) return {};
    return QString::fromStdString(tune::kindShown(kind));
}

} // namespace

BookModel::BookModel(std::vector<BookTune> tunes, std::function<BookGlance(int)> glance,
                     QObject* parent)
    : QAbstractTableModel(parent), m_tunes(std::move(tunes)), m_read(std::move(glance)),
      m_glances(m_tunes.size())
{
    connect(&m_idle, &QTimer::timeout, this, &BookModel::readOn);
    m_idle.start(0);
}

BookGlance const& BookModel::glance(int row) const
{
    auto& known = m_glances[static_cast<std::size_t>(row)];
    if (!known) known = m_read(row);
    return *known;
}

// A few tunes at a time, so that the keys are answered between them.
void BookModel::readOn()
{
    QElapsedTimer spent;
    spent.start();
    std::size_t const first = m_next;
    while (m_next < m_tunes.size() && spent.elapsed() < 8)
        glance(static_cast<int>(m_next++)).tune.has_value();
    if (m_next > first)
        emit dataChanged(index(static_cast<int>(first), Bars),
                         index(static_cast<int>(m_next - 1), Chords));
    if (m_next == m_tunes.size()) m_idle.stop();
}

int BookModel::rowCount(QModelIndex const& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_tunes.size());
}
int BookModel::columnCount(QModelIndex const& parent) const
{
    return parent.isValid() ? 0 : Columns;
}

QVariant BookModel::data(QModelIndex const& index, int role) const
{
    BookTune const& tune = m_tunes[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole && (index.column() == Number || index.column() == Bars))
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole) {
        QString const why = glance(index.row()).unreadable;
        return why.isEmpty() ? QVariant() : QVariant(why);
    }
    if (role == SearchRole)
        return QStringLiteral("%1 %2 %3 %4 %5")
            .arg(QString::number(tune.number), tune.title, tune.kind, tune.key, tune.meter);
    if (role != Qt::DisplayRole && role != SortRole) return {};
    switch (index.column()) {
    case Number:
        return tune.number;
    case Title:
        return tune.title.isEmpty() ? tr("Untitled") : tune.title;
    case Kind:
        return tune.kind.isEmpty() ? likelyKind(glance(index.row())) : tune.kind;
    case Key:
        return withSigns(tune.key);
    case Meter:
        return tune.meter;
    case Bars:
        return glance(index.row()).bars > 0 ? QVariant(glance(index.row()).bars) : QVariant();
    case Chords: {
        BookGlance const& known = glance(index.row());
        if (!known.unreadable.isEmpty()) return tr("cannot be read");
        return known.chords ? tr("chords") : tr("no chords");
    }
    default:
        return {};
    }
}

QVariant BookModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    QStringList const names{tr("No."), tr("Title"), tr("Kind"),  tr("Key"),
                            tr("Time"), tr("Bars"),  tr("Chords")};
    return names.value(section);
}

BookDialog::BookDialog(QString const& book, std::vector<BookTune> tunes,
                       std::function<BookGlance(int)> glance, int current, QWidget* parent)
    : QDialog(parent), m_model(new BookModel(std::move(tunes), std::move(glance), this)),
      m_shown(new QSortFilterProxyModel(this)), m_words(new QLineEdit(this)),
      m_tunes(new QTableView(this)), m_count(new QLabel(this)), m_beginning(new QLabel(this))
{
    setWindowTitle(tr("Tunes of “%1”").arg(book));
    m_shown->setSourceModel(m_model);
    m_shown->setSortRole(BookModel::SortRole);
    m_shown->setSortCaseSensitivity(Qt::CaseInsensitive);
    m_shown->setDynamicSortFilter(false);
    m_words->setPlaceholderText(tr("Part of a title, a kind, a key or a number"));
    m_words->setClearButtonEnabled(true);
    m_words->setAccessibleName(tr("Search"));
    m_words->installEventFilter(this);

    m_tunes->setModel(m_shown);
    m_tunes->setAccessibleName(tr("Tunes"));
    m_tunes->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_tunes->setSelectionMode(QAbstractItemView::SingleSelection);
    m_tunes->setShowGrid(false);
    m_tunes->setAlternatingRowColors(true);
    m_tunes->setTabKeyNavigation(false);
    m_tunes->setWordWrap(false);
    m_tunes->setSortingEnabled(true);
    m_tunes->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    m_shown->sort(-1);
    m_tunes->verticalHeader()->hide();
    m_tunes->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_tunes->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    QHeaderView* const columns = m_tunes->horizontalHeader();
    columns->setHighlightSections(false);
    columns->setSectionResizeMode(BookModel::Title, QHeaderView::Stretch);
    int const letter = fontMetrics().averageCharWidth();
    std::pair<int, int> const widths[] = {
        {BookModel::Number, 7}, {BookModel::Kind, 13}, {BookModel::Key, 9},
        {BookModel::Meter, 8},  {BookModel::Bars, 7},  {BookModel::Chords, 17}};
    for (auto const& [column, letters] : widths)
        m_tunes->setColumnWidth(column, letters * letter + 14);

    m_beginning->setFixedHeight(previewHeight);
    m_beginning->setWordWrap(true);
    m_beginning->setAccessibleName(tr("How the tune begins"));
    auto* const buttons =
        new QDialogButtonBox(QDialogButtonBox::Open | QDialogButtonBox::Cancel, this);
    m_open = buttons->button(QDialogButtonBox::Open);
    m_open->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_words, &QLineEdit::textChanged, this, &BookDialog::narrow);
    connect(m_tunes, &QTableView::activated, m_open, &QPushButton::click);
    m_soon.setSingleShot(true);
    m_soon.setInterval(60);
    connect(&m_soon, &QTimer::timeout, this, &BookDialog::preview);
    connect(m_tunes->selectionModel(), &QItemSelectionModel::currentRowChanged, &m_soon,
            qOverload<>(&QTimer::start));

    auto* const column = new QVBoxLayout(this);
    column->addWidget(m_words);
    column->addWidget(m_tunes, 1);
    column->addWidget(m_count);
    column->addWidget(m_beginning);
    column->addWidget(buttons);
    resize(820, 620);
    narrow({});
    int const row = std::clamp(current, 0, std::max(0, m_model->rowCount() - 1));
    m_tunes->setCurrentIndex(m_shown->mapFromSource(m_model->index(row, BookModel::Title)));
    m_words->setFocus();
}

std::optional<int> BookDialog::chosen() const
{
    QModelIndex const index = m_shown->mapToSource(m_tunes->currentIndex());
    if (!index.isValid()) return std::nullopt;
    return index.row();
}

// The list answers Up and Down while the words are typed.
bool BookDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_words && event->type() == QEvent::KeyPress) {
        int const key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp ||
            key == Qt::Key_PageDown)
            return QApplication::sendEvent(m_tunes, event);
    }
    return QDialog::eventFilter(watched, event);
}

void BookDialog::resizeEvent(QResizeEvent* event)
{
    QDialog::resizeEvent(event);
    m_soon.start();
}

// Every word must be in one of the columns that the head tells.
void BookDialog::narrow(QString const& words)
{
    QString pattern;
    for (QString const& word : words.split(' ', Qt::SkipEmptyParts))
        pattern += QStringLiteral("(?=.*%1)").arg(QRegularExpression::escape(word));
    m_shown->setFilterRole(BookModel::SearchRole);
    m_shown->setFilterKeyColumn(BookModel::Title);
    m_shown->setFilterRegularExpression(
        QRegularExpression(pattern, QRegularExpression::CaseInsensitiveOption));
    int const all = m_model->rowCount();
    int const rows = m_shown->rowCount();
    m_count->setText(rows == all ? tr("%1 tunes").arg(all)
                                 : tr("%1 of %2 tunes").arg(rows).arg(all));
    if (!chosen() && rows > 0) m_tunes->setCurrentIndex(m_shown->index(0, BookModel::Title));
    if (auto const now = m_tunes->currentIndex(); now.isValid()) m_tunes->scrollTo(now);
    m_soon.start();
}

void BookDialog::preview()
{
    auto const row = chosen();
    m_beginning->clear();
    m_open->setEnabled(row.has_value());
    if (!row) return;
    BookGlance const& glance = m_model->glance(*row);
    if (!glance.tune) {
        m_open->setEnabled(false);
        m_beginning->setText(tr("This tune cannot be read. %1").arg(glance.unreadable));
        return;
    }
    m_beginning->setPixmap(beginningOf(*glance.tune, std::max(200, m_beginning->width()),
                                       previewHeight, devicePixelRatioF()));
}

} // namespace ui
