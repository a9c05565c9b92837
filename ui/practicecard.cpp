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
      m_steps(new QWidget(this)), m_liltName(new QLabel(this)), m_roll(new QComboBox(this))
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
    m_lilt = numberBox(this, 0, 100, usual.lilt, percent, tr("Swing"));
    m_liltName->setBuddy(m_lilt);
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
    grid->setColumnStretch(2, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 12, 14, 12);
    column->setSpacing(8);
    column->addWidget(m_barBefore);
    column->addWidget(m_clicks);
    column->addWidget(m_faster);
    column->addWidget(m_steps);
    column->addLayout(grid);

    m_steps->setEnabled(false);
    for (QCheckBox* box : {m_barBefore, m_clicks, m_faster})
        connect(box, &QCheckBox::toggled, this, &PracticeCard::changed);
    connect(m_faster, &QCheckBox::toggled, m_steps, &QWidget::setEnabled);
    connect(m_from, &QSpinBox::valueChanged, m_to, &QSpinBox::setMinimum);
    m_to->setMinimum(m_from->value());
    for (QSpinBox* box : {m_from, m_to, m_by, m_every, m_lilt})
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
            m_lilt->value()};
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

void PracticeCard::fit()
{
    layout()->activate();
    resize(layout()->sizeHint());
}

void PracticeCard::paintEvent(QPaintEvent*) { paintCard(*this); }

} // namespace ui
