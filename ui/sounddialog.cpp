#include "ui/sounddialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

enum Hands { Both, Left, Right, Tune };

constexpr int slowest = 25; // per cent
constexpr int quickest = 150;
constexpr int mostTimes = 100;
constexpr int steps = 1000; // of the progress bar

} // namespace

SoundDialog::SoundDialog(SoundChoice const& begin, int first, int last, QWidget* parent)
    : QDialog(parent), m_what(new QComboBox(this)), m_first(new QSpinBox(this)),
      m_last(new QSpinBox(this)), m_tempo(new QSpinBox(this)), m_hands(new QComboBox(this)),
      m_countIn(new QCheckBox(tr("&Count-in"), this)),
      m_click(new QCheckBox(tr("Clic&k on every beat"), this)), m_times(new QSpinBox(this)),
      m_kind(new QComboBox(this)),
      m_steps(new QCheckBox(begin.stepsWords.isEmpty()
                                ? tr("Faster &by itself")
                                : tr("Faster &by itself: %1").arg(begin.stepsWords),
                            this)),
      m_progress(new QProgressBar(this)), m_words(new QLabel(this))
{
    setWindowTitle(tr("Sound files"));
    m_what->addItems({tr("One file"), tr("A practice pack of four files")});
    m_what->setCurrentIndex(begin.pack ? 1 : 0);
    m_what->setToolTip(
        tr("A pack holds both hands, the left and the right alone, all slow, and "
           "both hands at the tempo"));
    for (QSpinBox* bar : {m_first, m_last}) bar->setRange(first, last);
    m_progress->setAccessibleName(tr("Sound written"));
    m_first->setAccessibleName(tr("First bar"));
    m_last->setAccessibleName(tr("Last bar"));
    m_first->setValue(begin.firstBar);
    m_last->setValue(begin.lastBar);
    m_last->setMinimum(m_first->value());
    m_tempo->setRange(slowest, quickest);
    m_tempo->setSuffix(tr(" %"));
    m_tempo->setValue(begin.percent);
    m_hands->addItems({tr("Both hands"), tr("Left hand"), tr("Right hand"),
                       tr("The tune alone")});
    m_hands->setCurrentIndex(begin.left && begin.right ? Both : begin.left ? Left : Right);
    m_countIn->setChecked(begin.countIn);
    m_click->setChecked(begin.click);
    m_steps->setChecked(begin.steps);
    m_steps->setToolTip(tr("As it is set under Practice"));
    m_times->setRange(1, mostTimes);
    m_times->setValue(begin.times);
    m_kind->addItem(tr("WAV"), QStringLiteral("wav"));
    m_kind->addItem(tr("FLAC, smaller"), QStringLiteral("flac"));
    m_kind->addItem(tr("OGG, smallest"), QStringLiteral("ogg"));
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(begin.ending)));
    m_progress->setRange(0, steps);
    m_progress->setValue(0);
    m_progress->setTextVisible(false);
    QSizePolicy kept = m_progress->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_progress->setSizePolicy(kept);
    m_progress->hide();
    m_words->setWordWrap(true);

    auto* bars = new QHBoxLayout;
    bars->addWidget(m_first);
    bars->addWidget(new QLabel(tr("to"), this));
    bars->addWidget(m_last);
    bars->addStretch(1);
    auto* form = new QFormLayout;
    form->addRow(tr("&Make"), m_what);
    auto* barsLabel = new QLabel(tr("&Bars"), this);
    barsLabel->setBuddy(m_first);
    form->addRow(barsLabel, bars);
    form->addRow(tr("&Tempo"), m_tempo);
    form->addRow(tr("&Hands"), m_hands);
    form->addRow(tr("Tim&es"), m_times);
    form->addRow(QString(), m_countIn);
    form->addRow(QString(), m_click);
    form->addRow(QString(), m_steps);
    form->addRow(tr("&File type"), m_kind);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    m_start = buttons->addButton(tr("&Save…"), QDialogButtonBox::ActionRole);
    m_start->setDefault(true);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_progress);
    column->addWidget(m_words);
    column->addWidget(buttons);
    setMinimumWidth(400);

    connect(m_first, &QSpinBox::valueChanged, m_last, &QSpinBox::setMinimum);
    connect(m_what, &QComboBox::currentIndexChanged, this, [this](int what) {
        // What is slow in a pack has to be slower than the tempo.
        if (what == 1 && m_tempo->value() >= 100) m_tempo->setValue(60);
        enable();
    });
    connect(m_steps, &QCheckBox::toggled, this, &SoundDialog::enable);
    connect(m_start, &QPushButton::clicked, this, [this] {
        if (m_running)
            emit cancelClicked();
        else
            emit startClicked();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &SoundDialog::reject);
    enable();
}

SoundChoice SoundDialog::choice() const
{
    int const hands = m_hands->currentIndex();
    return {m_first->value(),
            m_last->value(),
            m_tempo->value(),
            hands == Both || hands == Left,
            hands != Left,
            m_countIn->isChecked(),
            m_click->isChecked(),
            m_times->value(),
            m_what->currentIndex() == 1,
            m_kind->currentData().toString(),
            hands == Tune,
            m_steps->isChecked() && m_what->currentIndex() == 0,
            {}};
}

void SoundDialog::started()
{
    m_running = true;
    m_progress->show();
    m_progress->setValue(0);
    m_words->setText(tr("Playing it into the file …"));
    enable();
}

void SoundDialog::reached(double part) { m_progress->setValue(qRound(part * steps)); }

void SoundDialog::ended(QString const& words)
{
    m_running = false;
    m_words->setText(words);
    enable();
}

void SoundDialog::reject()
{
    if (m_running)
        emit cancelClicked();
    else
        QDialog::reject();
}

void SoundDialog::enable()
{
    for (QWidget* part : {static_cast<QWidget*>(m_what), static_cast<QWidget*>(m_first),
                          static_cast<QWidget*>(m_last), static_cast<QWidget*>(m_countIn),
                          static_cast<QWidget*>(m_click), static_cast<QWidget*>(m_kind)})
        part->setEnabled(!m_running);
    bool const one = m_what->currentIndex() == 0;
    bool const steps = one && m_steps->isChecked();
    m_steps->setEnabled(!m_running && one);
    for (QWidget* part : {static_cast<QWidget*>(m_tempo), static_cast<QWidget*>(m_times)})
        part->setEnabled(!m_running && !steps);
    m_hands->setEnabled(!m_running && m_what->currentIndex() == 0);
    m_start->setText(m_running ? tr("&Stop") : tr("&Save…"));
}

} // namespace ui
