#include "ui/panes.h"

#include "ui/stringbank.h"
#include "ui/variantpanel.h"

#include <QDataStream>
#include <QIODevice>
#include <QSplitter>

#include <array>

namespace ui {

Panes::Panes(Actions const& actions, QWidget* tune, VariantPanel* shapes, StringBank* bank,
             std::vector<QWidget*> frame, QWidget* window)
    : QObject(window), m_actions(actions), m_halves(new QSplitter(Qt::Vertical, window)),
      m_sides(new QSplitter(Qt::Horizontal, window)), m_shapes(shapes), m_bank(bank),
      m_frame(std::move(frame))
{
    m_sides->addWidget(tune);
    m_sides->addWidget(m_shapes);
    m_sides->setStretchFactor(0, 1);
    m_sides->setSizes({900, 350});
    m_halves->addWidget(m_sides);
    m_halves->addWidget(m_bank);
    m_halves->setStretchFactor(0, 3);
    m_halves->setStretchFactor(1, 1);
    m_halves->setSizes({480, 214});
    for (QSplitter* splitter : {m_sides, m_halves}) {
        splitter->setChildrenCollapsible(false);
        splitter->setHandleWidth(3);
    }
    for (QAction* pane : {m_actions.showBank, m_actions.showShapes, m_actions.bankAbove,
                          m_actions.shapesLeft, m_actions.alone})
        connect(pane, &QAction::toggled, this, &Panes::show);
}

void Panes::goToNext(QWidget* tune)
{
    std::array<QWidget*, 3> const panes{tune, m_shapes->list(), m_bank};
    std::size_t here = panes.size() - 1;
    for (std::size_t i = 0; i < panes.size(); ++i)
        if (panes[i]->hasFocus()) here = i;
    std::size_t next = (here + 1) % panes.size();
    while (next != here && !panes[next]->isVisible()) next = (next + 1) % panes.size();
    panes[next]->setFocus(Qt::TabFocusReason);
}

void Panes::show()
{
    bool const alone = m_actions.alone->isChecked();
    m_sides->insertWidget(m_actions.shapesLeft->isChecked() ? 0 : 1, m_shapes);
    m_halves->insertWidget(m_actions.bankAbove->isChecked() ? 0 : 1, m_bank);
    m_shapes->setVisible(!alone && m_actions.showShapes->isChecked());
    m_bank->setVisible(!alone && m_actions.showBank->isChecked());
    for (QWidget* part : m_frame) part->setVisible(!alone);
}

QByteArray Panes::kept() const
{
    QByteArray out;
    QDataStream stream(&out, QIODevice::WriteOnly);
    stream << m_actions.showShapes->isChecked() << m_actions.showBank->isChecked()
           << m_actions.shapesLeft->isChecked() << m_actions.bankAbove->isChecked()
           << m_actions.letFollow->isChecked() << m_sides->saveState() << m_halves->saveState();
    return out;
}

void Panes::restore(QByteArray const& kept)
{
    QDataStream stream(kept);
    bool shapes = true, bank = true, left = false, above = false, follow = true;
    QByteArray sides, halves;
    stream >> shapes >> bank >> left >> above >> follow >> sides >> halves;
    if (stream.status() != QDataStream::Ok) return;
    m_actions.showShapes->setChecked(shapes);
    m_actions.showBank->setChecked(bank);
    m_actions.shapesLeft->setChecked(left);
    m_actions.bankAbove->setChecked(above);
    m_actions.letFollow->setChecked(follow);
    show();
    m_sides->restoreState(sides);
    m_halves->restoreState(halves);
}

} // namespace ui
