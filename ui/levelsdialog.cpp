#include "ui/levelsdialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui {

LevelsDialog::LevelsDialog(QWidget* parent) : QDialog(parent)
{
    constexpr int hardest = 5;
    setWindowTitle(tr("Export levels"));
    auto* const column = new QVBoxLayout(this);
    for (int level = 1; level <= hardest; ++level) {
        auto* const box = new QCheckBox(tr("Level &%1").arg(level), this);
        box->setChecked(true);
        column->addWidget(box);
        m_levels.append(box);
    }
    auto* const buttons =
        new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    QPushButton* const start = buttons->button(QDialogButtonBox::Ok);
    start->setText(tr("Export…"));
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QCheckBox const* box : m_levels)
        connect(box, &QCheckBox::toggled, this,
                [this, start] { start->setEnabled(!levels().empty()); });
    setMinimumWidth(280);
}

std::vector<int> LevelsDialog::levels() const
{
    std::vector<int> out;
    for (qsizetype i = 0; i < m_levels.size(); ++i)
        if (m_levels[i]->isChecked()) out.push_back(static_cast<int>(i) + 1);
    return out;
}

} // namespace ui
