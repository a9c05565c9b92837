#include "ui/statusline.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QPainter>

namespace ui {

QString toCheckWords(qsizetype count)
{
    return count == 1 ? StatusLine::tr("1 thing to check")
                      : StatusLine::tr("%1 things to check").arg(count);
}

StatusLine::StatusLine(QWidget* parent)
    : QWidget(parent), SpokenAs(QAccessible::StatusBar), m_warnings(new Button(QString(), this))
{
    m_warnings->setSign(Sign::Notice);
    m_warnings->setLook(Button::Look::Flat);
    m_warnings->hide();
    connect(m_warnings, &QAbstractButton::clicked, this, &StatusLine::warningsClicked);
    setFixedHeight(fontMetrics().height() + 14);
}

void StatusLine::setWords(QString const& left, QString const& right)
{
    if (m_left == left && m_right == right) return;
    m_left = left;
    m_right = right;
    setAccessibleName(right.isEmpty() ? left : left + QStringLiteral(". ") + right);
    update();
}

void StatusLine::setWarnings(QStringList const& warnings)
{
    auto const count = warnings.size();
    m_warnings->setVisible(count > 0);
    m_warnings->setText(toCheckWords(count));
    m_warnings->setToolTip(warnings.join(QLatin1Char('\n')));
    place();
}

void StatusLine::place()
{
    QSize const size = m_warnings->sizeHint();
    m_warnings->setGeometry(width() - size.width() - 8, 1, size.width(), height() - 1);
    update();
}

void StatusLine::resizeEvent(QResizeEvent*) { place(); }

void StatusLine::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.card));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, 0, width(), 0);
    painter.setFont(scaledFont(*this, 0.95));
    painter.setPen(colour(p.quiet));
    QRect inside = rect().adjusted(16, 1, -16, 0);
    if (!m_warnings->isHidden()) inside.setRight(m_warnings->x() - 10);
    int const right = painter.fontMetrics().horizontalAdvance(m_right);
    painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter, m_right);
    if (isRightToLeft())
        inside.setLeft(inside.left() + right + 16);
    else
        inside.setRight(inside.right() - right - 16);
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_left, Qt::ElideRight, inside.width()));
}

} // namespace ui
