#include "ui/transport.h"

#include "ui/button.h"
#include "ui/practicecard.h"
#include "ui/theme.h"

#include <QHBoxLayout>
#include <QJsonDocument>
#include <QJsonObject>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QSlider>
#include <QSpinBox>
#include <QtMath>

#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr double slowest = 0.25;
constexpr double quickest = 1.5;

QSpinBox* numberField(QWidget* parent, QString const& name, QString const& help)
{
    auto* field = new QSpinBox(parent);
    field->setButtonSymbols(QAbstractSpinBox::NoButtons);
    field->setAlignment(Qt::AlignRight);
    field->setKeyboardTracking(false);
    field->setAccessibleName(name);
    field->setToolTip(help);
    field->setFocusPolicy(Qt::StrongFocus);
    return field;
}

} // namespace

TempoField::TempoField(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
    QString const help =
        tr("Type it, or use the arrow keys or the wheel. Enter goes back to the "
           "music (Ctrl+G)");
    m_beats = numberField(this, tr("Tempo in beats a minute"), help);
    m_percent = numberField(this, tr("Tempo in per cent of the arrangement's own"), help);
    m_percent->setObjectName(QStringLiteral("percent"));
    m_beats->setObjectName(QStringLiteral("beats"));
    m_percent->setRange(qRound(slowest * 100), qRound(quickest * 100));
    m_percent->setSuffix(tr(" %"));
    auto* row = new QHBoxLayout(this);
    // The note and its equals sign.
    row->setContentsMargins(std::max(30, qRound(1.4 * fontMetrics().height())), 0, 0, 0);
    row->setSpacing(4);
    row->addWidget(m_beats);
    row->addWidget(m_percent);
    connect(m_beats, &QSpinBox::valueChanged, this,
            [this](int beats) { type(beats / m_tempo.beatsPerMinute); });
    connect(m_percent, &QSpinBox::valueChanged, this,
            [this](int percent) { type(percent / 100.0); });
    constexpr int around = 22; // frame, padding and cursor
    for (auto const& [field, widest] :
         {std::pair{m_beats, tr("288")}, {m_percent, tr("150 %")}}) {
        field->installEventFilter(this);
        field->setFixedWidth(fontMetrics().horizontalAdvance(widest) + around);
    }
    setOwnTempo(m_tempo);
}

void TempoField::setOwnTempo(tune::Tempo tempo)
{
    m_tempo = tempo;
    QSignalBlocker const quiet(m_beats);
    m_beats->setRange(qCeil(tempo.beatsPerMinute * slowest),
                      qFloor(tempo.beatsPerMinute * quickest));
    setScale(m_scale);
    update();
}

void TempoField::setScale(double scale)
{
    m_scale = scale;
    QSignalBlocker const quietBeats(m_beats);
    QSignalBlocker const quietPercent(m_percent);
    m_beats->setValue(qRound(m_tempo.beatsPerMinute * scale));
    m_percent->setValue(qRound(scale * 100));
    setAccessibleName(tr("Tempo %1, %2 %").arg(m_beats->value()).arg(m_percent->value()));
}

void TempoField::type(double scale)
{
    setScale(std::clamp(scale, slowest, quickest));
    emit scaleTyped(m_scale);
}

bool TempoField::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::KeyPress) {
        auto const* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            static_cast<QSpinBox*>(watched)->interpretText();
            emit entered();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void TempoField::paintEvent(QPaintEvent*)
{
    Palette const& p = paletteOf(*this);
    QPainter painter(this);
    painter.setFont(scaledFont(*this, 1.0, QFont::DemiBold));
    double const line = painter.fontMetrics().height();
    QRectF const note(0, (height() - line) / 2, 14, line);
    double const used = paintNote(painter, m_tempo.beat, note, colour(p.ink));
    painter.setPen(colour(p.ink));
    painter.drawText(QRectF(used + 4, 0, layout()->contentsMargins().left() - used, height()),
                     Qt::AlignLeft | Qt::AlignAbsolute | Qt::AlignVCenter, QStringLiteral("="));
}

Transport::Transport(QWidget* parent)
    : QWidget(parent), m_play(new Button(tr("Whole tune"), this)),
      m_hearBar(new Button(tr("Hear bar"), this)),
      m_fromHere(new Button(tr("From here"), this)), m_loop(new Button(tr("Again"), this)),
      m_tempoWord(new QLabel(tr("Tempo"), this)), m_tempo(new QSlider(Qt::Horizontal, this)),
      m_field(new TempoField(this)), m_countIn(new Button(tr("Count-in"), this)),
      m_left(new Button(tr("Left"), this)), m_right(new Button(tr("Right"), this)),
      m_compared(new Button(QString(), this)), m_practice(new Button(tr("Practice"), this)),
      m_card(new PracticeCard(this))
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
    m_tempo->setSingleStep(5);
    m_tempo->setPageStep(5);
    m_tempo->setMinimumWidth(60);
    m_tempo->setMaximumWidth(190);
    m_tempo->setAccessibleName(tr("Slower or faster"));
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
    m_compared->setToolTip(tr("Hear the other of two settings, at the same beat (X)"));
    setCompared(std::nullopt);
    m_practice->setToolTip(
        tr("A bar before, a click, faster by itself, swing, rolls (Ctrl+J)"));

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 8, 14, 8);
    row->setSpacing(7);
    for (QWidget* part : {static_cast<QWidget*>(m_play), static_cast<QWidget*>(m_hearBar),
                          static_cast<QWidget*>(m_fromHere), static_cast<QWidget*>(m_loop)})
        row->addWidget(part);
    row->addSpacing(8);
    row->addWidget(m_tempoWord);
    row->addWidget(m_tempo, 1);
    row->addWidget(m_field);
    row->addStretch(1);
    for (QWidget* part : {static_cast<QWidget*>(m_compared), static_cast<QWidget*>(m_countIn),
                          static_cast<QWidget*>(m_left), static_cast<QWidget*>(m_right),
                          static_cast<QWidget*>(m_practice)})
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
        setScale(percent / 100.0);
        emit settingsChanged();
    });
    for (Button* toggle : {m_loop, m_countIn, m_left, m_right})
        connect(toggle, &QAbstractButton::toggled, this, &Transport::settingsChanged);
    connect(m_field, &TempoField::scaleTyped, this, [this](double scale) {
        setScale(scale);
        emit settingsChanged();
    });
    connect(m_field, &TempoField::entered, this, &Transport::tempoEntered);
    connect(m_compared, &QAbstractButton::clicked, this, &Transport::flipClicked);
    connect(m_practice, &QAbstractButton::clicked, this, &Transport::openPractice);
    connect(m_card, &PracticeCard::changed, this, [this] {
        // What gets faster time after time has to be played again and again.
        if (practice().faster && !m_loop->isChecked()) m_loop->setChecked(true);
        emit settingsChanged();
    });
    setReady(false);
}

void Transport::setTempo(tune::Tempo tempo) { m_field->setOwnTempo(tempo); }

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

double Transport::tempoScale() const { return m_scale; }
int Transport::tempoPercent() const { return qRound(m_scale * 100); }
Practice Transport::practice() const { return m_card->practice(); }

QByteArray Transport::settings() const
{
    Practice const p = practice();
    QJsonObject const all{{"percent", tempoPercent()},
                          {"again", loops()},
                          {"countIn", countsIn()},
                          {"left", hearsLeft()},
                          {"right", hearsRight()},
                          {"barBefore", p.barBefore},
                          {"clicks", p.clicks},
                          {"rollGapMs", p.rollGapMs},
                          {"faster", p.faster},
                          {"from", p.from},
                          {"to", p.to},
                          {"by", p.by},
                          {"every", p.every},
                          {"lilt", p.lilt},
                          {"slowing", p.slowing},
                          {"waits", p.waits},
                          {"tuneAlone", p.tuneAlone},
                          {"balance", p.balance},
                          {"listens", p.listens},
                          {"rightString", p.rightString}};
    return QJsonDocument(all).toJson(QJsonDocument::Compact);
}

void Transport::restoreSettings(QByteArray const& settings)
{
    QJsonObject const all = QJsonDocument::fromJson(settings).object();
    auto const number = [&all](char const* name, int otherwise) {
        return all.value(QLatin1String(name)).toInt(otherwise);
    };
    auto const yes = [&all](char const* name, bool otherwise) {
        return all.value(QLatin1String(name)).toBool(otherwise);
    };
    Practice p = practice();
    p.barBefore = yes("barBefore", p.barBefore);
    p.clicks = yes("clicks", p.clicks);
    p.rollGapMs = number("rollGapMs", p.rollGapMs);
    p.faster = yes("faster", p.faster);
    p.from = number("from", p.from);
    p.to = number("to", p.to);
    p.by = number("by", p.by);
    p.every = number("every", p.every);
    p.lilt = number("lilt", p.lilt);
    p.slowing = number("slowing", p.slowing);
    p.waits = yes("waits", p.waits);
    p.tuneAlone = yes("tuneAlone", p.tuneAlone);
    p.balance = number("balance", p.balance);
    p.listens = yes("listens", p.listens);
    p.rightString = yes("rightString", p.rightString);
    m_card->setPractice(p);
    m_loop->setChecked(yes("again", loops()));
    m_countIn->setChecked(yes("countIn", countsIn()));
    m_left->setChecked(yes("left", hearsLeft()));
    m_right->setChecked(yes("right", hearsRight()));
    m_tempo->setValue(std::clamp(number("percent", tempoPercent()), m_tempo->minimum(),
                                 m_tempo->maximum()));
}
bool Transport::loops() const { return m_loop->isChecked(); }
bool Transport::countsIn() const { return m_countIn->isChecked(); }
bool Transport::hearsLeft() const { return m_left->isChecked(); }
bool Transport::hearsRight() const { return m_right->isChecked(); }

void Transport::toggleLoop() { m_loop->toggle(); }
void Transport::toggleCountIn() { m_countIn->toggle(); }
void Transport::toggleLeft() { m_left->toggle(); }
void Transport::toggleRight() { m_right->toggle(); }
void Transport::stepTempo(int percent) { m_tempo->setValue(tempoPercent() + percent); }

void Transport::resetTempo() { m_tempo->setValue(100); }

void Transport::showTempo(double scale) { setScale(scale); }

void Transport::setScale(double scale)
{
    m_scale = scale;
    QSignalBlocker const quiet(m_tempo);
    m_tempo->setValue(qRound(scale * 100));
    m_field->setScale(scale);
}

void Transport::setCompared(std::optional<Compared> which)
{
    m_compared->setVisible(which.has_value());
    m_compared->setText(which == Compared::A ? tr("Hearing A") : tr("Hearing B"));
    m_compared->updateGeometry();
    fit();
    m_compared->setAccessibleName(which == Compared::A ? tr("A is heard; hear B")
                                                       : tr("B is heard; hear A"));
}

void Transport::openPractice() { m_card->openAbove(*m_practice); }

void Transport::typeTempo()
{
    auto* percent = m_field->findChild<QSpinBox*>(QStringLiteral("percent"));
    percent->setFocus(Qt::ShortcutFocusReason);
    percent->selectAll();
}

void Transport::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fit();
}

// On a narrow window words give way before anything is cut off.
void Transport::fit()
{
    // The slider goes before the two settings do: the field beside it says the same.
    bool const tight = m_compared->isVisibleTo(this) && width() < 1200;
    m_tempo->setVisible(!tight);
    m_tempoWord->setVisible(width() > 1060 && !tight);
    m_fromHere->setText(width() > 960 ? tr("From here") : QString());
    m_loop->setText(width() > 900 ? tr("Again") : QString());
    // Longer words of another language give way earlier.
    constexpr int leastSlider = 60;
    auto const tooLong = [this] {
        if (layout() == nullptr) return false; // not yet put together
        int needs = layout()->contentsMargins().left() + layout()->contentsMargins().right();
        for (QWidget const* part : findChildren<QWidget*>(Qt::FindDirectChildrenOnly))
            if (part->isVisibleTo(this))
                needs += (part == m_tempo ? leastSlider : part->sizeHint().width()) +
                         layout()->spacing();
        return needs > width();
    };
    if (tooLong()) m_tempoWord->hide();
    if (tooLong()) m_fromHere->setText({});
    if (tooLong()) m_loop->setText({});
    if (tooLong()) m_tempo->hide();
    m_fromHere->setAccessibleName(tr("From here"));
    m_loop->setAccessibleName(tr("Again"));
    m_fromHere->updateGeometry();
    m_loop->updateGeometry();
}

} // namespace ui
