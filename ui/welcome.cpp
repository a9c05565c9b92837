#include "ui/welcome.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QPainter>

#include <algorithm>

namespace ui {

namespace {

constexpr int betweenButtons = 10; // between buttons

int heightOf(QString const& words, QFont const& font, int across)
{
    QRect const room(0, 0, across, 100000);
    return QFontMetrics(font).boundingRect(room, Qt::TextWordWrap, words).height();
}

} // namespace

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
    setAccessibleName(question());
    setAccessibleDescription(answer());
}

QString Welcome::question() const { return tr("What does my left hand do?"); }

QString Welcome::answer() const
{
    return tr("Open a tune with chord symbols, or drop its file here. For every chord you get "
              "left-hand shapes that your hand can play on your harp, best first.");
}

// The question, and the answer under it, in the middle of the room.
QRect Welcome::wordsBox() const
{
    int const letters = fontMetrics().averageCharWidth();
    int const across = std::min(width() - 40, std::max(460, 62 * letters));
    int const high = questionHeight(across) + answerHeight(across);
    return {(width() - across) / 2, std::max(16, height() / 2 - high + 10), across, high};
}

int Welcome::questionHeight(int across) const
{
    return heightOf(question(), scaledFont(*this, 1.7, QFont::Bold), across) + 14;
}

int Welcome::answerHeight(int across) const
{
    return heightOf(answer(), scaledFont(*this, 1.05), across) + 20;
}

void Welcome::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.paper));
    QRect const box = wordsBox();
    painter.setFont(scaledFont(*this, 1.7, QFont::Bold));
    painter.setPen(colour(p.ink));
    painter.drawText(box, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, question());
    painter.setFont(scaledFont(*this, 1.05));
    painter.setPen(colour(p.quiet));
    painter.drawText(box.adjusted(0, questionHeight(box.width()), 0, 0),
                     Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, answer());
}

QSize Welcome::minimumSizeHint() const
{
    int wide = 0, high = 0;
    for (Button const* button : buttons()) {
        wide = std::max(wide, button->sizeHint().width());
        high += button->sizeHint().height() + betweenButtons;
    }
    wide += 40;
    return {wide, questionHeight(wide - 40) + answerHeight(wide - 40) + high + 40};
}

// In a row, or one under another where the row is too wide.
void Welcome::resizeEvent(QResizeEvent*)
{
    int wide = -betweenButtons;
    for (Button const* button : buttons()) wide += button->sizeHint().width() + betweenButtons;
    bool const inRow = wide <= width() - 20;
    QPoint at((width() - wide) / 2, wordsBox().bottom() + 8);
    int const high = 3 * (m_open->sizeHint().height() + betweenButtons);
    if (!inRow) at.setY(std::max(8, std::min(at.y(), height() - high)));
    for (Button* button : buttons()) {
        QSize const size = button->sizeHint();
        if (!inRow) at.setX((width() - size.width()) / 2);
        button->setGeometry(QRect(at, size));
        if (inRow)
            at.rx() += size.width() + betweenButtons;
        else
            at.ry() += size.height() + betweenButtons;
    }
}

} // namespace ui
