#include "ui/welcome.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QPainter>

#include <algorithm>

namespace ui {

Welcome::Welcome(QWidget* parent)
    : QWidget(parent), m_open(new Button(tr("Open a lead sheet…"), this)),
      m_demo(new Button(tr("Open the demo tune"), this))
{
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
    QSize const open = m_open->sizeHint();
    QSize const demo = m_demo->sizeHint();
    int const y = wordsBox().bottom() + 8;
    int const x = (width() - open.width() - demo.width() - 10) / 2;
    m_open->setGeometry(QRect(QPoint(x, y), open));
    m_demo->setGeometry(QRect(QPoint(x + open.width() + 10, y), demo));
}

} // namespace ui
