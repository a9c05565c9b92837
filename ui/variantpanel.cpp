#include "ui/variantpanel.h"

#include "ui/theme.h"

#include <QPainter>

namespace ui {

VariantPanel::VariantPanel(QWidget* parent) : QWidget(parent), m_list(new VariantList(this))
{
    setMinimumWidth(230);
}

int VariantPanel::headingHeight() const
{
    return static_cast<int>(QFontMetricsF(scaledFont(*this, 1.12, QFont::Bold)).height() +
                            QFontMetricsF(scaledFont(*this, 0.92)).height()) +
           18;
}

void VariantPanel::setHeading(QString const& title, QString const& detail)
{
    m_title = title;
    m_detail = detail;
    update();
}

void VariantPanel::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.paper));
    int const across = width() - 26;
    painter.setFont(scaledFont(*this, 1.12, QFont::Bold));
    painter.setPen(colour(p.ink));
    int const large = painter.fontMetrics().height();
    painter.drawText(QRect(14, 10, across, large), Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_title, Qt::ElideRight, across));
    painter.setFont(scaledFont(*this, 0.92));
    painter.setPen(colour(p.quiet));
    painter.drawText(QRect(14, 11 + large, across, painter.fontMetrics().height()),
                     Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(m_detail, Qt::ElideRight, across));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, headingHeight() - 1, width(), headingHeight() - 1);
}

void VariantPanel::resizeEvent(QResizeEvent*)
{
    m_list->setGeometry(0, headingHeight(), width(), height() - headingHeight());
}

} // namespace ui
