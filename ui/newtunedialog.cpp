#include "ui/newtunedialog.h"

#include "ui/tunefields.h"

#include <QAbstractButton>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int usualBars = 8;
constexpr int mostBars = 200;
constexpr int unsetTempo = 19; // below the slowest beat
constexpr int fastestTempo = 300;

} // namespace

NewTuneDialog::NewTuneDialog(QWidget* parent)
    : QDialog(parent), m_title(new QLineEdit(this)),
      m_kind(new KindField(tune::Kind::Jig, this)),
      m_key(new KeyField({{music::Letter::G, 0}, music::Mode::Ionian}, this)),
      m_meter(new MeterField(tune::usualMeter(tune::Kind::Jig), this)),
      m_bars(new QSpinBox(this)), m_pickUp(new PickUpField(std::nullopt, this)),
      m_said(new QLabel(this)), m_tempo(new QSpinBox(this))
{
    setWindowTitle(tr("New tune"));
    m_title->setPlaceholderText(tr("what the tune is called"));
    m_bars->setRange(1, mostBars);
    m_bars->setValue(usualBars);
    m_tempo->setRange(unsetTempo, fastestTempo);
    m_tempo->setSpecialValueText(tr("usual for its kind"));
    m_said->setWordWrap(true);

    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Title"), m_title);
    form->addRow(tr("&Kind"), m_kind);
    form->addRow(tr("K&ey"), m_key);
    form->addRow(tr("Time &signature"), m_meter);
    form->addRow(tr("&Bars"), m_bars);
    form->addRow(tr("&Pick-up"), m_pickUp);
    form->addRow(tr("Te&mpo, beats a minute"), m_tempo);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    m_begin = buttons->button(QDialogButtonBox::Ok);
    m_begin->setText(tr("Begin"));
    m_play = buttons->addButton(tr("Play it &in…"), QDialogButtonBox::ActionRole);
    m_play->setToolTip(tr("Play the notes on a MIDI harp or keyboard, in time with clicks"));
    m_play->setAutoDefault(false);
    connect(m_play, &QPushButton::clicked, this, [this] {
        m_playsIn = true;
        accept();
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        if (!m_meterChosen) m_meter->setMeter(tune::usualMeter(m_kind->kind()));
        check();
    });
    connect(m_meter, &QComboBox::activated, this, [this] { m_meterChosen = true; });
    connect(m_meter->lineEdit(), &QLineEdit::textEdited, this,
            [this] { m_meterChosen = true; });
    connect(m_meter, &QComboBox::currentTextChanged, this, &NewTuneDialog::check);
    connect(m_pickUp, &QComboBox::currentIndexChanged, this, &NewTuneDialog::check);

    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_said);
    column->addWidget(buttons);
    resize(440, sizeHint().height());
    check();
}

void NewTuneDialog::check()
{
    QString why;
    auto const meter = m_meter->meter();
    auto const pickUp = m_pickUp->length();
    if (!meter)
        why = tr("A time signature is two numbers, such as 6/8.");
    else if (pickUp && *pickUp >= barLength(*meter))
        why = tr("A pick-up is shorter than a bar. Choose a shorter one.");
    m_said->setText(why);
    m_said->setVisible(!why.isEmpty());
    m_begin->setEnabled(why.isEmpty());
    m_play->setEnabled(why.isEmpty());
}

std::optional<tune::Tempo> NewTuneDialog::tempo() const
{
    auto const meter = m_meter->meter();
    if (m_tempo->value() == unsetTempo || !meter) return std::nullopt;
    return tune::Tempo{beatLength(*meter), static_cast<double>(m_tempo->value())};
}

QString NewTuneDialog::said() const { return m_said->text(); }

tune::NewTune NewTuneDialog::wish() const
{
    QString const title = m_title->text().trimmed();
    return {(title.isEmpty() ? tr("New tune") : title).toStdString(),
            m_kind->kind(),
            m_key->key(),
            m_meter->meter().value_or(music::Meter{}),
            m_bars->value(),
            m_pickUp->length()};
}

} // namespace ui
