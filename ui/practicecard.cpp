#include "ui/practicecard.h"

#include "ui/theme.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QScreen>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace ui {

namespace {

constexpr std::array rollGapsMs{20, 30, 45, 60, 90, 120};
constexpr int slowest = 25; // per cent
constexpr int quickest = 150;

QSpinBox* numberBox(QWidget* parent, int least, int most, int value, QString const& suffix,
                    QString const& name)
{
    auto* box = new QSpinBox(parent);
    box->setRange(least, most);
    box->setValue(value);
    box->setSuffix(suffix);
    box->setAccessibleName(name);
    box->setKeyboardTracking(false);
    return box;
}

} // namespace

PracticeCard::PracticeCard(QWidget* parent)
    : QFrame(parent, Qt::Popup),
      m_barBefore(new QCheckBox(tr("The bar &before as well"), this)),
      m_clicks(new QCheckBox(tr("A &click on every beat"), this)),
      m_faster(new QCheckBox(tr("&Faster by itself, time after time"), this)),
      m_steps(new QWidget(this)), m_liltName(new QLabel(this)), m_roll(new QComboBox(this)),
      m_waits(new QCheckBox(tr("&Wait for me before each time round"), this)),
      m_tuneAlone(new QCheckBox(tr("The &tune alone in the right hand"), this)),
      m_listens(new QCheckBox(tr("&Play it with me: listen to my MIDI harp or keyboard"), this)),
      m_rightString(new QCheckBox(tr("&Go on only at the right strings"), this))
{
    setObjectName(QStringLiteral("practicecard"));
    setAccessibleName(tr("Practice"));
    Practice const usual;
    m_barBefore->setToolTip(tr("Before a passage, the first time round (Ctrl+Shift+K)"));
    m_clicks->setToolTip(tr("The first beat of the bar is louder (M)"));
    m_faster->setToolTip(tr("A passage that is played again and again steps up by itself"));
    QString const percent = tr(" %");
    m_from = numberBox(m_steps, slowest, quickest, usual.from, percent, tr("From, per cent"));
    m_to = numberBox(m_steps, slowest, quickest, usual.to, percent, tr("To, per cent"));
    m_by = numberBox(m_steps, 1, 50, usual.by, percent, tr("By, per cent"));
    m_every = numberBox(m_steps, 1, 20, usual.every, tr(" times"), tr("Every, times round"));
    m_waits->setToolTip(tr("It stops after each time; Space plays the next, one step faster"));
    m_tuneAlone->setToolTip(tr("Without the notes that were added below it"));
    m_listens->setToolTip(tr("What came early or late, what was another string and what was "
                             "left out is told afterwards, bar by bar (Y)"));
    m_rightString->setToolTip(tr("The hand that is not heard is yours; if both are heard, "
                                 "both are yours"));
    m_balance = numberBox(this, -100, 100, usual.balance, percent, tr("Balance of the hands"));
    m_balance->setToolTip(tr("Above 0 the left hand is softer, below 0 the right"));
    m_balance->setSingleStep(10);
    m_lilt = numberBox(this, 0, 100, usual.lilt, percent, tr("Swing"));
    m_liltName->setBuddy(m_lilt);
    m_slowing = numberBox(this, 0, 100, usual.slowing, percent, tr("Slowing at the end"));
    m_slowing->setToolTip(
        tr("0 % in time to the last note; 100 %: as far as tunes of its kind go, "
           "an air to half its tempo. The sheet says rit. Not while it goes round and round"));
    m_roll->setToolTip(tr("Time between two strings of a rolled chord"));
    for (int const ms : rollGapsMs) m_roll->addItem(tr("%1 ms").arg(ms), ms);
    m_roll->setCurrentIndex(m_roll->findData(usual.rollGapMs));

    auto* steps = new QHBoxLayout(m_steps);
    steps->setContentsMargins(24, 0, 0, 0);
    steps->setSpacing(6);
    std::array<std::pair<QString, QSpinBox*>, 4> const parts{
        {{tr("from"), m_from}, {tr("to"), m_to}, {tr("by"), m_by}, {tr("every"), m_every}}};
    for (auto const& [word, box] : parts) {
        steps->addWidget(new QLabel(word, m_steps));
        steps->addWidget(box);
    }
    steps->addStretch(1);
    auto* rollName = new QLabel(tr("&Roll"), this);
    rollName->setBuddy(m_roll);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->addWidget(m_liltName, 0, 0);
    grid->addWidget(m_lilt, 0, 1);
    grid->addWidget(rollName, 1, 0);
    grid->addWidget(m_roll, 1, 1);
    auto* balanceName = new QLabel(tr("Bala&nce"), this);
    balanceName->setBuddy(m_balance);
    grid->addWidget(balanceName, 2, 0);
    grid->addWidget(m_balance, 2, 1);
    auto* slowingName = new QLabel(tr("Sl&owing at the end"), this);
    slowingName->setBuddy(m_slowing);
    grid->addWidget(slowingName, 3, 0);
    grid->addWidget(m_slowing, 3, 1);
    grid->setColumnStretch(2, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    column->addWidget(m_barBefore);
    column->addWidget(m_clicks);
    column->addWidget(m_faster);
    column->addWidget(m_steps);
    column->addWidget(m_waits);
    column->addWidget(m_tuneAlone);
    column->addLayout(grid);
    column->addWidget(m_listens);
    column->addWidget(m_rightString);

    for (QWidget* later : {m_steps, static_cast<QWidget*>(m_waits),
                           static_cast<QWidget*>(m_rightString)})
        later->setEnabled(false);
    connect(m_faster, &QCheckBox::toggled, m_waits, &QWidget::setEnabled);
    connect(m_listens, &QCheckBox::toggled, m_rightString, &QWidget::setEnabled);
    for (QCheckBox* box : {m_barBefore, m_clicks, m_faster, m_waits, m_tuneAlone, m_listens,
                           m_rightString})
        connect(box, &QCheckBox::toggled, this, &PracticeCard::changed);
    connect(m_faster, &QCheckBox::toggled, m_steps, &QWidget::setEnabled);
    connect(m_from, &QSpinBox::valueChanged, m_to, &QSpinBox::setMinimum);
    m_to->setMinimum(m_from->value());
    for (QSpinBox* box : {m_from, m_to, m_by, m_every, m_lilt, m_slowing, m_balance})
        connect(box, &QSpinBox::valueChanged, this, &PracticeCard::changed);
    connect(m_roll, &QComboBox::currentIndexChanged, this, &PracticeCard::changed);
    setLilt({}, {}, 0);
}

Practice PracticeCard::practice() const
{
    return {m_barBefore->isChecked(),
            m_clicks->isChecked(),
            m_roll->currentData().toInt(),
            m_faster->isChecked(),
            m_from->value(),
            m_to->value(),
            m_by->value(),
            m_every->value(),
            m_lilt->value(),
            m_slowing->value(),
            m_waits->isChecked(),
            m_tuneAlone->isChecked(),
            m_balance->value(),
            m_listens->isChecked(),
            m_rightString->isChecked()};
}

void PracticeCard::setPractice(Practice const& practice)
{
    if (practice == this->practice()) return;
    {
        QSignalBlocker const quiet(this);
        m_barBefore->setChecked(practice.barBefore);
        m_clicks->setChecked(practice.clicks);
        m_roll->setCurrentIndex(std::max(0, m_roll->findData(practice.rollGapMs)));
        m_faster->setChecked(practice.faster);
        m_from->setValue(practice.from);
        m_to->setValue(practice.to);
        m_by->setValue(practice.by);
        m_every->setValue(practice.every);
        if (!m_lilt->isHidden()) m_lilt->setValue(practice.lilt);
        m_slowing->setValue(practice.slowing);
        m_waits->setChecked(practice.waits);
        m_tuneAlone->setChecked(practice.tuneAlone);
        m_balance->setValue(practice.balance);
        m_listens->setChecked(practice.listens);
        m_rightString->setChecked(practice.rightString);
    }
    emit changed();
}

void PracticeCard::setSlowing(int percent)
{
    QSignalBlocker const quiet(m_slowing);
    m_slowing->setValue(percent);
}

void PracticeCard::setLilt(QString const& name, QString const& help, int percent)
{
    QSignalBlocker const quiet(m_lilt);
    bool const any = !name.isEmpty();
    m_liltName->setText(any ? name : tr("&Swing"));
    m_lilt->setValue(any ? percent : 0);
    m_lilt->setAccessibleName(any ? QString(name).remove(QLatin1Char('&')) : tr("Swing"));
    for (QWidget* part : {static_cast<QWidget*>(m_liltName), static_cast<QWidget*>(m_lilt)}) {
        part->setVisible(any);
        part->setToolTip(help);
    }
    fit();
}

void PracticeCard::openAbove(QWidget const& button)
{
    fit();
    QPoint const corner = button.mapToGlobal(QPoint(button.width() - width(), -height() - 6));
    QRect const screen = button.screen()->availableGeometry();
    int const x = std::clamp(corner.x(), screen.left(),
                             std::max(screen.left(), screen.right() - width()));
    move(x, std::max(screen.top(), corner.y()));
    show();
    m_barBefore->setFocus(Qt::PopupFocusReason);
}

void PracticeCard::toggleBarBefore() { m_barBefore->toggle(); }
void PracticeCard::toggleClicks() { m_clicks->toggle(); }
void PracticeCard::toggleFaster() { m_faster->toggle(); }
void PracticeCard::toggleListens() { m_listens->toggle(); }

void PracticeCard::fit()
{
    layout()->activate();
    resize(layout()->sizeHint());
}

void PracticeCard::paintEvent(QPaintEvent*) { paintCard(*this); }

} // namespace ui
