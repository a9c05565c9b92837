#include "ui/tunefolders.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

TuneFolders::TuneFolders(QWidget* parent)
    : QDialog(parent), m_folders(new QListWidget(this)),
      m_remove(new QPushButton(tr("&Take out of the list"), this)), m_heading(new QLabel(this)),
      m_troubles(new QPlainTextEdit(this))
{
    setWindowTitle(tr("Folders of your tunes"));
    auto* const heading = new QLabel(
        tr("Every tune in these &folders, and in the folders inside them, is in the list. The "
           "files stay as they are."),
        this);
    heading->setWordWrap(true);
    heading->setBuddy(m_folders);
    m_folders->setAccessibleName(tr("Folders"));
    auto* const add = new QPushButton(tr("&Add a folder…"), this);
    m_heading->setBuddy(m_troubles);
    m_troubles->setReadOnly(true);
    m_troubles->setTabChangesFocus(true);
    m_troubles->setAccessibleName(tr("What could not be read"));
    connect(add, &QPushButton::clicked, this, &TuneFolders::askForFolder);
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (auto const* const item = m_folders->currentItem())
            emit folderRemoved(item->data(Qt::UserRole).toString());
    });
    connect(m_folders, &QListWidget::currentRowChanged, m_remove,
            [this](int row) { m_remove->setEnabled(row >= 0); });
    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* const changes = new QHBoxLayout;
    changes->addWidget(add);
    changes->addWidget(m_remove);
    changes->addStretch(1);
    auto* const column = new QVBoxLayout(this);
    column->addWidget(heading);
    column->addWidget(m_folders, 1);
    column->addLayout(changes);
    column->addWidget(m_heading);
    column->addWidget(m_troubles, 1);
    column->addWidget(buttons);
    resize(640, 460);
    m_remove->setEnabled(false);
}

void TuneFolders::askForFolder()
{
    QString const folder = QFileDialog::getExistingDirectory(
        this, tr("A folder of tunes"),
        m_folders->count() > 0 ? m_folders->item(0)->data(Qt::UserRole).toString()
                               : QDir::homePath());
    if (!folder.isEmpty()) emit folderAdded(folder);
}

void TuneFolders::setFolders(QStringList const& folders, QStringList const& troubles,
                             int passedOver)
{
    int const row = m_folders->currentRow();
    m_folders->clear();
    for (QString const& folder : folders) {
        auto* const item = new QListWidgetItem(QDir::toNativeSeparators(folder), m_folders);
        item->setData(Qt::UserRole, folder);
    }
    m_folders->setCurrentRow(std::min(row, m_folders->count() - 1));
    m_remove->setEnabled(m_folders->currentItem() != nullptr);
    QStringList words = troubles;
    if (passedOver > 0)
        words << (passedOver == 1 ? tr("1 text file has no tune in it and is left out.")
                                  : tr("%1 text files have no tune in them and are left out.")
                                        .arg(passedOver));
    m_heading->setText(troubles.isEmpty() ? tr("Everything could be read.")
                       : troubles.size() == 1
                           ? tr("1 thing could &not be read:")
                           : tr("%1 things could &not be read:").arg(troubles.size()));
    m_troubles->setPlainText(words.join(QLatin1Char('\n')));
    m_troubles->setVisible(!words.isEmpty());
    m_heading->setVisible(!folders.isEmpty());
}

} // namespace ui
