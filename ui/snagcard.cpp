#include "ui/snagcard.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QButtonGroup>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QRadioButton>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

SnagCard::SnagCard(QWidget* parent)
    : QFrame(parent, Qt::Popup), m_column(new QVBoxLayout(this))
{
    setObjectName(QStringLiteral("snagcard"));
    m_column->setContentsMargins(0, 0, 0, 0);
    setAccessibleName(tr("Ways round a snag"));
}

void SnagCard::tell(SnagTold const& told)
{
    m_told = told;
    delete m_body;
    m_body = new QWidget(this);
    m_column->addWidget(m_body);
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(14, 11, 14, 11);
    column->setSpacing(5);
    auto* title = new QLabel(told.title, m_body);
    title->setFont(scaledFont(*this, 1.05, QFont::Bold));
    auto* why = new QLabel(told.why, m_body);
    why->setWordWrap(true);
    why->setForegroundRole(QPalette::PlaceholderText);
    why->setMinimumWidth(340);
    for (QLabel* label : {title, why}) {
        label->setTextFormat(Qt::PlainText);
        column->addWidget(label);
    }
    m_ways = new QButtonGroup(m_body);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(2);
    for (std::size_t i = 0; i < told.ways.size(); ++i) {
        SnagTold::Way const& way = told.ways[i];
        int const row = static_cast<int>(i);
        auto* choice = new QRadioButton(way.words, m_body);
        choice->setObjectName(QStringLiteral("way%1").arg(row));
        choice->setFocusPolicy(Qt::NoFocus); // the card has the keys
        choice->setChecked(way.taken);
        if (way.taken) choice->setFont(scaledFont(*this, 1, QFont::DemiBold));
        m_ways->addButton(choice, row);
        auto* score = new QLabel(
            way.taken ? tr("%1 · now").arg(way.score) : way.score, m_body);
        score->setForegroundRole(QPalette::PlaceholderText);
        auto* hear = new Button(tr("Hear"), m_body);
        hear->setSign(Sign::Play);
        hear->setLook(Button::Look::Flat);
        hear->setFocusPolicy(Qt::NoFocus);
        hear->setAccessibleName(tr("Hear: %1").arg(way.words));
        hear->setObjectName(QStringLiteral("hear%1").arg(row));
        connect(hear, &QAbstractButton::clicked, this, [this, row] {
            go(row);
            emit hearClicked(row);
        });
        grid->addWidget(choice, row, 0);
        grid->addWidget(score, row, 1);
        grid->addWidget(hear, row, 2);
    }
    grid->setColumnStretch(0, 1);
    column->addLayout(grid);

    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(6);
    auto const button = [&](QString const& words, QString const& name) {
        auto* made = new Button(words, m_body);
        made->setObjectName(name);
        made->setFocusPolicy(Qt::NoFocus);
        buttons->addWidget(made);
        return made;
    };
    Button* one = button(tr("For this one"), QStringLiteral("this"));
    connect(one, &QAbstractButton::clicked, this, [this] {
        int const way = marked();
        close();
        if (way >= 0) emit wayChosen(way, false);
    });
    if (told.alike > 1) {
        Button* all = button(tr("For all %1 alike").arg(told.alike), QStringLiteral("alike"));
        all->setLook(Button::Look::Main);
        connect(all, &QAbstractButton::clicked, this, [this] {
            int const way = marked();
            close();
            if (way >= 0) emit wayChosen(way, true);
        });
    } else {
        one->setLook(Button::Look::Main);
    }
    if (told.decided) {
        Button* free = button(tr("Let change"), QStringLiteral("free"));
        connect(free, &QAbstractButton::clicked, this, [this] {
            close();
            emit letChooseClicked();
        });
    }
    Button* whole = button(tr("Whole tune"), QStringLiteral("whole"));
    whole->setToolTip(tr("Another key, tempo or level, where it helps"));
    connect(whole, &QAbstractButton::clicked, this, [this] {
        close();
        emit wholeTuneClicked();
    });
    buttons->addStretch(1);
    column->addLayout(buttons);
    m_body->show();
    adjustSize();
}

void SnagCard::openAt(QPoint const& where)
{
    adjustSize();
    QSize const size = sizeHint();
    QRect const screen = QGuiApplication::screenAt(where)
                             ? QGuiApplication::screenAt(where)->availableGeometry()
                             : QGuiApplication::primaryScreen()->availableGeometry();
    int const x = std::clamp(where.x() - size.width() / 2, screen.left(),
                             std::max(screen.left(), screen.right() - size.width()));
    bool const below = where.y() + 12 + size.height() <= screen.bottom();
    move(x, below ? where.y() + 12 : std::max(screen.top(), where.y() - 12 - size.height()));
    show();
    setFocus(Qt::PopupFocusReason);
}

int SnagCard::marked() const { return m_ways ? m_ways->checkedId() : -1; }

void SnagCard::go(int way)
{
    if (m_told.ways.empty()) return;
    int const last = static_cast<int>(m_told.ways.size()) - 1;
    m_ways->button(std::clamp(way, 0, last))->setChecked(true);
}

void SnagCard::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        return go(marked() - 1);
    case Qt::Key_Down:
        return go(marked() + 1);
    case Qt::Key_Space:
        if (marked() >= 0) emit hearClicked(marked());
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter: {
        int const way = marked();
        bool const alike = m_told.alike > 1;
        close();
        if (way >= 0) emit wayChosen(way, alike);
        return;
    }
    default:
        QFrame::keyPressEvent(event);
    }
}

void SnagCard::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), colour(p.card));
    painter.setPen(QPen(colour(p.rule), 1));
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace ui
