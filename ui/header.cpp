#include "ui/header.h"

#include "ui/button.h"
#include "ui/menutyping.h"
#include "ui/readable.h"
#include "ui/theme.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>
#include <QShortcut>

#include <algorithm>

namespace ui {

// Two lines, each cut with an ellipsis where the room ends.
class Header::Title final : public QWidget, public SpokenAs {
public:
    explicit Title(QWidget* parent) : QWidget(parent), SpokenAs(QAccessible::Heading)
    {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    }
    // Whether they are other words than before.
    bool setWords(QString const& title, QString const& detail)
    {
        if (m_title == title && m_detail == detail) return false;
        m_title = title;
        m_detail = detail;
        setToolTip(detail.isEmpty() ? title : title + QLatin1Char('\n') + detail);
        setAccessibleName(title);
        setAccessibleDescription(detail);
        updateGeometry();
        update();
        return true;
    }
    QString told() const
    {
        return m_detail.isEmpty() ? m_title : m_title + QStringLiteral(". ") + m_detail;
    }
    QSize sizeHint() const override
    {
        QFontMetricsF const large(scaledFont(*this, 1.3, QFont::Bold));
        QFontMetricsF const small(scaledFont(*this, 0.92));
        double const width =
            std::max(large.horizontalAdvance(m_title), small.horizontalAdvance(m_detail));
        return {qRound(width) + 4, qRound(large.height() + small.height())};
    }
    QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent*) override
    {
        Palette const& p = paletteOf(*this);
        QPainter painter(this);
        painter.setFont(scaledFont(*this, 1.3, QFont::Bold));
        double const large = painter.fontMetrics().height();
        double const small =
            m_detail.isEmpty() ? 0 : QFontMetricsF(scaledFont(*this, 0.92)).height();
        double const top = (height() - large - small) / 2;
        painter.setPen(colour(p.ink));
        painter.drawText(QRectF(0, top, width(), large), Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(m_title, Qt::ElideRight, width()));
        painter.setFont(scaledFont(*this, 0.92));
        painter.setPen(colour(p.quiet));
        painter.drawText(QRectF(0, top + large, width(), small),
                         Qt::AlignVCenter | Qt::AlignLeft,
                         painter.fontMetrics().elidedText(m_detail, Qt::ElideRight, width()));
    }

private:
    QString m_title;
    QString m_detail;
};

Header::Header(QWidget* parent)
    : QWidget(parent), m_keyMenu(new QMenu(this)), m_harpMenu(new QMenu(this)),
      m_handMenu(new QMenu(this)), m_levelMenu(new QMenu(this)), m_styleMenu(new QMenu(this)),
      m_title(new Title(this)),
      m_key(chip(tr("Key"), tr("The key the tune is played in (Alt+1)"), m_keyMenu)),
      m_harp(chip(tr("Harp"), tr("Size, tuning and levers of the harp (Alt+2)"), m_harpMenu)),
      m_hand(chip(tr("Hand"), tr("How far the hand reaches (Alt+3)"), m_handMenu)),
      m_level(chip(tr("Level"), tr("How experienced the player is (Alt+4)"), m_levelMenu)),
      m_style(chip(tr("Manner"), tr("What kind of left hand you prefer (Alt+5)"), m_styleMenu)),
      m_grid(new Button(tr("Grid"), this)), m_sheet(new Button(tr("Sheet"), this))
{
    openBy(m_key, Qt::ALT | Qt::Key_1);
    openBy(m_harp, Qt::ALT | Qt::Key_2);
    openBy(m_hand, Qt::ALT | Qt::Key_3);
    openBy(m_level, Qt::ALT | Qt::Key_4);
    openBy(m_style, Qt::ALT | Qt::Key_5);
    auto* views = new QButtonGroup(this);
    for (Button* view : {m_grid, m_sheet}) {
        view->setCheckable(true);
        views->addButton(view);
    }
    m_grid->setChecked(true);
    m_grid->setToolTip(tr("The tune on the strings, a lane for each phrase (Ctrl+1)"));
    m_sheet->setToolTip(tr("The sheet as it is printed (Ctrl+2)"));
    connect(m_grid, &QAbstractButton::clicked, this, [this] { emit viewClicked(View::Grid); });
    connect(m_sheet, &QAbstractButton::clicked, this,
            [this] { emit viewClicked(View::Sheet); });

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 7, 14, 7);
    row->setSpacing(7);
    row->addWidget(m_title, 1);
    for (Button* button : {m_key, m_harp, m_hand, m_level, m_style}) row->addWidget(button);
    row->addSpacing(8);
    row->addWidget(m_grid);
    row->addWidget(m_sheet);
}

// A shortcut of the button's own would go with every change of its text.
void Header::openBy(Button* button, QKeySequence const& keys)
{
    auto* shortcut = new QShortcut(keys, this);
    connect(shortcut, &QShortcut::activated, button, &QAbstractButton::click);
}

Button* Header::chip(QString const& caption, QString const& toolTip, QMenu* menu)
{
    auto* button = new Button(QString(), this);
    button->setCaption(caption);
    button->setToolTip(toolTip);
    button->setMenu(menu);
    menu->setToolTipsVisible(true);
    takeTyping(*menu);
    return button;
}

void Header::setWords(Button* button, QString const& caption, QString const& words)
{
    if (button->text() == words) return;
    button->setText(words);
    button->setAccessibleName(caption + QLatin1Char(' ') + words);
    button->updateGeometry();
    fit();
}

void Header::setTitle(QString const& title, QString const& detail)
{
    if (m_title->setWords(title, detail)) fit();
}

QString Header::told() const { return m_title->told(); }

void Header::setKeyWords(QString const& words) { setWords(m_key, tr("Key"), words); }
void Header::setHarpWords(QString const& words) { setWords(m_harp, tr("Harp"), words); }
void Header::setHandWords(QString const& words) { setWords(m_hand, tr("Hand"), words); }
void Header::setLevelWords(QString const& words) { setWords(m_level, tr("Level"), words); }
void Header::setStyleWords(QString const& words) { setWords(m_style, tr("Manner"), words); }

void Header::setView(View view) { (view == View::Grid ? m_grid : m_sheet)->setChecked(true); }

// Captions give way before the title does, and the title before the words on the buttons.
void Header::fit()
{
    int needed = 30 + std::min(m_title->sizeHint().width(), 260);
    for (Button* button : {m_key, m_harp, m_hand, m_level, m_style, m_grid, m_sheet})
        needed += button->sizeFor(true).width() + 7;
    m_level->setCaptionShown(true);
    for (Button* button : {m_harp, m_key, m_hand, m_style}) {
        bool const fits = needed <= width();
        if (!fits) needed -= button->sizeFor(true).width() - button->sizeFor(false).width();
        button->setCaptionShown(fits);
    }
}

void Header::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.card));
    painter.setPen(colour(p.edge));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

void Header::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

} // namespace ui
