#include "ui/messagebar.h"

#include "ui/button.h"
#include "ui/readable.h"
#include "ui/theme.h"

#include <QAccessible>
#include <QDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

constexpr std::size_t mostShown = 3; // more would leave no room for the tune
constexpr int doneFor = 20000;       // milliseconds that a thing done stays in sight

QString told(MessageBar::Message const& message)
{
    return message.about.isEmpty()
               ? message.words
               : QStringLiteral("%1: %2").arg(message.about, message.words);
}

} // namespace

// One message with its own look and its own choices.
class MessageBar::Row final : public QWidget, public SpokenAs {
public:
    Row(Message const& message, MessageBar* bar)
        : QWidget(bar), SpokenAs(QAccessible::AlertMessage), m_number(message.number),
          m_tone(message.tone), m_words(new QLabel(message.words, this)),
          m_offer(new QWidget(this)), m_choices(new QGridLayout(m_offer)),
          m_close(new Button(QString(), this))
    {
        m_words->setWordWrap(true);
        m_words->setTextInteractionFlags(Qt::TextSelectableByMouse);
        m_words->setTextFormat(Qt::PlainText);
        // The theme keeps the bright role for notices.
        m_words->setForegroundRole(m_tone == Tone::Notice ? QPalette::BrightText
                                                          : QPalette::WindowText);
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
        if (!message.about.isEmpty()) {
            auto* about = new QLabel(message.about, this);
            about->setTextFormat(Qt::PlainText);
            about->setForegroundRole(m_words->foregroundRole());
            about->setFont(scaledFont(*this, 0.92, QFont::DemiBold));
            column->addWidget(about);
        }
        column->addWidget(m_words);
        column->addWidget(m_offer);
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(44, 4, 10, 5);
        row->addLayout(column, 1);
        row->addWidget(m_close, 0, Qt::AlignTop);
        setAccessibleName(tr("Message: %1").arg(told(message)));
        connect(m_close, &QAbstractButton::clicked, bar,
                [bar, number = m_number] { bar->remove(number); });
    }

    int number() const { return m_number; }
    QString words() const { return m_words->text(); }

    void offer(QStringList const& choices, MessageBar* bar)
    {
        for (Button* old : m_offer->findChildren<Button*>()) {
            old->hide();
            old->setParent(nullptr);
            old->deleteLater();
        }
        constexpr int shortWords = 48; // two stand beside each other in the smallest window
        bool const paired = std::ranges::all_of(
            choices, [](QString const& words) { return words.size() <= shortWords; });
        for (qsizetype i = 0; i < choices.size(); ++i) {
            auto* choice = new Button(choices[i], m_offer);
            choice->setObjectName(choices[i]);
            int const place = static_cast<int>(i);
            m_choices->addWidget(choice, paired ? place / 2 : place, paired ? place % 2 : 0,
                                 Qt::AlignLeft);
            choice->show();
            connect(choice, &QAbstractButton::clicked, bar,
                    [bar, place] { emit bar->choiceClicked(place); });
        }
        m_offer->setVisible(!choices.isEmpty());
        m_choices->invalidate();
        layout()->invalidate();
        updateGeometry();
    }

    QStringList choices() const
    {
        QStringList words;
        for (Button const* choice : m_offer->findChildren<Button*>())
            words << choice->objectName();
        return words;
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        Palette const& p = paletteOf(*this);
        QPainter painter(this);
        bool const notice = m_tone == Tone::Notice;
        painter.fillRect(rect(), colour(notice ? p.warnWash : p.leafWash));
        painter.fillRect(QRect(0, 0, 4, height()), colour(notice ? p.amber : p.leaf));
        painter.setPen(colour(p.edge));
        painter.drawLine(0, height() - 1, width(), height() - 1);
        paintSign(painter, notice ? Sign::Notice : Sign::Done,
                  {17, (height() - 17) / 2.0, 17, 17}, colour(notice ? p.warnInk : p.leaf));
    }

private:
    int m_number;
    Tone m_tone;
    QLabel* m_words;
    QWidget* m_offer;
    QGridLayout* m_choices;
    Button* m_close;
};

MessageBar::MessageBar(QWidget* parent)
    : QWidget(parent), m_column(new QVBoxLayout(this)), m_more(new Button(QString(), this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    m_more->setLook(Button::Look::Flat);
    m_more->setText(tr("All messages"));
    m_more->setToolTip(tr("Everything told since the start (Ctrl+Shift+L)"));
    m_more->hide();
    m_column->addWidget(m_more, 0, Qt::AlignLeft);
    connect(m_more, &QAbstractButton::clicked, this, &MessageBar::openList);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    hide();
}

MessageBar::Row* MessageBar::newest() const
{
    return m_rows.empty() ? nullptr : m_rows.front();
}

int MessageBar::tell(QString const& words, Tone tone, QString const& about)
{
    if (!m_rows.empty() && m_kept.back().shown && m_kept.back().words == words &&
        m_kept.back().tone == tone && m_kept.back().about == about) {
        newest()->offer({}, this);
        return m_kept.back().number;
    }
    int const number = static_cast<int>(m_kept.size());
    m_kept.push_back({number, tone, about, words, QTime::currentTime(), true});
    auto* row = new Row(m_kept.back(), this);
    m_rows.insert(m_rows.begin(), row);
    m_column->insertWidget(0, row);
    if (tone == Tone::Done) QTimer::singleShot(doneFor, row, [this, number] { remove(number); });
    arrange();
    QAccessibleEvent alert(row, QAccessible::Alert);
    tellReader(alert);
    return number;
}

void MessageBar::arrange()
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) m_rows[i]->setVisible(i < mostShown);
    bool const more = m_rows.size() > mostShown;
    auto const hidden = more ? m_rows.size() - mostShown : 0;
    if (more)
        m_more->setText(hidden == 1 ? tr("1 more message") : tr("%1 more messages").arg(hidden));
    m_more->setVisible(more);
    setVisible(!m_rows.empty());
    layout()->invalidate();
    updateGeometry();
}

void MessageBar::offer(QStringList const& choices)
{
    if (Row* row = newest()) row->offer(choices, this);
    arrange();
}

QStringList MessageBar::choices() const
{
    Row const* row = newest();
    return row ? row->choices() : QStringList();
}

void MessageBar::withdrawChoices()
{
    for (Row* row : m_rows) row->offer({}, this);
}

QString MessageBar::words() const
{
    Row const* row = newest();
    return row ? row->words() : QString();
}

int MessageBar::shownCount() const { return static_cast<int>(m_rows.size()); }

void MessageBar::remove(int number)
{
    auto const found = std::ranges::find_if(
        m_rows, [number](Row const* row) { return row->number() == number; });
    if (found == m_rows.end()) return;
    Row* row = *found;
    m_rows.erase(found);
    m_kept[static_cast<std::size_t>(number)].shown = false;
    m_column->removeWidget(row);
    row->hide();
    row->deleteLater();
    arrange();
}

void MessageBar::dismiss()
{
    if (Row const* row = newest()) remove(row->number());
}

void MessageBar::dismissAll()
{
    for (Message const& message : std::vector<Message>(m_kept))
        if (message.shown && (!message.about.isEmpty() || message.tone == Tone::Done))
            remove(message.number);
}

void MessageBar::openList()
{
    if (!m_list) {
        m_list = new QDialog(window());
        m_list->setObjectName(QStringLiteral("messages"));
        m_list->setWindowTitle(tr("Messages"));
        m_list->resize(560, 360);
        auto* column = new QVBoxLayout(m_list);
        auto* list = new QListWidget(m_list);
        list->setWordWrap(true);
        list->setAccessibleName(tr("Messages"));
        column->addWidget(list);
    }
    auto* list = m_list->findChild<QListWidget*>();
    list->clear();
    for (auto message = m_kept.rbegin(); message != m_kept.rend(); ++message)
        list->addItem(QStringLiteral("%1  %2").arg(
            message->at.toString(QStringLiteral("HH:mm")), told(*message)));
    if (m_kept.empty()) list->addItem(tr("Nothing has been told yet."));
    list->setCurrentRow(0);
    m_list->show();
    m_list->raise();
    m_list->activateWindow();
}

} // namespace ui
