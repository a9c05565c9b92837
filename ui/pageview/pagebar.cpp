#include "ui/pageview/pagebar.h"

#include "ui/button.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace ui {

namespace {

Button* flat(QString const& text, QString const& name, QString const& key, QWidget* parent)
{
    auto* button = new Button(text, parent);
    button->setLook(Button::Look::Flat);
    button->setAccessibleName(name);
    button->setToolTip(QStringLiteral("%1 (%2)").arg(name, key));
    return button;
}

} // namespace

PageBar::PageBar(QWidget* parent)
    : QWidget(parent),
      m_before(flat(QStringLiteral("‹"), tr("Previous page"), tr("Page Up"), this)),
      m_page(new QLabel(this)),
      m_after(flat(QStringLiteral("›"), tr("Next page"), tr("Page Down"), this)),
      m_smaller(flat(QStringLiteral("−"), tr("Smaller"), tr("-"), this)),
      m_zoom(new QLabel(this)),
      m_larger(flat(QStringLiteral("+"), tr("Larger"), tr("+"), this)),
      m_width(flat(tr("Width"), tr("As wide as the view"), tr("0"), this)),
      m_whole(flat(tr("Page"), tr("The whole page"), tr("9"), this))
{
    m_page->setAlignment(Qt::AlignCenter);
    m_zoom->setAlignment(Qt::AlignCenter);
    m_zoom->setMinimumWidth(m_zoom->fontMetrics().horizontalAdvance(tr("%1 %").arg(400)) + 8);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 2, 10, 2);
    row->setSpacing(4);
    for (QWidget* part : {static_cast<QWidget*>(m_before), static_cast<QWidget*>(m_page),
                          static_cast<QWidget*>(m_after)})
        row->addWidget(part);
    row->addStretch(1);
    for (QWidget* part : {static_cast<QWidget*>(m_smaller), static_cast<QWidget*>(m_zoom),
                          static_cast<QWidget*>(m_larger), static_cast<QWidget*>(m_width),
                          static_cast<QWidget*>(m_whole)})
        row->addWidget(part);
    connect(m_before, &QAbstractButton::clicked, this, [this] { emit turned(-1); });
    connect(m_after, &QAbstractButton::clicked, this, [this] { emit turned(1); });
    connect(m_smaller, &QAbstractButton::clicked, this, &PageBar::zoomOutClicked);
    connect(m_larger, &QAbstractButton::clicked, this, &PageBar::zoomInClicked);
    connect(m_width, &QAbstractButton::clicked, this, &PageBar::fitWidthClicked);
    connect(m_whole, &QAbstractButton::clicked, this, &PageBar::fitPageClicked);
    setPage(0, 0);
}

void PageBar::setPage(int page, int of)
{
    m_page->setText(of > 0 ? tr("Page %1 of %2").arg(page).arg(of) : QString());
    m_before->setEnabled(page > 1);
    m_after->setEnabled(page < of);
}

void PageBar::setZoom(double zoom) { m_zoom->setText(tr("%1 %").arg(qRound(100 * zoom))); }

void PageBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawLine(0, 0, width(), 0);
}

} // namespace ui
