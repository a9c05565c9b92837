#include "ui/followedbox.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ui {

FollowedBox::FollowedBox(QWidget* parent)
    : QWidget(parent), m_heading(new QLabel(tr("What followed"), this)),
      m_words(new QLabel(this)), m_onlyThis(new Button(tr("Only this one"), this)),
      m_letFollow(new Button(tr("Let it follow"), this))
{
    m_heading->setFont(scaledFont(*this, 1.05, QFont::Bold));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setForegroundRole(QPalette::PlaceholderText);
    m_onlyThis->setToolTip(tr("The other chords keep the shapes they had"));
    m_letFollow->setToolTip(tr("The changes stay, and their marks go"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 2, 0, 2);
    column->setSpacing(3);
    column->addWidget(m_heading);
    column->addWidget(m_words);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    row->addWidget(m_onlyThis);
    row->addWidget(m_letFollow);
    row->addStretch(1);
    column->addLayout(row);
    connect(m_onlyThis, &QAbstractButton::clicked, this, &FollowedBox::onlyThisClicked);
    connect(m_letFollow, &QAbstractButton::clicked, this, &FollowedBox::letFollowClicked);
    hide();
}

void FollowedBox::setLines(QStringList const& lines)
{
    if (m_lines == lines) return;
    m_lines = lines;
    tellFew();
    m_words->setToolTip(lines.join(QLatin1Char('\n')));
    setAccessibleName(tr("What followed: %1").arg(lines.join(QStringLiteral(". "))));
    setVisible(!lines.isEmpty());
    emit resized();
}

void FollowedBox::setLow(bool low)
{
    if (m_low == low) return;
    m_low = low;
    tellFew();
}

// All of them would leave no room for the shapes.
void FollowedBox::tellFew()
{
    int const told = m_low ? 1 : 3;
    auto const more = m_lines.size() - told;
    QStringList few = m_lines.mid(0, told);
    if (more > 0 && !m_low) few << tr("and %1 more").arg(more);
    m_heading->setText(more > 0 && m_low ? tr("What followed (1 of %1)").arg(m_lines.size())
                                         : tr("What followed"));
    m_words->setText(few.join(QLatin1Char('\n')));
}

int FollowedBox::heightFor(int width) const
{
    if (m_lines.isEmpty()) return 0;
    return m_heading->sizeHint().height() + m_words->heightForWidth(width) +
           m_onlyThis->sizeHint().height() + 12;
}

} // namespace ui
