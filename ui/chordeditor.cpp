#include "ui/chordeditor.h"

#include "core/music/typedchord.h"
#include "ui/button.h"
#include "ui/theme.h"
#include "ui/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace ui {

namespace {

QString readWords(music::Chord const& chord)
{
    if (isNoChord(chord)) return ChordEditor::tr("No chord: the left hand rests.");
    QStringList tones;
    for (music::PitchName const& name : toneNames(chord))
        tones << QString::fromStdString(shown(name));
    return ChordEditor::tr("Reads as %1: %2")
        .arg(QString::fromStdString(shown(chord)), tones.join(QStringLiteral(" ")));
}

QString likelyWords(harmony::Likely const& likely)
{
    int const percent = qRound(100 * likely.probability);
    return QStringLiteral("%1\t%2\t%3") // in columns
        .arg(QString::fromStdString(shown(likely.chord)),
             percent > 0 ? ChordEditor::tr("%1 %").arg(percent) : ChordEditor::tr("rarely"),
             QString::fromStdString(likely.reason));
}

} // namespace

ChordEditor::ChordEditor(QString const& place, std::vector<ChordBeat> beats, std::size_t beat,
                         int alike, QWidget* parent)
    : QDialog(parent), m_beats(std::move(beats)), m_beat(new QComboBox(this)),
      m_line(new QLineEdit(this)), m_said(new QLabel(this)), m_likely(new QListWidget(this)),
      m_everywhere(new QCheckBox(this)), m_set(new Button(tr("Set"), this)),
      m_hear(new Button(tr("Hear"), this)), m_takeOut(new Button(tr("Take out"), this)),
      m_split(new Button(tr("Pluck again"), this)), m_earlier(new Button(tr("Earlier"), this)),
      m_later(new Button(tr("Later"), this))
{
    setWindowTitle(tr("Chord in %1").arg(place));
    for (ChordBeat const& option : m_beats) m_beat->addItem(option.name);
    m_beat->setCurrentIndex(static_cast<int>(beat));
    m_beat->setAccessibleName(tr("Where the chord begins"));
    m_line->setPlaceholderText(tr("Am7, D/F♯, N.C. ..."));
    m_line->setAccessibleName(tr("Chord"));
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    m_likely->setAccessibleName(tr("Likely chords here"));
    m_likely->setAlternatingRowColors(false);
    m_everywhere->setText(tr("In all %1 bars with the same notes").arg(alike));
    m_everywhere->setVisible(alike > 1);
    m_set->setLook(Button::Look::Main);
    m_set->setToolTip(tr("This chord from this beat on (Enter)"));
    m_hear->setToolTip(tr("The bar with this chord (Ctrl+Space); nothing is kept"));
    m_hear->setShortcut(Qt::CTRL | Qt::Key_Space);
    m_takeOut->setToolTip(tr("The chord before goes on"));
    m_split->setToolTip(tr("The same chord is plucked again from this beat on"));
    m_earlier->setToolTip(tr("The change comes a beat earlier"));
    m_later->setToolTip(tr("The change comes a beat later"));

    auto* buttons = new QHBoxLayout;
    auto* leave = new Button(tr("Cancel"), this);
    for (Button* button : {m_set, m_hear, m_takeOut, m_split, m_earlier, m_later})
        buttons->addWidget(button);
    buttons->addStretch(1);
    buttons->addWidget(leave);
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_beat);
    column->addWidget(m_line);
    column->addWidget(m_said);
    column->addWidget(new QLabel(tr("Likely here"), this));
    column->addWidget(m_likely, 1);
    column->addWidget(m_everywhere);
    column->addLayout(buttons);
    resize(600, 360);

    connect(m_beat, &QComboBox::currentIndexChanged, this, &ChordEditor::showBeat);
    connect(m_line, &QLineEdit::textChanged, this, &ChordEditor::check);
    connect(m_line, &QLineEdit::returnPressed, this, &ChordEditor::set);
    connect(m_likely, &QListWidget::currentRowChanged, this, [this](int row) {
        auto const& likely = m_beats[static_cast<std::size_t>(m_beat->currentIndex())].likely;
        if (row >= 0 && row < static_cast<int>(likely.size()))
            m_line->setText(
                QString::fromStdString(plain(likely[static_cast<std::size_t>(row)].chord)));
    });
    connect(m_likely, &QListWidget::itemActivated, this, &ChordEditor::set);
    connect(m_set, &Button::clicked, this, &ChordEditor::set);
    connect(m_hear, &Button::clicked, this, [this] {
        ChordWish wish;
        wish.beat = static_cast<std::size_t>(m_beat->currentIndex());
        wish.everywhere = m_everywhere->isChecked();
        if (!m_read) return;
        wish.chord = *m_read;
        emit hearWanted(wish);
    });
    connect(leave, &Button::clicked, this, &QDialog::reject);
    connect(m_takeOut, &Button::clicked, this, [this] { done(ChordWish::What::TakeOut); });
    connect(m_split, &Button::clicked, this, [this] { done(ChordWish::What::Split); });
    connect(m_earlier, &Button::clicked, this, [this] { done(ChordWish::What::Earlier); });
    connect(m_later, &Button::clicked, this, [this] { done(ChordWish::What::Later); });
    showBeat();
    m_line->setFocus(Qt::OtherFocusReason);
}

QString ChordEditor::said() const { return m_said->text(); }

void ChordEditor::showBeat()
{
    ChordBeat const& beat = m_beats[static_cast<std::size_t>(m_beat->currentIndex())];
    m_likely->clear();
    for (harmony::Likely const& likely : beat.likely) m_likely->addItem(likelyWords(likely));
    m_line->setText(beat.chord ? QString::fromStdString(plain(*beat.chord)) : QString());
    m_line->selectAll();
    m_takeOut->setEnabled(beat.begins);
    m_earlier->setEnabled(beat.begins);
    m_later->setEnabled(beat.begins);
    m_split->setEnabled(!beat.begins && beat.chord.has_value());
    check();
}

void ChordEditor::check()
{
    m_read.reset();
    QString const typed = m_line->text().trimmed();
    if (typed.isEmpty()) {
        m_said->setText(tr("Type a chord, or choose one below."));
    } else if (auto read = music::typedChordFrom(typed.toStdString())) {
        m_read = *std::move(read);
        m_said->setText(readWords(*m_read));
    } else {
        m_said->setText(faultWords(read.error()));
    }
    m_set->setEnabled(m_read.has_value());
    m_hear->setEnabled(m_read.has_value());
}

void ChordEditor::done(ChordWish::What what)
{
    m_wish.what = what;
    m_wish.beat = static_cast<std::size_t>(m_beat->currentIndex());
    m_wish.everywhere = m_everywhere->isChecked();
    accept();
}

void ChordEditor::set()
{
    if (!m_read) return;
    m_wish.chord = *m_read;
    done(ChordWish::What::Set);
}

} // namespace ui
