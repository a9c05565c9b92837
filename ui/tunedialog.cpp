#include "ui/tunedialog.h"

#include "core/tune/edit/rebar.h"
#include "core/tune/edit/whole.h"
#include "core/tune/kindwords.h"
#include "ui/tunefields.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <cmath>

namespace ui {

namespace {

constexpr int fastest = 300; // beats a minute

tune::Tempo tempoAt(music::Meter meter, int beats)
{
    return {beatLength(meter), double(beats)};
}

int beatsOf(tune::Tune const& tune)
{
    if (!tune.tempo) return 0;
    double const quarters = quartersPerMinute(*tune.tempo);
    double const each = (beatLength(tune.meter).wholes * music::Rational(4)).toDouble();
    return static_cast<int>(std::lround(quarters / each));
}

} // namespace

TuneDialog::TuneDialog(tune::Tune const& tune, QWidget* parent)
    : QDialog(parent), m_tune(tune), m_kind(new KindField(kindOf(tune), this)),
      m_key(new KeyField(tune.key, this)),
      m_transposes(new QCheckBox(tr("The notes go to the new key"), this)),
      m_meter(new MeterField(tune.meter, this)),
      m_rebars(new QCheckBox(tr("The bar lines move to fit"), this)),
      m_pickUp(new PickUpField(pickUpOf(tune), this)), m_tempo(new QSpinBox(this)),
      m_said(new QLabel(this))
{
    setWindowTitle(tr("Key, time and kind"));
    m_transposes->setChecked(true);
    m_transposes->setToolTip(tr("Otherwise the letters stay and only the signature changes."));
    m_rebars->setChecked(true);
    m_rebars->setToolTip(
        tr("The notes follow one another as before. Otherwise each bar keeps its "
           "notes, and those that do not fit are marked."));
    m_tempo->setRange(0, fastest);
    m_tempo->setSpecialValueText(tr("as usual for its kind"));
    m_tempo->setSuffix(tr(" beats a minute"));
    m_tempo->setValue(beatsOf(tune));
    m_said->setWordWrap(true);

    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Kind"), m_kind);
    form->addRow(tr("K&ey"), m_key);
    form->addRow(QString(), m_transposes);
    form->addRow(tr("Time &signature"), m_meter);
    form->addRow(QString(), m_rebars);
    form->addRow(tr("&Pick-up"), m_pickUp);
    form->addRow(tr("&Tempo"), m_tempo);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    m_change = buttons->button(QDialogButtonBox::Ok);
    m_change->setText(tr("Change"));
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_key, &KeyField::changed, this, &TuneDialog::check);
    connect(m_transposes, &QCheckBox::toggled, this, &TuneDialog::check);
    connect(m_meter, &QComboBox::currentTextChanged, this, &TuneDialog::check);
    connect(m_rebars, &QCheckBox::toggled, this, &TuneDialog::check);
    connect(m_pickUp, &QComboBox::currentIndexChanged, this, &TuneDialog::check);

    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_said);
    column->addWidget(buttons);
    resize(460, sizeHint().height());
    check();
}

void TuneDialog::check()
{
    auto const meter = m_meter->meter();
    auto const pickUp = m_pickUp->length();
    music::Key const key = m_key->key();
    QString why;
    bool stops = true;
    if (!meter) {
        why = tr("A time signature is two numbers, such as 6/8.");
    } else if (pickUp && *pickUp >= barLength(*meter)) {
        why = tr("A pick-up is shorter than a bar. Choose a shorter one.");
    } else {
        stops = false;
        bool const anew = hasNotes(m_tune) && needsNewBars(m_tune, *meter);
        m_rebars->setEnabled(anew);
        if (anew && !m_rebars->isChecked())
            why = tr("Bars with notes stay as they are; those that do not fit are marked.");
        else if (anew && !rebarred(m_tune, *meter))
            why =
                tr("A triplet would lie across a bar line, so the bars stay as they are; those "
                   "that do not fit are marked.");
        else if (anew)
            why = tr("Notes across a new bar line are tied. Repeats and parts stay where they "
                     "are.");
        if (m_transposes->isChecked() && key.mode != m_tune.key.mode)
            why = tr("The notes move with the home note. For another mode only the signature "
                     "changes, and notes without an accidental follow it.");
    }
    m_said->setText(why);
    m_said->setVisible(!why.isEmpty());
    m_change->setEnabled(!stops);
}

bool TuneDialog::rebars() const { return m_rebars->isEnabled() && m_rebars->isChecked(); }

music::Interval TuneDialog::moved() const
{
    return m_transposes->isChecked() ? wayTo(m_tune, m_key->key().tonic) : music::Interval{};
}

tune::Tune TuneDialog::wished() const
{
    tune::Tune tune = m_tune;
    if (moved() != music::Interval{}) tune = transposed(std::move(tune), moved());
    if (m_key->key() != tune.key) tune = withSignature(std::move(tune), m_key->key());
    if (auto const meter = m_meter->meter(); meter && text(*meter) != text(tune.meter)) {
        auto anew = rebars() ? rebarred(tune, *meter) : std::nullopt;
        tune = anew ? *std::move(anew) : withMeter(std::move(tune), *meter);
    }
    // Only where another is wished: first bars may look like pick-ups in their new time.
    if (m_pickUp->length() != pickUpOf(m_tune))
        if (auto with = withPickUp(tune, m_pickUp->length())) tune = *std::move(with);
    std::string kind = tune.rhythm;
    if (m_kind->kind() != kindOf(m_tune)) kind = kindText(m_kind->kind());
    auto tempo = m_tune.tempo;
    if (m_tempo->value() != beatsOf(m_tune))
        tempo = m_tempo->value() == 0 ? std::nullopt
                                      : std::optional(tempoAt(tune.meter, m_tempo->value()));
    return withHead(tune, tune.title, kind, tempo);
}

} // namespace ui
