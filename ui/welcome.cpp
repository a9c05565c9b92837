#include "ui/welcome.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QPainter>

#include <algorithm>
#include <array>

namespace ui {

Welcome::Welcome(QWidget* parent)
    : QWidget(parent), m_open(new Button(tr("Open a lead sheet…"), this)),
      m_new(new Button(tr("Write a new tune…"), this)),
      m_demo(new Button(tr("Open the demo tune"), this))
{
    m_new->setToolTip(tr("Bars of rest to write the notes in (Ctrl+N)"));
    connect(m_new, &QAbstractButton::clicked, this, &Welcome::newClicked);
    m_open->setLook(Button::Look::Main);
    m_open->setToolTip(tr("A tune with chord symbols (Ctrl+O)"));
    m_demo->setToolTip(tr("A tune made for trying things out (Ctrl+D)"));
    connect(m_open, &QAbstractButton::clicked, this, &Welcome::openClicked);
    connect(m_demo, &QAbstractButton::clicked, this, &Welcome::demoClicked);
}

QRect Welcome::wordsBox() const
{
    int const across = std::min(width() - 40, 460);
    return {(width() - across) / 2, std::max(16, height() / 2 - 110), across, 120};
}

void Welcome::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.paper));
    QRect const box = wordsBox();
    painter.setFont(scaledFont(*this, 1.7, QFont::Bold));
    painter.setPen(colour(p.ink));
    painter.drawText(box, Qt::AlignHCenter | Qt::AlignTop, tr("What does my left hand do?"));
    painter.setFont(scaledFont(*this, 1.05));
    painter.setPen(colour(p.quiet));
    painter.drawText(
        box.adjusted(0, 46, 0, 0), Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
        tr("Open a tune with chord symbols, or drop its file here. For every chord you get "
           "left-hand shapes that your hand can play on your harp, best first."));
}

void Welcome::resizeEvent(QResizeEvent*)
{
    constexpr int gap = 10;
    std::array const row{m_open, m_new, m_demo};
    int wide = -gap;
    for (Button const* button : row) wide += button->sizeHint().width() + gap;
    QPoint at((width() - wide) / 2, wordsBox().bottom() + 8);
    for (Button* button : row) {
        button->setGeometry(QRect(at, button->sizeHint()));
        at.rx() += button->width() + gap;
    }
}

} // namespace ui
