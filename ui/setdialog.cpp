#include "ui/setdialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr int rowRole = Qt::UserRole; // of a list's item: the tune's row

QString tuneWords(BookTune const& tune)
{
    QString words =
        tune.title.isEmpty() ? SetDialog::tr("Tune %1").arg(tune.number) : tune.title;
    QStringList more;
    for (QString const& one : {tune.kind, tune.key, tune.meter})
        if (!one.isEmpty()) more << one;
    if (!more.isEmpty()) words += QStringLiteral("  (%1)").arg(more.join(QStringLiteral(", ")));
    return words;
}

QPushButton* smallButton(QString const& words, QWidget* parent)
{
    auto* const button = new QPushButton(words, parent);
    button->setAutoDefault(false);
    return button;
}

} // namespace

SetDialog::SetDialog(std::vector<BookTune> tunes, QString const& forWhom, QString const& into,
                     int current, QWidget* parent)
    : QDialog(parent), m_all(std::move(tunes)), m_words(new QLineEdit(this)),
      m_tunes(new QListWidget(this)), m_set(new QListWidget(this)),
      m_title(new QLineEdit(this)),
      m_anyOrder(
          new QCheckBox(tr("Put them in the &order that needs the fewest lever flips"), this)),
      m_into(new QLineEdit(this)), m_notes(new QListWidget(this)), m_state(new QLabel(this)),
      m_addButton(smallButton(tr("&Add"), this)),
      m_outButton(smallButton(tr("Take o&ut"), this)),
      m_upButton(smallButton(tr("&Earlier"), this)),
      m_downButton(smallButton(tr("&Later"), this))
{
    setWindowTitle(tr("A set of tunes"));
    m_words->setPlaceholderText(tr("Part of a title, kind or key"));
    m_words->setAccessibleName(tr("Find a tune"));
    m_tunes->setAccessibleName(tr("Tunes of the book"));
    m_set->setAccessibleName(tr("Tunes of the set, in their order"));
    m_words->setClearButtonEnabled(true);
    for (std::size_t i = 0; i < m_all.size(); ++i) {
        auto* const item = new QListWidgetItem(tuneWords(m_all[i]), m_tunes);
        item->setData(rowRole, static_cast<int>(i));
    }

    auto* const lists = new QGridLayout;
    auto* const all = new QLabel(tr("&Tunes of this tunebook"), this);
    all->setBuddy(m_tunes);
    auto* const chosen = new QLabel(tr("The &set, in the order of playing"), this);
    chosen->setBuddy(m_set);
    auto* const buttons = new QVBoxLayout;
    buttons->addStretch(1);
    for (QPushButton* button : {m_addButton, m_outButton, m_upButton, m_downButton})
        buttons->addWidget(button);
    buttons->addStretch(1);
    lists->addWidget(all, 0, 0);
    lists->addWidget(chosen, 0, 2);
    lists->addWidget(m_words, 1, 0);
    lists->addWidget(m_tunes, 2, 0);
    lists->addLayout(buttons, 1, 1, 2, 1);
    lists->addWidget(m_set, 1, 2, 2, 1);
    lists->setColumnStretch(0, 1);
    lists->setColumnStretch(2, 1);

    auto* const form = new QFormLayout;
    m_title->setPlaceholderText(tr("The titles of the tunes"));
    form->addRow(tr("T&itle of the set"), m_title);
    form->addRow(tr("For"), new QLabel(forWhom, this));
    auto* const kinds = new QHBoxLayout;
    std::pair<QString, QString> const offered[] = {
        {tr("Sheet (PDF)"), QStringLiteral("pdf")},
        {tr("Sound"), QStringLiteral("ogg")},
        {tr("MIDI"), QStringLiteral("mid")},
        {tr("Words (HTML)"), QStringLiteral("html")}};
    for (auto const& [words, kind] : offered) {
        auto* const box = new QCheckBox(words, this);
        box->setProperty("kind", kind);
        box->setChecked(m_kinds.isEmpty());
        connect(box, &QCheckBox::toggled, this, &SetDialog::enable);
        m_kinds << box;
        kinds->addWidget(box);
    }
    kinds->addStretch(1);
    form->addRow(tr("Make"), kinds);
    auto* const file = new QHBoxLayout;
    m_into->setText(into + tr("/Set"));
    m_into->setAccessibleName(tr("Save as"));
    auto* const choose = smallButton(tr("Choose…"), this);
    connect(choose, &QPushButton::clicked, this, &SetDialog::chooseFile);
    file->addWidget(m_into, 1);
    file->addWidget(choose);
    form->addRow(tr("Save as"), file);

    m_notes->setAccessibleName(tr("Levers and things to check"));
    m_notes->setWordWrap(true);
    m_notes->setMaximumHeight(110);
    m_notes->hide(); // until there is something to check
    m_state->setWordWrap(true);
    auto* const closing = new QDialogButtonBox(QDialogButtonBox::Close, this);
    m_start = closing->addButton(tr("&Make the set"), QDialogButtonBox::ActionRole);
    m_start->setDefault(true);
    auto* const column = new QVBoxLayout(this);
    column->addLayout(lists, 1);
    column->addWidget(m_anyOrder);
    column->addLayout(form);
    column->addWidget(m_state);
    column->addWidget(m_notes);
    column->addWidget(closing);

    connect(m_words, &QLineEdit::textChanged, this, &SetDialog::narrow);
    m_words->installEventFilter(this);
    connect(m_tunes, &QListWidget::itemActivated, this, &SetDialog::addCurrent);
    connect(m_addButton, &QPushButton::clicked, this, &SetDialog::addCurrent);
    connect(m_outButton, &QPushButton::clicked, this, &SetDialog::takeOut);
    connect(m_upButton, &QPushButton::clicked, this, [this] { move(-1); });
    connect(m_downButton, &QPushButton::clicked, this, [this] { move(1); });
    connect(m_set, &QListWidget::currentRowChanged, this, &SetDialog::enable);
    connect(m_tunes, &QListWidget::currentRowChanged, this, &SetDialog::enable);
    connect(m_into, &QLineEdit::textChanged, this, &SetDialog::enable);
    connect(m_start, &QPushButton::clicked, this, [this] {
        if (m_running)
            emit cancelClicked();
        else
            emit startClicked();
    });
    connect(closing, &QDialogButtonBox::rejected, this, &SetDialog::reject);
    m_tunes->setCurrentRow(std::max(current, 0));
    if (current >= 0 && current < static_cast<int>(m_all.size())) add(current);
    resize(760, 620);
    enable();
}

QList<int> SetDialog::numbers() const
{
    QList<int> out;
    for (int i = 0; i < m_set->count(); ++i)
        out << m_all[static_cast<std::size_t>(m_set->item(i)->data(rowRole).toInt())].number;
    return out;
}

QString SetDialog::title() const { return m_title->text().trimmed(); }
bool SetDialog::anyOrder() const { return m_anyOrder->isChecked(); }

QStringList SetDialog::files() const
{
    QStringList out;
    for (QCheckBox const* box : m_kinds)
        if (box->isChecked())
            out << m_into->text().trimmed() + QLatin1Char('.') +
                       box->property("kind").toString();
    return out;
}

void SetDialog::add(int row)
{
    if (m_running || m_set->count() >= mostTunes) return;
    auto* const item =
        new QListWidgetItem(tuneWords(m_all[static_cast<std::size_t>(row)]), m_set);
    item->setData(rowRole, row);
    m_set->setCurrentItem(item);
    changed();
}

void SetDialog::addCurrent()
{
    QListWidgetItem const* item = m_tunes->currentItem();
    if (item && !item->isHidden()) add(item->data(rowRole).toInt());
}

void SetDialog::changed()
{
    m_notes->clear();
    m_notes->hide();
    m_state->clear();
    enable();
}

void SetDialog::takeOut()
{
    delete m_set->takeItem(m_set->currentRow());
    changed();
}

void SetDialog::move(int by)
{
    int const from = m_set->currentRow();
    int const to = from + by;
    if (from < 0 || to < 0 || to >= m_set->count()) return;
    m_set->insertItem(to, m_set->takeItem(from));
    m_set->setCurrentRow(to);
    changed();
}

void SetDialog::narrow(QString const& words)
{
    for (int i = 0; i < m_tunes->count(); ++i)
        m_tunes->item(i)->setHidden(
            !m_tunes->item(i)->text().contains(words.trimmed(), Qt::CaseInsensitive));
    QListWidgetItem const* current = m_tunes->currentItem();
    if (!current || current->isHidden()) step(1, -1);
    enable();
}

// To the next tune that is shown, from one row on.
void SetDialog::step(int by, int from)
{
    for (int row = from + by; row >= 0 && row < m_tunes->count(); row += by)
        if (!m_tunes->item(row)->isHidden()) {
            m_tunes->setCurrentRow(row);
            return;
        }
}

bool SetDialog::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_words || event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    int const key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter)
        addCurrent();
    else if (key == Qt::Key_Down)
        step(1, m_tunes->currentRow());
    else if (key == Qt::Key_Up)
        step(-1, m_tunes->currentRow());
    else
        return QDialog::eventFilter(watched, event);
    return true;
}

void SetDialog::chooseFile()
{
    QString chosen = QFileDialog::getSaveFileName(this, tr("Save the set as"), m_into->text());
    for (QCheckBox const* box : m_kinds) {
        QString const ending = QLatin1Char('.') + box->property("kind").toString();
        if (chosen.endsWith(ending)) chosen.chop(ending.size());
    }
    if (!chosen.isEmpty()) m_into->setText(chosen);
}

void SetDialog::enable()
{
    bool const free = !m_running;
    for (QWidget* part :
         std::initializer_list<QWidget*>{m_words, m_tunes, m_set, m_title, m_anyOrder, m_into})
        part->setEnabled(free);
    for (QCheckBox* box : m_kinds) box->setEnabled(free);
    m_addButton->setEnabled(free && m_tunes->currentItem() &&
                            !m_tunes->currentItem()->isHidden() && m_set->count() < mostTunes);
    m_outButton->setEnabled(free && m_set->currentItem());
    m_upButton->setEnabled(free && m_set->currentRow() > 0);
    m_downButton->setEnabled(free && m_set->currentItem() &&
                             m_set->currentRow() + 1 < m_set->count());
    m_start->setText(m_running ? tr("&Cancel") : tr("&Make the set"));
    m_start->setEnabled(m_running || (m_set->count() > 1 && !files().isEmpty() &&
                                      !m_into->text().trimmed().isEmpty()));
    if (!m_running && m_set->count() < 2)
        m_state->setText(tr("A set has 2 to %1 tunes.").arg(mostTunes));
    if (!m_running && m_set->count() == mostTunes)
        m_state->setText(tr("A set has at most %1 tunes.").arg(mostTunes));
}

void SetDialog::started()
{
    m_running = true;
    m_notes->clear();
    m_state->setText(tr("The tunes are being arranged…"));
    enable();
}

void SetDialog::addNote(QString const& words)
{
    m_notes->addItem(words);
    m_notes->show();
}

void SetDialog::ended(QString const& words)
{
    m_running = false;
    enable();
    m_state->setText(words);
}

void SetDialog::reject()
{
    if (m_running)
        emit cancelClicked();
    else
        QDialog::reject();
}

} // namespace ui
