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
    hide();
}

void MessageBar::tell(QString const& words, Tone tone)
{
    m_tone = tone;
    m_words->setText(words);
    // The theme keeps the bright role for notices.
    m_words->setForegroundRole(tone == Tone::Notice ? QPalette::BrightText
                                                    : QPalette::WindowText);
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
    bool const notice = m_tone == Tone::Notice;
    painter.fillRect(rect(), colour(notice ? p.warnWash : p.leafWash));
    painter.fillRect(QRect(0, 0, 4, height()), colour(notice ? p.amber : p.leaf));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, height() - 1, width(), height() - 1);
    paintSign(painter, notice ? Sign::Notice : Sign::Done, {17, (height() - 17) / 2.0, 17, 17},
              colour(notice ? p.warnInk : p.leaf));
}

} // namespace ui
