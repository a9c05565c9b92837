#include "ui/messagebar.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace ui {

MessageBar::MessageBar(QWidget* parent)
    : QWidget(parent), m_words(new QLabel(this)), m_close(new Button(QString(), this))
{
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setTextFormat(Qt::PlainText);
    m_close->setSign(Sign::Close);
    m_close->setLook(Button::Look::Flat);
    m_close->setAccessibleName(tr("Dismiss the message"));
    m_close->setToolTip(tr("Dismiss (Esc)"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(44, 4, 10, 5);
    row->addWidget(m_words, 1);
    row->addWidget(m_close, 0, Qt::AlignTop);
    connect(m_close, &QAbstractButton::clicked, this, &MessageBar::dismiss);
    m_words->setForegroundRole(QPalette::BrightText); // the theme keeps it for messages
    hide();
}

void MessageBar::tell(QString const& words)
{
    m_words->setText(words);
    setAccessibleName(tr("Message: %1").arg(words));
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

QString MessageBar::words() const { return m_words->text(); }

void MessageBar::dismiss()
{
    m_words->clear();
    hide();
}

void MessageBar::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.warnWash));
    painter.fillRect(QRect(0, 0, 4, height()), colour(p.amber));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, height() - 1, width(), height() - 1);
    paintSign(painter, Sign::Notice, {17, (height() - 17) / 2.0, 17, 17}, colour(p.warnInk));
}

} // namespace ui
