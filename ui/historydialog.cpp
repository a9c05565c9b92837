#include "ui/historydialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QUndoStack>
#include <QUndoView>
#include <QVBoxLayout>

namespace ui {

HistoryDialog::HistoryDialog(QUndoStack& steps, QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("History"));
    auto* const words =
        new QLabel(tr("Each line is the tune after that step. Choose one to go back to it; the "
                      "later ones stay until you change something else."),
                   this);
    words->setWordWrap(true);
    auto* const list = new QUndoView(&steps, this);
    list->setObjectName(QStringLiteral("steps"));
    list->setEmptyLabel(tr("As it was opened"));
    list->setAccessibleName(windowTitle());
    list->setAlternatingRowColors(true);
    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* const column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(list);
    column->addWidget(buttons);
    resize(380, 420);
    list->setFocus();
}

} // namespace ui
