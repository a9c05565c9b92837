#include "ui/takebar.h"

#include "ui/button.h"

#include "core/tune/edit/typing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QSpinBox>

#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr int slowestTake = 20; // beats a minute
constexpr int fastestTake = 240;

bool isOfTake(int key)
{
    return key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space ||
           key == Qt::Key_R || key == Qt::Key_Escape;
}

} // namespace

TakeBar::TakeBar(QWidget* parent)
    : QWidget(parent), m_words(new QLabel(this)), m_beatWords(new QLabel(this)),
      m_tempo(new QSpinBox(this)), m_next(new Button(QString(), this)),
      m_again(new Button(tr("Play again"), this)), m_leave(new Button(tr("Cancel"), this)),
      m_all(new QBoxLayout(QBoxLayout::LeftToRight, this)), m_row(new QHBoxLayout)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Play notes in time"));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_tempo->setRange(slowestTake, fastestTake);
    m_tempo->setAccessibleName(tr("Beats a minute"));
    m_next->setLook(Button::Look::Main);
    m_again->setToolTip(tr("R"));
    m_leave->setToolTip(tr("Esc"));
    for (Button* button : {m_next, m_again, m_leave}) button->setFocusPolicy(Qt::TabFocus);
    connect(m_next, &Button::clicked, this, &TakeBar::next);
    connect(m_again, &Button::clicked, this, &TakeBar::againClicked);
    connect(m_leave, &Button::clicked, this, &TakeBar::leaveClicked);
    // Enter in the field goes back to the strip, where Enter begins.
    connect(m_tempo, &QSpinBox::editingFinished, this,
            [this] { setFocus(Qt::OtherFocusReason); });

    m_all->setContentsMargins(8, 4, 8, 4);
    m_all->addWidget(m_words, 1);
    m_all->addLayout(m_row);
    m_row->addStretch(1);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_beatWords, m_tempo, m_next, m_again, m_leave})
        m_row->addWidget(widget);
    setStage(Stage::Ready, {});
}

void TakeBar::setStage(Stage stage, QString const& words)
{
    m_stage = stage;
    m_words->setText(words);
    m_next->setText(stage == Stage::Ready     ? tr("Start (Enter)")
                    : stage == Stage::Playing ? tr("Stop (Enter)")
                                              : tr("Keep it (Enter)"));
    m_again->setVisible(stage == Stage::Played);
    m_leave->setText(stage == Stage::Played ? tr("Throw away") : tr("Cancel"));
    m_tempo->setEnabled(stage == Stage::Ready);
    lay();
    updateGeometry();
}

void TakeBar::lay()
{
    int const forWords = 36 * fontMetrics().averageCharWidth();
    bool const beside = m_row->sizeHint().width() + forWords <= width();
    m_all->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void TakeBar::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    lay();
}

QString TakeBar::words() const { return m_words->text(); }

void TakeBar::setTempo(tune::Tempo tempo)
{
    m_beat = tempo.beat;
    m_beatWords->setText(
        tr("%1s a minute").arg(QString::fromStdString(tune::lengthWords(tempo.beat))));
    m_tempo->setValue(static_cast<int>(std::lround(tempo.beatsPerMinute)));
}

tune::Tempo TakeBar::tempo() const { return {m_beat, static_cast<double>(m_tempo->value())}; }

void TakeBar::next()
{
    switch (m_stage) {
    case Stage::Ready:
        emit startClicked();
        break;
    case Stage::Playing:
        emit stopClicked();
        break;
    case Stage::Played:
        emit keepClicked();
        break;
    }
}

// Its keys are those of menus elsewhere.
bool TakeBar::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride &&
        isOfTake(static_cast<QKeyEvent*>(event)->key())) {
        event->accept();
        return true;
    }
    return QWidget::event(event);
}

void TakeBar::keyPressEvent(QKeyEvent* event)
{
    int const key = event->key();
    if (key == Qt::Key_Escape)
        emit leaveClicked();
    else if (key == Qt::Key_R && m_stage == Stage::Played)
        emit againClicked();
    else if (isOfTake(key) && key != Qt::Key_R)
        next();
    else
        QWidget::keyPressEvent(event);
}

void TakeBar::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(hasFocus() ? QPalette::Highlight : QPalette::Mid), 1));
    painter.setBrush(palette().color(QPalette::AlternateBase));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
}

void TakeBar::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    // The pane was closed over it, not the window put away.
    if (!event->spontaneous()) emit leaveClicked();
}

} // namespace ui
