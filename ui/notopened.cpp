#include "ui/notopened.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ui {

NotOpened::NotOpened(QWidget* parent)
    : QWidget(parent), m_title(new QLabel(this)), m_words(new QLabel(this)),
      m_back(new Button(QString(), this)), m_open(new Button(tr("Open another…"), this))
{
    m_title->setFont(scaledFont(*this, 1.4, QFont::Bold));
    for (QLabel* label : {m_title, m_words}) {
        label->setAlignment(Qt::AlignHCenter);
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    m_back->setLook(Button::Look::Main);
    m_back->setAccessibleName(tr("Back to the open tune"));
    m_back->setToolTip(tr("Show the tune that is open (Esc)"));
    m_open->setToolTip(tr("Another file (Ctrl+O)"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(30, 10, 30, 10);
    column->addStretch(2);
    column->addWidget(m_title);
    column->addWidget(m_words);
    column->addSpacing(10);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    row->addWidget(m_back);
    row->addWidget(m_open);
    row->addStretch(1);
    column->addLayout(row);
    column->addStretch(3);
    connect(m_back, &QAbstractButton::clicked, this, &NotOpened::backClicked);
    connect(m_open, &QAbstractButton::clicked, this, &NotOpened::openClicked);
}

void NotOpened::setWords(QString const& name, QString const& still)
{
    m_title->setText(tr("“%1” could not be opened").arg(name));
    m_words->setText(still.isEmpty() ? tr("The message above says why.")
                                     : tr("The message above says why. “%1” is still open, as "
                                          "you left it.")
                                           .arg(still));
    m_back->setVisible(!still.isEmpty());
    m_back->setText(tr("Back to “%1”").arg(still.size() > 40 ? still.left(39) + QChar(0x2026)
                                                             : still));
    m_back->updateGeometry();
}

} // namespace ui
