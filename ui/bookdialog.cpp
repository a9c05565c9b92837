#include "ui/bookdialog.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

BookDialog::BookDialog(QString const& book, QStringList const& tunes, int current,
                       QWidget* parent)
    : QDialog(parent), m_words(new QLineEdit(this)), m_tunes(new QListWidget(this))
{
    setWindowTitle(tr("Tunes of a book"));
    auto* const heading =
        new QLabel(tr("%1 holds %2 tunes.").arg(book).arg(tunes.size()), this);
    m_words->setPlaceholderText(tr("Part of a title, or a number"));
    m_words->setClearButtonEnabled(true);
    m_words->setAccessibleName(tr("Words of the title"));
    m_words->installEventFilter(this);
    m_tunes->setAccessibleName(tr("Tunes"));
    m_tunes->addItems(tunes);
    m_tunes->setCurrentRow(current);

    auto* const buttons =
        new QDialogButtonBox(QDialogButtonBox::Open | QDialogButtonBox::Cancel, this);
    for (QAbstractButton* button : buttons->buttons()) button->setIcon({});
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_words, &QLineEdit::textChanged, this, &BookDialog::narrow);
    connect(m_tunes, &QListWidget::itemActivated, this, &QDialog::accept);

    auto* const column = new QVBoxLayout(this);
    column->addWidget(heading);
    column->addWidget(m_words);
    column->addWidget(m_tunes);
    column->addWidget(buttons);
    resize(460, 420);
}

std::optional<int> BookDialog::chosen() const
{
    QListWidgetItem const* item = m_tunes->currentItem();
    if (!item || item->isHidden()) return std::nullopt;
    return m_tunes->currentRow();
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

void BookDialog::narrow(QString const& words)
{
    int first = -1;
    for (int row = 0; row < m_tunes->count(); ++row) {
        QListWidgetItem* const item = m_tunes->item(row);
        bool const fits = item->text().contains(words, Qt::CaseInsensitive);
        item->setHidden(!fits);
        if (fits && first < 0) first = row;
    }
    if (!chosen()) m_tunes->setCurrentRow(first);
}

std::optional<int> chooseTune(QString const& book, QStringList const& tunes, int current,
                              QWidget* parent)
{
    BookDialog dialog(book, tunes, current, parent);
    if (dialog.exec() != QDialog::Accepted) return std::nullopt;
    return dialog.chosen();
}

} // namespace ui
