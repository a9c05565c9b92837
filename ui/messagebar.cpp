#include "ui/messagebar.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QAccessible>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

MessageBar::MessageBar(QWidget* parent)
    : QWidget(parent), m_words(new QLabel(this)), m_close(new Button(QString(), this)),
      m_offer(new QWidget(this)), m_choices(new QGridLayout(m_offer))
{
    m_words->setWordWrap(true);
    m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_words->setTextFormat(Qt::PlainText);
    m_close->setSign(Sign::Close);
    m_close->setLook(Button::Look::Flat);
    m_close->setAccessibleName(tr("Dismiss the message"));
    m_close->setToolTip(tr("Dismiss (Esc)"));
    m_choices->setContentsMargins(0, 3, 0, 2);
    m_choices->setSpacing(4);
    m_choices->setColumnStretch(2, 1);
    m_offer->hide();
    auto* column = new QVBoxLayout;
    column->setSpacing(0);
    column->addWidget(m_words);
    column->addWidget(m_offer);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(44, 4, 10, 5);
    row->addLayout(column, 1);
    row->addWidget(m_close, 0, Qt::AlignTop);
    connect(m_close, &QAbstractButton::clicked, this, &MessageBar::dismiss);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    hide();
}

void MessageBar::tell(QString const& words, Tone tone)
{
    m_tone = tone;
    offer({});
    m_words->setText(words);
    // The theme keeps the bright role for notices.
    m_words->setForegroundRole(tone == Tone::Notice ? QPalette::BrightText
                                                    : QPalette::WindowText);
    setAccessibleName(tr("Message: %1").arg(words));
    show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageBar::offer(QStringList const& choices)
{
    for (Button* old : m_offer->findChildren<Button*>()) {
        old->hide();
        old->setParent(nullptr);
        old->deleteLater();
    }
    constexpr int shortWords = 48; // two such stand beside each other in the smallest window
    bool const paired = std::all_of(choices.begin(), choices.end(), [](QString const& words) {
        return words.size() <= shortWords;
    });
    for (qsizetype i = 0; i < choices.size(); ++i) {
        auto* choice = new Button(choices[i], m_offer);
        choice->setObjectName(choices[i]);
        int const place = static_cast<int>(i);
        m_choices->addWidget(choice, paired ? place / 2 : place, paired ? place % 2 : 0,
                             Qt::AlignLeft);
        choice->show();
        connect(choice, &QAbstractButton::clicked, this,
                [this, i] { emit choiceClicked(static_cast<int>(i)); });
    }
    m_offer->setVisible(!choices.isEmpty());
    m_choices->invalidate();
    layout()->invalidate();
    updateGeometry();
}

QStringList MessageBar::choices() const
{
    QStringList words;
    for (Button const* choice : m_offer->findChildren<Button*>()) words << choice->objectName();
    return words;
}

QString MessageBar::words() const { return m_words->text(); }

void MessageBar::dismiss()
{
    m_words->clear();
    offer({});
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
