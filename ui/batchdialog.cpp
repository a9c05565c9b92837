#include "ui/batchdialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ui {

BatchDialog::BatchDialog(QString const& from, QString const& forWhom, QWidget* parent)
    : QDialog(parent), m_leave(new QCheckBox(tr("&Leave papers that are there already"), this)),
      m_progress(new QProgressBar(this)), m_words(new QLabel(this)),
      m_troubles(new QListWidget(this))
{
    setWindowTitle(tr("A folder of tunes"));
    auto* const form = new QFormLayout;
    m_from = folderRow(form, tr("&Tunes in"), tr("Folder of tunes"));
    m_into = folderRow(form, tr("&Papers into"), tr("Folder for the papers"));
    m_from->setText(from);
    form->addRow(tr("For"), new QLabel(forWhom, this));
    auto* const kinds = new QHBoxLayout;
    std::pair<QString, QString> const offered[] = {{tr("Sheet (PDF)"), QStringLiteral("pdf")},
                                                   {tr("MIDI"), QStringLiteral("mid")},
                                                   {tr("MusicXML"), QStringLiteral("musicxml")},
                                                   {tr("Sound"), QStringLiteral("ogg")},
                                                   {tr("Arrangement"), QStringLiteral("sallow")}};
    for (auto const& [words, kind] : offered) {
        auto* const box = new QCheckBox(words, this);
        box->setProperty("kind", kind);
        box->setChecked(m_kinds.isEmpty());
        connect(box, &QCheckBox::toggled, this, &BatchDialog::enable);
        m_kinds << box;
        kinds->addWidget(box);
    }
    kinds->addStretch(1);
    form->addRow(tr("Make"), kinds);
    form->addRow(QString(), m_leave);

    m_progress->setAccessibleName(tr("Files done"));
    m_troubles->setAccessibleName(tr("What could not be done"));
    m_troubles->setWordWrap(true);
    m_troubles->setToolTip(tr("Enter or a double click opens the tune"));
    m_words->setWordWrap(true);
    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    m_start = buttons->addButton(tr("&Start"), QDialogButtonBox::ActionRole);
    m_start->setDefault(true);
    connect(m_start, &QPushButton::clicked, this, [this] {
        if (m_running)
            emit cancelClicked();
        else
            emit startClicked();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &BatchDialog::reject);
    connect(m_troubles, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        emit placeWanted(m_places[static_cast<std::size_t>(m_troubles->row(item))]);
    });
    for (QLineEdit* folder : {m_from, m_into})
        connect(folder, &QLineEdit::textChanged, this, &BatchDialog::enable);

    auto* const column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_progress);
    column->addWidget(m_words);
    column->addWidget(m_troubles, 1);
    column->addWidget(buttons);
    m_progress->setValue(0);
    resize(620, 480);
    enable();
}

QLineEdit* BatchDialog::folderRow(QFormLayout* form, QString const& words, QString const& title)
{
    auto* const row = new QHBoxLayout;
    auto* const folder = new QLineEdit(this);
    folder->setAccessibleName(title);
    auto* const choose = new QPushButton(tr("Choose…"), this);
    choose->setAutoDefault(false);
    connect(choose, &QPushButton::clicked, this, [this, folder, title] {
        QString const chosen = QFileDialog::getExistingDirectory(this, title, folder->text());
        if (!chosen.isEmpty()) folder->setText(chosen);
    });
    row->addWidget(folder, 1);
    row->addWidget(choose);
    auto* const label = new QLabel(words, this);
    label->setBuddy(folder);
    form->addRow(label, row);
    return folder;
}

QString BatchDialog::from() const { return m_from->text().trimmed(); }
QString BatchDialog::into() const { return m_into->text().trimmed(); }
bool BatchDialog::leavesWhatIsThere() const { return m_leave->isChecked(); }

QStringList BatchDialog::kinds() const
{
    QStringList out;
    for (QCheckBox const* box : m_kinds)
        if (box->isChecked()) out << box->property("kind").toString();
    return out;
}

void BatchDialog::enable()
{
    for (QWidget* choice : std::initializer_list<QWidget*>{m_from, m_into, m_leave})
        choice->setEnabled(!m_running);
    for (QCheckBox* box : m_kinds) box->setEnabled(!m_running);
    m_start->setText(m_running ? tr("&Cancel") : tr("&Start"));
    m_start->setEnabled(m_running ||
                        (!from().isEmpty() && !into().isEmpty() && !kinds().isEmpty()));
}

void BatchDialog::started()
{
    m_running = true;
    m_troubles->clear();
    m_places.clear();
    m_progress->setRange(0, 0); // until it is known how many there are
    m_words->setText(tr("Arranging …"));
    enable();
}

void BatchDialog::reached(int done, int all)
{
    m_progress->setRange(0, std::max(all, 1));
    m_progress->setValue(done);
    m_words->setText(tr("%1 of %2 tunes").arg(done).arg(all));
}

void BatchDialog::addTrouble(QString const& words, BatchPlace const& place)
{
    QString shown = words;
    m_troubles->addItem(shown.replace(QDir(from()).path() + QLatin1Char('/'), QString()));
    m_places.push_back(place);
}

int BatchDialog::troubles() const { return m_troubles->count(); }

void BatchDialog::ended(QString const& words)
{
    m_running = false;
    m_progress->setRange(0, 1);
    m_progress->setValue(1);
    m_words->setText(words);
    enable();
}

void BatchDialog::reject()
{
    if (m_running)
        emit cancelClicked();
    else
        QDialog::reject();
}

} // namespace ui
