#include "ui/tunefinder.h"

#include "ui/beginning.h"
#include "ui/tunefolders.h"
#include "ui/tunerows.h"

#include "core/music/key.h"

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <map>
#include <utility>

namespace ui {

namespace {

constexpr int beginningHeight = 96;
// A key after a longer silence is the first of another tune.
constexpr int pauseMs = 3000;

// All that there are of something, the most usual first; the choice stays.
void refill(QComboBox* box, QString const& any, std::map<QString, int> const& counts)
{
    QString const chosen = box->currentData().toString();
    std::vector<std::pair<QString, int>> all(counts.begin(), counts.end());
    std::ranges::stable_sort(all, std::ranges::greater(),
                             [](auto const& one) { return one.second; });
    QSignalBlocker const quiet(box);
    box->clear();
    box->addItem(any, QString());
    for (auto const& [words, count] : all)
        box->addItem(QStringLiteral("%1 (%2)").arg(words).arg(count), words);
    box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

QString keyName(int midi)
{
    constexpr char const* names[] = {"C",  "C♯", "D",  "E♭", "E",  "F",
                                     "F♯", "G",  "A♭", "A",  "B♭", "B"};
    return QString::fromUtf8(names[midi % 12]);
}

} // namespace

TuneFinder::TuneFinder(QWidget* parent)
    : QDialog(parent), m_rows(new TuneRows(this)), m_words(new QLineEdit(this)),
      m_notes(new QLineEdit(this)), m_kind(new QComboBox(this)), m_key(new QComboBox(this)),
      m_time(new QComboBox(this)), m_arranged(new QComboBox(this)), m_count(new QLabel(this)),
      m_said(new QLabel(this)), m_list(new QTableView(this)), m_beginning(new QLabel(this)),
      m_state(new QLabel(this)), m_open(nullptr)
{
    setWindowTitle(tr("Your tunes"));
    m_words->setPlaceholderText(tr("part of a title, a kind, a key, a file"));
    m_words->setClearButtonEnabled(true);
    m_words->setAccessibleName(tr("Search"));
    m_notes->setPlaceholderText(tr("g a b d, or degrees 1 2 3 5, or play them"));
    m_notes->setToolTip(
        tr("The notes that the tune begins with, in any key and rhythm. Letters "
           "or degrees, or keys of your MIDI harp or keyboard; after a pause of "
           "three seconds a key begins again."));
    m_notes->setClearButtonEnabled(true);
    m_notes->setAccessibleName(tr("First notes"));
    for (QLineEdit* line : {m_words, m_notes}) line->installEventFilter(this);
    m_arranged->addItem(tr("Arranged or not"));
    m_arranged->addItem(tr("Arranged"), true);
    m_arranged->addItem(tr("Not arranged yet"), false);
    m_kind->setAccessibleName(tr("Kind"));
    m_key->setAccessibleName(tr("Key"));
    m_time->setAccessibleName(tr("Time signature"));
    m_arranged->setAccessibleName(tr("Arranged"));
    fillChoices();
    place();

    connect(m_words, &QLineEdit::textChanged, this, &TuneFinder::narrow);
    connect(m_notes, &QLineEdit::textEdited, this, [this] { m_played.clear(); });
    connect(m_notes, &QLineEdit::textChanged, this, [this](QString const& text) {
        if (text.isEmpty()) m_played.clear();
        narrow();
    });
    for (QComboBox* box : {m_kind, m_key, m_time, m_arranged})
        connect(box, &QComboBox::currentIndexChanged, this, &TuneFinder::narrow);
    connect(m_list, &QTableView::activated, this, &TuneFinder::open);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, &m_soon,
            qOverload<>(&QTimer::start));
    connect(m_rows, &QAbstractItemModel::modelReset, &m_soon, qOverload<>(&QTimer::start));
    m_soon.setSingleShot(true);
    m_soon.setInterval(80);
    connect(&m_soon, &QTimer::timeout, this, &TuneFinder::preview);
    tellState();
    narrow();
}

void TuneFinder::place()
{
    m_list->setModel(m_rows);
    m_list->setAccessibleName(tr("Tunes"));
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setShowGrid(false);
    m_list->setAlternatingRowColors(true);
    m_list->setTabKeyNavigation(false);
    m_list->setWordWrap(false);
    m_list->setSortingEnabled(true);
    QHeaderView* const columns = m_list->horizontalHeader();
    columns->setSortIndicator(-1, Qt::AscendingOrder);
    columns->setSortIndicatorClearable(true);
    columns->setHighlightSections(false);
    columns->setSectionResizeMode(TuneRows::Title, QHeaderView::Stretch);
    columns->setMinimumSectionSize(40);
    m_list->verticalHeader()->hide();
    m_list->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    m_list->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    int const letter = fontMetrics().averageCharWidth();
    std::pair<int, int> const widths[] = {{TuneRows::Kind, 12},   {TuneRows::Key, 14},
                                          {TuneRows::Time, 6},    {TuneRows::Bars, 5},
                                          {TuneRows::Chords, 13}, {TuneRows::Arranged, 12},
                                          {TuneRows::Opened, 18}, {TuneRows::File, 18}};
    for (auto const& [column, letters] : widths)
        m_list->setColumnWidth(column, letters * letter + 12);
    // These have few words, which fit in every language.
    for (auto const& [column, words] :
         {std::pair{TuneRows::Chords, TuneRows::tr("cannot be read")},
          std::pair{TuneRows::Chords, TuneRows::tr("no chords")},
          std::pair{TuneRows::Arranged, TuneRows::tr("arrangement")}})
        m_list->setColumnWidth(column, std::max(m_list->columnWidth(column),
                                                fontMetrics().horizontalAdvance(words) + 16));

    m_beginning->setFixedHeight(beginningHeight);
    m_beginning->setWordWrap(true);
    m_beginning->setAccessibleName(tr("How the tune begins"));
    m_state->setWordWrap(true);
    m_said->setWordWrap(true);

    auto* const buttons = new QDialogButtonBox(this);
    m_open = buttons->addButton(tr("Open"), QDialogButtonBox::AcceptRole);
    m_open->setDefault(true);
    auto* const folders = buttons->addButton(tr("&Folders…"), QDialogButtonBox::ActionRole);
    folders->setAutoDefault(false);
    buttons->addButton(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(m_open, &QPushButton::clicked, this, &TuneFinder::open);
    connect(folders, &QPushButton::clicked, this, &TuneFinder::openFolders);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* const searchWords = new QLabel(tr("&Search"), this);
    searchWords->setBuddy(m_words);
    auto* const notesWords = new QLabel(tr("First &notes"), this);
    notesWords->setBuddy(m_notes);
    auto* const lines = new QGridLayout;
    lines->addWidget(searchWords, 0, 0);
    lines->addWidget(m_words, 0, 1);
    lines->addWidget(notesWords, 1, 0);
    lines->addWidget(m_notes, 1, 1);
    auto* const choices = new QHBoxLayout;
    for (QComboBox* box : {m_kind, m_key, m_time, m_arranged}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(11);
        choices->addWidget(box, 1);
    }
    choices->addWidget(m_count);
    auto* const column = new QVBoxLayout(this);
    column->addLayout(lines);
    column->addLayout(choices);
    column->addWidget(m_said);
    column->addWidget(m_list, 1);
    column->addWidget(m_beginning);
    column->addWidget(m_state);
    column->addWidget(buttons);
    resize(980, 680);
}

void TuneFinder::begin()
{
    show();
    raise();
    activateWindow();
    m_words->setFocus();
    m_words->selectAll();
}

void TuneFinder::setRows(std::vector<collection::Row> rows)
{
    auto const before = chosen();
    m_rows->setRows(std::move(rows));
    fillChoices();
    narrow();
    if (!before) return;
    for (int row = 0; row < m_rows->rowCount(); ++row)
        if (m_rows->at(row).name == before->name)
            return m_list->setCurrentIndex(m_rows->index(row, TuneRows::Title));
}

void TuneFinder::fillChoices()
{
    std::map<QString, int> kinds;
    std::map<QString, int> keys;
    std::map<QString, int> times;
    for (collection::Row const& row : m_rows->all()) {
        if (!row.tune.unreadable.empty()) continue;
        QString const kind = QString::fromStdString(kindWords(row.tune));
        if (!kind.isEmpty()) ++kinds[kind];
        ++keys[QString::fromStdString(music::shown(row.tune.key))];
        ++times[QString::fromStdString(music::text(row.tune.meter))];
    }
    refill(m_kind, tr("All kinds"), kinds);
    refill(m_key, tr("All keys"), keys);
    refill(m_time, tr("All time signatures"), times);
}

collection::Wish TuneFinder::wish() const
{
    collection::Wish wish;
    wish.words = m_words->text().toStdString();
    wish.kind = m_kind->currentData().toString().toStdString();
    wish.key = m_key->currentData().toString().toStdString();
    wish.meter = m_time->currentData().toString().toStdString();
    if (m_arranged->currentIndex() > 0) wish.arranged = m_arranged->currentData().toBool();
    wish.notes = m_played.empty() ? collection::firstNotesFrom(m_notes->text().toStdString())
                                  : collection::firstNotesPlayed(m_played);
    return wish;
}

void TuneFinder::narrow()
{
    collection::Wish const wanted = wish();
    m_said->setVisible(!wanted.notes);
    if (!wanted.notes)
        m_said->setText(tr("First notes are letters from a to g, such as g a b d, or degrees "
                           "from 1 to 8, such "
                           "as 1 2 3 5."));
    m_rows->setWish(wanted);
    auto const all = static_cast<int>(m_rows->all().size());
    int const some = m_rows->rowCount();
    m_count->setText(some == all ? all == 1 ? tr("1 tune") : tr("%1 tunes").arg(all)
                                 : tr("%1 of %2 tunes").arg(some).arg(all));
    if (some > 0) m_list->setCurrentIndex(m_rows->index(0, TuneRows::Title));
    m_open->setEnabled(some > 0);
}

void TuneFinder::play(int midi)
{
    bool const again = !m_sincePlayed.isValid() || m_sincePlayed.elapsed() > pauseMs;
    m_sincePlayed.start();
    if (again) m_played.clear();
    m_played.push_back(midi);
    QStringList names;
    for (int const key : m_played) names << keyName(key);
    {
        QSignalBlocker const quiet(m_notes);
        m_notes->setText(names.join(QLatin1Char(' ')));
    }
    narrow();
}

std::optional<collection::Row> TuneFinder::chosen() const
{
    QModelIndex const index = m_list->currentIndex();
    if (!index.isValid() || index.row() >= m_rows->rowCount()) return std::nullopt;
    return m_rows->at(index.row());
}

void TuneFinder::open()
{
    auto const row = chosen();
    if (!row || !row->tune.unreadable.empty()) return;
    emit openWanted(*row);
}

void TuneFinder::preview()
{
    auto const row = chosen();
    m_beginning->clear();
    bool const readable = row && row->tune.unreadable.empty();
    m_open->setEnabled(readable);
    if (row && !readable)
        m_beginning->setText(tr("This tune cannot be read. %1")
                                 .arg(QString::fromStdString(row->tune.unreadable)));
    if (!readable || !m_read || !isVisible()) return;
    if (auto tune = m_read(*row))
        m_beginning->setPixmap(beginningOf(*std::move(tune),
                                           std::max(200, m_beginning->width()), beginningHeight,
                                           devicePixelRatioF()));
    else
        m_beginning->setText(tr("This file is not there any more, or has changed."));
}

void TuneFinder::setReading(int done, int all)
{
    m_done = done;
    m_all = all;
    tellState();
}

void TuneFinder::setFolders(QStringList const& folders, QStringList const& troubles,
                            int passedOver)
{
    m_folders = folders;
    m_troubles = troubles;
    m_passedOver = passedOver;
    if (m_foldersDialog) m_foldersDialog->setFolders(folders, troubles, passedOver);
    tellState();
}

void TuneFinder::tellState()
{
    QStringList words;
    if (m_folders.isEmpty())
        words << tr("Choose the folders where your tunes are: press Folders (Alt+F).");
    if (m_all > 0) words << tr("Reading: %1 of %2 files").arg(m_done).arg(m_all);
    if (m_troubles.size() == 1)
        words << m_troubles.first();
    else if (m_troubles.size() > 1)
        words << tr("%1 things could not be read: Folders (Alt+F) lists them.")
                     .arg(m_troubles.size());
    m_state->setText(words.join(QStringLiteral(" · ")));
    m_state->setVisible(!words.isEmpty());
}

void TuneFinder::openFolders()
{
    if (!m_foldersDialog) {
        m_foldersDialog = new TuneFolders(this);
        connect(m_foldersDialog, &TuneFolders::folderAdded, this, &TuneFinder::folderAdded);
        connect(m_foldersDialog, &TuneFolders::folderRemoved, this, &TuneFinder::folderRemoved);
    }
    m_foldersDialog->setFolders(m_folders, m_troubles, m_passedOver);
    m_foldersDialog->show();
    m_foldersDialog->raise();
}

// The list answers Up and Down while words are typed.
bool TuneFinder::eventFilter(QObject* watched, QEvent* event)
{
    if ((watched == m_words || watched == m_notes) && event->type() == QEvent::KeyPress) {
        int const key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp ||
            key == Qt::Key_PageDown)
            return QApplication::sendEvent(m_list, event);
    }
    return QDialog::eventFilter(watched, event);
}

void TuneFinder::resizeEvent(QResizeEvent* event)
{
    QDialog::resizeEvent(event);
    m_soon.start();
}

} // namespace ui
