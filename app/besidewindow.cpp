#include "app/besidewindow.h"

#include "ui/session.h"
#include "ui/words.h"
#include "ui/workbench.h"

namespace app {

BesideWindow::BesideWindow(Desk const& desk, QAction* action, QString program)
    : QObject(&desk.workbench), m_desk(desk), m_copy(std::move(program), this)
{
    connect(action, &QAction::triggered, this, &BesideWindow::open);
    connect(&m_copy, &SecondCopy::said, this, &BesideWindow::hear);
    connect(&m_copy, &SecondCopy::ended, this, &BesideWindow::tellEnd);
}

QString BesideWindow::forWhom() const
{
    proposal::Brief const& brief = m_desk.session.standing();
    return tr("%1, %2 hand, level %3")
        .arg(ui::harpWords(brief.harp), ui::handWords(brief.hand))
        .arg(brief.level.number);
}

// The window stays free: it can be used beside it.
void BesideWindow::show(QDialog& dialog)
{
    dialog.setAttribute(Qt::WA_DeleteOnClose);
    dialog.show();
    dialog.raise();
    dialog.activateWindow();
}

} // namespace app
