#include "ui/melodyeditor.h"

#include "core/base/words.h"
#include "core/files/abc/onebar.h"
#include "core/tune/edit/barsums.h"
#include "ui/button.h"
#include "ui/melodylane.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

using music::Length;
using music::Rational;
using tune::NoteAt;

MelodyEditor::MelodyEditor(QWidget* parent)
    : QWidget(parent), m_lane(new MelodyLane(this)), m_line(new QLineEdit(this)),
      m_state(new QLabel(this)), m_said(new QLabel(this)), m_help(new QLabel(this)),
      m_plays(new Button(tr("Strings write"), this)),
      m_triplet(new Button(tr("Triplet"), this)), m_grace(new Button(tr("Grace"), this))
{
    m_tools = new QBoxLayout(QBoxLayout::LeftToRight);
    m_tools->setSpacing(8);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(4);
    m_tools->addLayout(buttons);
    auto const add = [this, &buttons](Button* button, QString const& tip, auto const& what) {
        button->setToolTip(tip);
        button->setFocusPolicy(Qt::TabFocus);
        buttons->addWidget(button);
        connect(button, &Button::clicked, this, [this, what] {
            what();
            m_lane->setFocus(Qt::OtherFocusReason);
        });
    };
    struct Named {
        Length length;
        QString name;
        char sign;
    };
    for (Named const& each :
         {Named{{Rational(1, 16)}, tr("½"), 0}, Named{{Rational(1, 8)}, tr("1"), '1'},
          Named{{Rational(1, 4)}, tr("2"), '2'}, Named{{Rational(3, 8)}, tr("3"), '3'},
          Named{{Rational(1, 2)}, tr("4"), '4'}}) {
        auto* button = new Button(each.name, this);
        button->setCheckable(true);
        QString const words = QString::fromStdString(tune::lengthWords(each.length));
        button->setAccessibleName(words);
        add(button, words, [this, each] {
            if (each.sign == 0) sign('1');
            sign(each.sign == 0 ? '/' : each.sign);
        });
        m_lengths.push_back({each.length, button});
    }
    add(new Button(tr("Dot"), this), tr("half as long again (.)"), [this] { sign('.'); });
    m_triplet->setCheckable(true);
    add(m_triplet, tr("the next three notes in the time of two: ( and three letters"),
        [this] { sign('('); });
    m_grace->setCheckable(true);
    add(m_grace, tr("the next letters are grace notes: { letters }"),
        [this] { sign(m_typing.graceOpen ? '}' : '{'); });
    add(new Button(tr("Rest"), this), tr("a rest of this length (z)"), [this] { sign('z'); });
    add(new Button(tr("Tie"), this), tr("to the next note of the same pitch (-)"),
        [this] { sign('-'); });
    buttons->addStretch(1);
    buttons = new QHBoxLayout;
    buttons->setSpacing(4);
    m_tools->addLayout(buttons, 1);
    add(new Button(tr("Bar +"), this), tr("a bar of rest after this one"),
        [this] { emit barWanted(true); });
    add(new Button(tr("Bar −"), this), tr("take this bar out"), [this] { emit barUnwanted(); });
    add(new Button(tr("1st, 2nd time"), this),
        tr("this bar the first time, a copy of it the second time"),
        [this] { emit timeBarsWanted(); });
    m_plays->setCheckable(true);
    m_plays->setChecked(true);
    add(m_plays, tr("A string that you click, or a key of a MIDI keyboard, is written here"),
        [] {});
    buttons->addStretch(1);
    auto* close = new Button(tr("Done"), this);
    close->setToolTip(tr("Close this pane (Esc)"));
    buttons->addWidget(close);
    connect(close, &Button::clicked, this, &MelodyEditor::left);

    auto* abc = new QLabel(tr("A&BC of this bar"), this);
    abc->setBuddy(m_line);
    m_line->setFont(QFont(QStringLiteral("monospace")));
    m_line->setToolTip(tr("Change the text and press Enter. Lengths count quavers."));
    auto* row = new QHBoxLayout;
    row->addWidget(abc);
    row->addWidget(m_line, 1);
    row->addWidget(m_state);
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    m_said->hide();
    m_help->setWordWrap(true);
    m_help->setText(
        tr("a–g write, z rests · 1 2 3 4 6 8 length, / half, . dot · ' and , octave · "
           "^ _ = before a letter · arrow keys: move, and a string up or down "
           "(Ctrl octave, Shift semitone) · - tie · ( triplet · Del, Backspace · "
           "Enter next bar · Space hear"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 8, 6);
    column->setSpacing(4);
    column->addLayout(m_tools);
    column->addWidget(m_lane, 1);
    column->addLayout(row);
    column->addWidget(m_said);
    column->addWidget(m_help);
    setFocusProxy(m_lane);

    connect(m_lane, &MelodyLane::signTyped, this, &MelodyEditor::sign);
    connect(m_lane, &MelodyLane::stroke, this,
            [this](tune::Stroke stroke) { take(stroked(m_typing, stroke)); });
    connect(m_lane, &MelodyLane::placeClicked, this, [this](NoteAt at) {
        take({withCaret(m_typing, at), {}});
    });
    connect(m_lane, &MelodyLane::hearWanted, this, &MelodyEditor::hearWanted);
    connect(m_lane, &MelodyLane::left, this, &MelodyEditor::left);
    connect(m_line, &QLineEdit::returnPressed, this, &MelodyEditor::readLine);
    connect(m_line, &QLineEdit::textEdited, this, [this] {
        m_said->setText({});
        m_said->hide();
    });
}

// In a low window the lane needs the room; the keys stand in the help, too.
void MelodyEditor::resizeEvent(QResizeEvent* event)
{
    constexpr int lowWindow = 760;
    m_help->setVisible(window()->height() >= lowWindow);
    int wanted = m_tools->spacing() + layout()->contentsMargins().left() +
                 layout()->contentsMargins().right();
    for (int row = 0; row < m_tools->count(); ++row)
        wanted += m_tools->itemAt(row)->sizeHint().width();
    m_tools->setDirection(width() < wanted ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_tools->setSpacing(width() < wanted ? 4 : 8);
    QWidget::resizeEvent(event);
}

// As wide as the wider half of the buttons: they stand in two rows where they must.
QSize MelodyEditor::minimumSizeHint() const
{
    int wide = 0;
    for (int row = 0; row < m_tools->count(); ++row)
        wide = std::max(wide, m_tools->itemAt(row)->minimumSize().width());
    QMargins const margins = layout()->contentsMargins();
    return {wide + margins.left() + margins.right(), QWidget::minimumSizeHint().height()};
}

void MelodyEditor::setTune(tune::Tune tune)
{
    if (tune == m_typing.tune) return;
    m_typing.tune = std::move(tune);
    m_typing = withCaret(std::move(m_typing), m_typing.at);
    show();
}

void MelodyEditor::setBar(tune::BarIndex bar)
{
    if (m_typing.tune.bars.empty() || bar == m_typing.at.bar) return;
    m_typing = withCaret(std::move(m_typing), {bar, 0});
    show();
}

void MelodyEditor::play(music::Pitch pitch) { take(played(m_typing, pitch)); }

bool MelodyEditor::writesWhatIsPlayed() const { return m_plays->isChecked() && !m_held; }

QString MelodyEditor::said() const { return m_said->text(); }

void MelodyEditor::sign(char sign) { take(typed(m_typing, sign)); }

void MelodyEditor::take(tune::Typed typed)
{
    if (m_typing.tune.bars.empty()) return;
    int const before = m_typing.at.bar;
    m_typing = std::move(typed.typing);
    show();
    tune::Typing const now = m_typing; // what hears of it may give the tune anew
    if (!typed.what.empty()) {
        emit edited(now.tune, QString::fromStdString(typed.what));
        if (m_typing.tune == now.tune && m_typing != now) {
            m_typing = now;
            show();
        }
    }
    if (now.at.bar != before) emit barChanged(now.at.bar);
}

// The line is read as a whole; what cannot be read is said with its column and stays there.
void MelodyEditor::readLine()
{
    tune::BarIndex const bar = m_typing.at.bar;
    auto const& here = m_typing.tune.bars[bar];
    auto read = files::barFromAbc(m_line->text().toStdString(), here);
    if (!read) {
        std::string const why = base::sentence(read.error());
        int const column =
            QString::fromStdString(read.error().place).section(QLatin1Char(' '), 1, 1).toInt();
        m_said->setText(QString::fromStdString(why));
        m_said->show();
        m_line->setCursorPosition(std::max(column - 1, 0));
        return;
    }
    QString const said = QString::fromStdString(read->said);
    tune::Typing next = m_typing;
    next.tune = withBarNotes(std::move(next.tune), bar, std::move(read->notes),
                             std::move(read->tuplets));
    bool const same = next.tune == m_typing.tune;
    next = withCaret(std::move(next), {bar, 0});
    std::string const what = base::say("notes in {}", barName(next.tune, bar));
    take({std::move(next), same ? std::string() : what});
    m_said->setText(said);
    m_said->setVisible(!said.isEmpty());
}

QString MelodyEditor::stateWords() const
{
    QStringList words;
    auto const& bars = m_typing.tune.bars;
    if (auto const odd = oddBar(bars, m_typing.at.bar))
        words << tr("this bar is %1").arg(QString::fromStdString(oddWords(*odd)));
    QString next =
        tr("next: %1").arg(QString::fromStdString(tune::lengthWords(m_typing.length)));
    if (m_typing.accidental)
        next += *m_typing.accidental > 0   ? tr(", sharp")
                : *m_typing.accidental < 0 ? tr(", flat")
                                           : tr(", natural");
    if (m_typing.graceOpen)
        next += tr(", as grace notes");
    else if (m_typing.graces)
        next += tr(", with grace notes");
    if (m_typing.triplet) next += tr(", first of a triplet");
    if (m_typing.tie) next += tr(", tied to");
    words << next;
    return words.join(QStringLiteral(" · "));
}

void MelodyEditor::show()
{
    m_lane->setTyping(m_typing);
    auto const& bar = m_typing.tune.bars[m_typing.at.bar];
    QString const abc = QString::fromStdString(files::abcOfBar(bar));
    if (m_line->text() != abc) m_line->setText(abc);
    m_state->setText(stateWords());
    m_said->setText({});
    m_said->hide();
    for (LengthButton const& each : m_lengths)
        each.button->setChecked(each.length == m_typing.length);
    m_triplet->setChecked(m_typing.triplet);
    m_grace->setChecked(m_typing.graceOpen);
}

} // namespace ui
