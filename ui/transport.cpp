#include "ui/transport.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPainter>
#include <QSlider>

#include <array>

namespace ui {

namespace {

constexpr std::array rollGapsMs{20, 30, 45, 60, 90, 120};

} // namespace

MetronomeMark::MetronomeMark(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
}

void MetronomeMark::setTempo(tune::Tempo tempo, int percent)
{
    m_tempo = tempo;
    m_percent = percent;
    setAccessibleName(tr("Tempo %1").arg(words()));
    updateGeometry();
    update();
}

QString MetronomeMark::words() const
{
    return tr("= %1  (%2 %)")
        .arg(qRound(m_tempo.beatsPerMinute * m_percent / 100))
        .arg(m_percent);
}

QSize MetronomeMark::sizeHint() const
{
    QFontMetricsF const metrics(scaledFont(*this, 1.0, QFont::DemiBold));
    QString const widest = tr("= %1  (%2 %)").arg(288).arg(150);
    return {qRound(metrics.horizontalAdvance(widest)) + 20, qRound(metrics.height()) + 6};
}

void MetronomeMark::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.setFont(scaledFont(*this, 1.0, QFont::DemiBold));
    double const line = painter.fontMetrics().height();
    QRectF const note(0, (height() - line) / 2, 14, line);
    double const used = paintNote(painter, m_tempo.beat, note, colour(p.ink));
    painter.setPen(colour(p.ink));
    painter.drawText(QRectF(used + 5, 0, width() - used - 5, height()),
                     Qt::AlignLeft | Qt::AlignVCenter, words());
}

Transport::Transport(QWidget* parent)
    : QWidget(parent), m_play(new Button(tr("Whole tune"), this)),
      m_hearBar(new Button(tr("Hear bar"), this)),
      m_fromHere(new Button(tr("From here"), this)), m_loop(new Button(tr("Again"), this)),
      m_tempoWord(new QLabel(tr("Tempo"), this)), m_tempo(new QSlider(Qt::Horizontal, this)),
      m_mark(new MetronomeMark(this)), m_countIn(new Button(tr("Count-in"), this)),
      m_left(new Button(tr("Left"), this)), m_right(new Button(tr("Right"), this)),
      m_roll(new Button(QString(), this))
{
    setAttribute(Qt::WA_StyledBackground);
    m_play->setLook(Button::Look::Main);
    m_play->setSign(Sign::Play);
    m_play->setToolTip(tr("Hear the tune from the beginning, or stop (Ctrl+Space)"));
    m_hearBar->setSign(Sign::Play);
    m_hearBar->setToolTip(tr("Hear the bar of the chosen chord (Space in the grid)"));
    m_fromHere->setSign(Sign::FromHere);
    m_fromHere->setToolTip(tr("Hear on from the chosen bar (Shift+Space)"));
    m_loop->setSign(Sign::Loop);
    m_loop->setCheckable(true);
    m_loop->setToolTip(tr("When it ends, start again (Ctrl+R)"));
    m_tempo->setRange(25, 150);
    m_tempo->setValue(100);
    m_tempo->setPageStep(10);
    m_tempo->setMinimumWidth(70);
    m_tempo->setMaximumWidth(190);
    m_tempo->setAccessibleName(tr("Tempo in per cent of the arrangement's own"));
    m_tempo->setToolTip(tr("25 to 150 % of the arrangement's tempo (Ctrl+Up, Ctrl+Down)"));
    m_countIn->setCheckable(true);
    m_countIn->setToolTip(tr("A bar of clicks before (Ctrl+K)"));
    m_left->setCheckable(true);
    m_left->setChecked(true);
    m_left->setAccessibleName(tr("Hear the left hand"));
    m_left->setToolTip(tr("Hear the left hand (Ctrl+Left)"));
    m_right->setCheckable(true);
    m_right->setChecked(true);
    m_right->setFill(Button::Fill::Amber);
    m_right->setAccessibleName(tr("Hear the right hand"));
    m_right->setToolTip(tr("Hear the right hand (Ctrl+Right)"));
    m_roll->setCaption(tr("Roll"));
    m_roll->setToolTip(tr("Time between two strings of a rolled chord"));

    auto* rolls = new QMenu(this);
    auto* group = new QActionGroup(rolls);
    for (int const ms : rollGapsMs) {
        QAction* action = rolls->addAction(tr("%1 ms").arg(ms));
        action->setCheckable(true);
        action->setChecked(ms == m_rollGapMs);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, ms] { setRollGap(ms); });
    }
    m_roll->setMenu(rolls);
    setRollGap(m_rollGapMs);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 8, 14, 8);
    row->setSpacing(7);
    for (QWidget* part : {static_cast<QWidget*>(m_play), static_cast<QWidget*>(m_hearBar),
                          static_cast<QWidget*>(m_fromHere), static_cast<QWidget*>(m_loop)})
        row->addWidget(part);
    row->addSpacing(8);
    row->addWidget(m_tempoWord);
    row->addWidget(m_tempo, 1);
    row->addWidget(m_mark);
    row->addStretch(1);
    for (QWidget* part : {static_cast<QWidget*>(m_countIn), static_cast<QWidget*>(m_left),
                          static_cast<QWidget*>(m_right), static_cast<QWidget*>(m_roll)})
        row->addWidget(part);

    connect(m_play, &QAbstractButton::clicked, this, [this] {
        if (m_playing)
            emit stopClicked();
        else
            emit playClicked();
    });
    connect(m_hearBar, &QAbstractButton::clicked, this, &Transport::hearBarClicked);
    connect(m_fromHere, &QAbstractButton::clicked, this, &Transport::fromHereClicked);
    connect(m_tempo, &QSlider::valueChanged, this, [this](int percent) {
        m_mark->setTempo(m_ownTempo, percent);
        emit settingsChanged();
    });
    for (Button* toggle : {m_loop, m_countIn, m_left, m_right})
        connect(toggle, &QAbstractButton::toggled, this, &Transport::settingsChanged);
    m_mark->setTempo(m_ownTempo, 100);
    setReady(false);
}

void Transport::setTempo(tune::Tempo tempo)
{
    m_ownTempo = tempo;
    m_mark->setTempo(tempo, tempoPercent());
}

void Transport::setBarWords(QString const& words)
{
    m_barWords = words;
    QString const heard = m_passageWords.isEmpty() ? words : m_passageWords;
    if (m_hearBar->text() == heard) return;
    m_hearBar->setText(heard);
    m_hearBar->setAccessibleName(tr("Hear %1").arg(heard));
    m_hearBar->updateGeometry();
    fit();
}

void Transport::setPassageWords(QString const& words)
{
    m_passageWords = words;
    m_hearBar->setToolTip(words.isEmpty()
                              ? tr("Hear the bar of the chosen chord (Space in the grid)")
                              : tr("Hear the passage (Space in the grid, Esc lets it go)"));
    setBarWords(m_barWords);
}

void Transport::setPlaying(bool playing)
{
    m_playing = playing;
    m_play->setText(playing ? tr("Stop") : tr("Whole tune"));
    m_play->setSign(playing ? Sign::Stop : Sign::Play);
}

void Transport::setReady(bool ready)
{
    for (Button* button : {m_play, m_hearBar, m_fromHere}) button->setEnabled(ready);
}

int Transport::tempoPercent() const { return m_tempo->value(); }
bool Transport::loops() const { return m_loop->isChecked(); }
bool Transport::countsIn() const { return m_countIn->isChecked(); }
bool Transport::hearsLeft() const { return m_left->isChecked(); }
bool Transport::hearsRight() const { return m_right->isChecked(); }

void Transport::toggleLoop() { m_loop->toggle(); }
void Transport::toggleCountIn() { m_countIn->toggle(); }
void Transport::toggleLeft() { m_left->toggle(); }
void Transport::toggleRight() { m_right->toggle(); }
void Transport::stepTempo(int percent) { m_tempo->setValue(m_tempo->value() + percent); }

void Transport::resetTempo() { m_tempo->setValue(100); }

void Transport::setRollGap(int ms)
{
    m_rollGapMs = ms;
    m_roll->setText(tr("%1 ms").arg(ms));
    emit settingsChanged();
}

void Transport::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

// On a narrow window words give way before anything is cut off.
void Transport::fit()
{
    m_tempoWord->setVisible(width() > 1000);
    m_roll->setCaptionShown(width() > 940);
    m_fromHere->setText(width() > 960 ? tr("From here") : QString());
    m_loop->setText(width() > 900 ? tr("Again") : QString());
    m_fromHere->setAccessibleName(tr("From here"));
    m_loop->setAccessibleName(tr("Again"));
    m_fromHere->updateGeometry();
    m_loop->updateGeometry();
}

} // namespace ui
