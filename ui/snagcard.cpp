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

namespace {

constexpr int cardSide = 14;

QLabel* plainLabel(QString const& words, QWidget* parent)
{
    auto* label = new QLabel(words, parent);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QLabel* quietLabel(QString const& words, QWidget* parent)
{
    QLabel* label = plainLabel(words, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

// A way with its ring in the palette's own ink: the style's is hardly seen on a dark card.
class WayChoice final : public QRadioButton {
public:
    using QRadioButton::QRadioButton;

protected:
    void paintEvent(QPaintEvent*) override
    {
        Palette const& p = paletteOf(*this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        constexpr double ring = 6.5;
        QPointF const middle(ring + 1.5, height() / 2.0);
        painter.setPen(QPen(colour(isChecked() ? p.leaf : p.quiet), underMouse() ? 2 : 1.4));
        painter.setBrush(colour(p.paper));
        painter.drawEllipse(middle, ring, ring);
        if (isChecked()) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(colour(p.leaf));
            painter.drawEllipse(middle, ring - 3, ring - 3);
        }
        painter.setPen(colour(p.ink));
        painter.drawText(rect().adjusted(20, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft, text());
    }
};

} // namespace

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
    m_hear.clear();
    m_whole = nullptr;
    m_body = new QWidget(this);
    m_column->addWidget(m_body);
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(cardSide, 11, cardSide, 12);
    column->setSpacing(5);
    QLabel* title = plainLabel(told.title, m_body);
    title->setFont(scaledFont(*this, 1.05, QFont::Bold));
    column->addWidget(title);
    QLabel* why = quietLabel(told.why, m_body);
    why->setWordWrap(true);
    why->setMinimumWidth(fontMetrics().averageCharWidth() * 60);
    column->addWidget(why);
    addWays(column);
    if (told.choice) addButtons(column);
    m_body->show();
    fit();
}

void SnagCard::addWays(QVBoxLayout* column)
{
    m_ways = new QButtonGroup(m_body);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(0);
    for (std::size_t i = 0; i < m_told.ways.size(); ++i) {
        SnagTold::Way const& way = m_told.ways[i];
        int const row = static_cast<int>(i);
        auto* choice = new WayChoice(way.words, m_body);
        choice->setObjectName(QStringLiteral("way%1").arg(row));
        choice->setFocusPolicy(Qt::NoFocus); // the card has the keys
        choice->setChecked(way.taken);
        if (way.taken) choice->setFont(scaledFont(*this, 1, QFont::DemiBold));
        choice->setAccessibleName(way.words + QStringLiteral(", ") + way.place);
        m_ways->addButton(choice, row);
        QLabel* place =
            quietLabel(way.taken && m_told.choice ? tr("%1 · now").arg(way.place) : way.place,
                       m_body);
        place->setToolTip(way.score);
        auto* hear = new Button(tr("Hear"), m_body);
        hear->setSign(Sign::Play);
        hear->setLook(Button::Look::Flat);
        hear->setFocusPolicy(Qt::TabFocus);
        hear->setAccessibleName(tr("Hear: %1").arg(way.words));
        hear->setToolTip(tr("Hear the bar so; nothing is changed (Space)"));
        hear->setObjectName(QStringLiteral("hear%1").arg(row));
        connect(hear, &QAbstractButton::clicked, this, [this, row] {
            go(row);
            emit hearClicked(row);
        });
        m_hear.push_back(hear);
        grid->addWidget(choice, row, 0);
        grid->addWidget(place, row, 1);
        grid->addWidget(hear, row, 2);
    }
    grid->setColumnStretch(0, 1);
    column->addLayout(grid);
}

void SnagCard::addButtons(QVBoxLayout* column)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    auto const button = [&](QString const& words, QString const& name, QString const& help) {
        auto* made = new Button(words, m_body);
        made->setObjectName(name);
        made->setFocusPolicy(Qt::TabFocus);
        made->setToolTip(help);
        row->addWidget(made);
        return made;
    };
    bool const several = m_told.alike > 1;
    Button* one = button(several ? tr("For this one") : tr("Choose"), QStringLiteral("this"),
                         several ? tr("Only here (Shift+Enter)") : tr("Take this way (Enter)"));
    connect(one, &QAbstractButton::clicked, this, [this] { choose(false); });
    if (several) {
        Button* all = button(tr("For all %1 alike").arg(m_told.alike), QStringLiteral("alike"),
                             tr("Wherever the tune has the same notes (Enter)"));
        all->setLook(Button::Look::Main);
        connect(all, &QAbstractButton::clicked, this, [this] { choose(true); });
    } else {
        one->setLook(Button::Look::Main);
    }
    if (m_told.decided) {
        Button* free = button(tr("Let change"), QStringLiteral("free"),
                              tr("Sallow may choose again"));
        connect(free, &QAbstractButton::clicked, this, [this] {
            close();
            emit letChooseClicked();
        });
    }
    row->addStretch(1);
    column->addSpacing(3);
    column->addLayout(row);
}

void SnagCard::setWaiting(std::optional<int> way)
{
    for (std::size_t i = 0; i < m_hear.size(); ++i)
        m_hear[i]->setEnabled(way != static_cast<int>(i));
}

void SnagCard::setWholeTune(std::optional<QStringList> const& sentences)
{
    if (!m_body) return;
    delete m_whole;
    m_whole = new QWidget(m_body);
    m_body->layout()->addWidget(m_whole);
    auto* grid = new QGridLayout(m_whole);
    grid->setContentsMargins(0, 9, 0, 0);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(0, 1);
    QLabel* heading = plainLabel(tr("In the whole tune"), m_whole);
    heading->setFont(scaledFont(*this, 1, QFont::DemiBold));
    grid->addWidget(heading, 0, 0, 1, 2);
    QString const none = !sentences ? tr("Trying other keys, tempos and levels…")
                         : sentences->isEmpty()
                             ? tr("No other key, tempo or level leaves fewer snags.")
                             : QString();
    if (!none.isEmpty()) {
        QLabel* words = quietLabel(none, m_whole);
        words->setObjectName(QStringLiteral("wholetune"));
        grid->addWidget(words, 1, 0, 1, 2);
    } else {
        for (int i = 0; i < sentences->size(); ++i) {
            QLabel* words = plainLabel(sentences->at(i), m_whole);
            words->setWordWrap(true);
            auto* take = new Button(tr("Choose"), m_whole);
            take->setObjectName(QStringLiteral("whole%1").arg(i));
            take->setFocusPolicy(Qt::TabFocus);
            take->setAccessibleName(tr("Choose: %1").arg(sentences->at(i)));
            take->setToolTip(tr("Arrange the whole tune so; undo takes it back"));
            connect(take, &QAbstractButton::clicked, this, [this, i] {
                close();
                emit wholeTuneChosen(i);
            });
            grid->addWidget(words, i + 1, 0);
            grid->addWidget(take, i + 1, 1);
        }
    }
    m_whole->show();
    fit();
}

// Below what it is opened at where the screen has room, else above.
void SnagCard::fit()
{
    m_body->layout()->activate();
    m_column->activate();
    QSize const size = m_column->totalSizeHint().expandedTo(m_column->totalMinimumSize());
    int const height = m_column->hasHeightForWidth()
                           ? m_column->totalHeightForWidth(size.width())
                           : size.height();
    resize(size.width(), height);
    if (!isVisible()) return;
    QScreen const* at = QGuiApplication::screenAt(m_where);
    QRect const screen =
        (at ? at : QGuiApplication::primaryScreen())->availableGeometry().adjusted(4, 4, -4, -4);
    int const x = std::clamp(m_where.x() - width() / 2, screen.left(),
                             std::max(screen.left(), screen.right() - width()));
    constexpr int away = 12;
    bool const below = m_where.y() + away + this->height() <= screen.bottom();
    bool const above = m_where.y() - away - this->height() >= screen.top();
    int const y = below   ? m_where.y() + away
                  : above ? m_where.y() - away - this->height()
                          : std::max(screen.top(), screen.bottom() - this->height());
    move(x, y);
}

void SnagCard::openAt(QPoint const& where)
{
    m_where = where;
    show();
    fit();
    setFocus(Qt::PopupFocusReason);
}

int SnagCard::marked() const { return m_ways ? m_ways->checkedId() : -1; }

void SnagCard::go(int way)
{
    if (m_told.ways.empty()) return;
    int const last = static_cast<int>(m_told.ways.size()) - 1;
    m_ways->button(std::clamp(way, 0, last))->setChecked(true);
}

void SnagCard::choose(bool alike)
{
    int const way = marked();
    close();
    if (way >= 0 && m_told.choice) emit wayChosen(way, alike);
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
    case Qt::Key_Enter:
        return choose(m_told.alike > 1 && !event->modifiers().testFlag(Qt::ShiftModifier));
    default:
        QFrame::keyPressEvent(event);
    }
}

void SnagCard::resizeEvent(QResizeEvent* event)
{
    QFrame::resizeEvent(event);
    update();
}

void SnagCard::paintEvent(QPaintEvent*) { paintCard(*this); }

} // namespace ui
