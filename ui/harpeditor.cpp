#include "ui/harpeditor.h"

#include "ui/stringbank.h"
#include "ui/words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

QString shownText(std::string const& text) { return QString::fromStdString(text); }

// From the lowest note of a large lever harp to that of a small one.
constexpr music::Pitch lowestOffered{music::Letter::C, 0, 1};
constexpr music::Pitch highestOffered{music::Letter::G, 0, 4};

QDoubleSpinBox* gapField(QString const& name)
{
    auto* field = new QDoubleSpinBox;
    field->setRange(harp::leastGapMm, harp::greatestGapMm);
    field->setDecimals(1);
    field->setSingleStep(0.1);
    field->setSuffix(HarpEditor::tr(" mm"));
    field->setAccessibleName(name);
    return field;
}

} // namespace

HarpEditor::HarpEditor(harp::HarpModel model, files::Tables const& tables, QWidget* parent)
    : QDialog(parent), m_model(std::move(model)), m_tunings(tables.tunings),
      m_bank(new StringBank(this)), m_name(new QLineEdit), m_strings(new QSpinBox),
      m_lowest(new QComboBox), m_tuning(new QComboBox),
      m_lowGap(gapField(tr("Spacing at the lowest string"))),
      m_highGap(gapField(tr("Spacing at the highest string"))), m_wound(new QSpinBox),
      m_naming(new QComboBox), m_range(new QLabel(this)), m_wrong(new QLabel(this))
{
    setWindowTitle(tr("Describe your harp"));
    m_bank->setTitle(tr("Your harp"));
    m_bank->setLeverHint(tr("%1: click to add or remove its lever"));
    connect(m_bank, &StringBank::stringPlucked, this, &HarpEditor::toggleLever);
    connect(m_bank, &StringBank::leverTurned, this, &HarpEditor::toggleLever);

    auto* const hint = new QLabel(
        tr("Click a string to add or remove its lever. Describe the harp as it is now. Ask its "
           "maker before you retune it, change strings or add levers: the strings and "
           "soundboard are built for one tension."),
        this);
    hint->setWordWrap(true);
    m_wrong->setWordWrap(true);
    m_wrong->setForegroundRole(QPalette::BrightText);

    auto* const buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_use = buttons->addButton(tr("Use once"), QDialogButtonBox::AcceptRole);
    m_keep = buttons->addButton(tr("Save as my harp"), QDialogButtonBox::AcceptRole);
    m_use->setObjectName(QStringLiteral("use"));
    m_keep->setObjectName(QStringLiteral("keep"));
    m_keep->setDefault(true);
    connect(m_keep, &QAbstractButton::clicked, this, [this] { m_toBeKept = true; });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* const column = new QVBoxLayout(this);
    column->addWidget(m_bank, 1);
    column->addWidget(m_range);
    column->addWidget(fields());
    column->addWidget(leverButtons());
    column->addWidget(hint);
    column->addWidget(m_wrong);
    column->addWidget(buttons);
    resize(760, 560);
    fill();
}

QWidget* HarpEditor::fields()
{
    m_name->setAccessibleName(tr("Name of the harp"));
    m_strings->setRange(harp::fewestStrings, harp::mostStrings);
    m_strings->setAccessibleName(tr("Number of strings"));
    m_lowest->setAccessibleName(tr("Lowest string"));
    for (int step = diatonicStep(lowestOffered); step <= diatonicStep(highestOffered); ++step)
        m_lowest->addItem(shownText(music::shown(music::naturalAt(step))), step);
    m_tuning->setAccessibleName(tr("Tuning with all levers down"));
    for (files::NamedTuning const& tuning : m_tunings)
        m_tuning->addItem(shownText(tuning.name));
    m_wound->setRange(0, harp::mostStrings);
    m_wound->setAccessibleName(tr("Wound strings"));
    m_wound->setSuffix(tr(" lowest"));
    m_naming->setAccessibleName(tr("Names of strings"));
    m_naming->addItems({tr("as on printed harp music"), tr("middle C is C4"),
                        tr("middle C is 4C (harp octaves)"), tr("numbered from the top")});

    auto* const two = new QWidget(this);
    two->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    auto* const row = new QHBoxLayout(two);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(26);
    auto* const left = new QFormLayout;
    left->addRow(tr("Name"), m_name);
    left->addRow(tr("Strings"), m_strings);
    left->addRow(tr("Lowest"), m_lowest);
    left->addRow(tr("Tuned in"), m_tuning);
    auto* const right = new QFormLayout;
    right->addRow(tr("Spacing, low"), m_lowGap);
    right->addRow(tr("Spacing, high"), m_highGap);
    right->addRow(tr("Wound"), m_wound);
    right->addRow(tr("Strings named"), m_naming);
    row->addLayout(left, 1);
    row->addLayout(right, 1);

    auto const ifEdited = [this](auto edited) {
        return [this, edited](auto const&... value) {
            if (!m_showing) edit(edited(m_model, value...));
        };
    };
    connect(m_name, &QLineEdit::textEdited, this,
            ifEdited([](harp::HarpModel m, QString const& name) {
                return withName(std::move(m), name.trimmed().toStdString());
            }));
    connect(m_strings, &QSpinBox::valueChanged, this,
            ifEdited([](harp::HarpModel m, int count) {
                return withStrings(std::move(m), count);
            }));
    connect(m_lowest, &QComboBox::currentIndexChanged, this,
            ifEdited([this](harp::HarpModel m, int index) {
                return withLowest(std::move(m),
                                  music::naturalAt(m_lowest->itemData(index).toInt()));
            }));
    connect(m_tuning, &QComboBox::currentIndexChanged, this,
            ifEdited([this](harp::HarpModel m, int index) {
                return withTuning(std::move(m), m_tunings[static_cast<std::size_t>(index)].key);
            }));
    auto const spaced = [this](harp::HarpModel m, double) {
        return withSpacing(std::move(m), m_lowGap->value(), m_highGap->value());
    };
    connect(m_lowGap, &QDoubleSpinBox::valueChanged, this, ifEdited(spaced));
    connect(m_highGap, &QDoubleSpinBox::valueChanged, this, ifEdited(spaced));
    connect(m_wound, &QSpinBox::valueChanged, this,
            ifEdited([](harp::HarpModel m, int count) {
                return withWound(std::move(m), count);
            }));
    connect(m_naming, &QComboBox::currentIndexChanged, this,
            ifEdited([](harp::HarpModel m, int index) {
                m.naming = static_cast<harp::Naming>(index);
                return m;
            }));
    return two;
}

QWidget* HarpEditor::leverButtons()
{
    using music::Letter;
    struct Fit {
        QString words;
        std::vector<Letter> letters;
    };
    auto* const bar = new QWidget(this);
    auto* const row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new QLabel(tr("Levers on"), bar));
    for (Fit const& fit :
         {Fit{tr("all strings"),
              {Letter::C, Letter::D, Letter::E, Letter::F, Letter::G, Letter::A, Letter::B}},
          Fit{tr("C, F and B"), {Letter::C, Letter::F, Letter::B}},
          Fit{tr("C and F"), {Letter::C, Letter::F}}, Fit{tr("F"), {Letter::F}},
          Fit{tr("none"), {}}}) {
        auto* const button = new QPushButton(fit.words, bar);
        button->setAutoDefault(false);
        button->setAccessibleName(tr("Levers on: %1").arg(fit.words));
        connect(button, &QAbstractButton::clicked, this,
                [this, letters = fit.letters] { edit(withLevers(m_model, letters)); });
        row->addWidget(button);
    }
    row->addStretch(1);
    return bar;
}

void HarpEditor::toggleLever(harp::StringIndex string)
{
    edit(withLever(m_model, string, !m_model.levers[static_cast<std::size_t>(string)]));
}

void HarpEditor::edit(harp::HarpModel model)
{
    m_model = std::move(model);
    fill();
}

void HarpEditor::fill()
{
    m_showing = true;
    if (m_name->text().trimmed().toStdString() != m_model.name)
        m_name->setText(shownText(m_model.name));
    m_strings->setValue(m_model.strings());
    m_lowest->setCurrentIndex(m_lowest->findData(diatonicStep(m_model.lowest)));
    for (std::size_t i = 0; i < m_tunings.size(); ++i)
        if (m_tunings[i].key == m_model.tuning)
            m_tuning->setCurrentIndex(static_cast<int>(i));
    m_lowGap->setValue(m_model.gapsMm.front());
    m_highGap->setValue(m_model.gapsMm.back());
    m_wound->setMaximum(m_model.strings());
    m_wound->setValue(woundStrings(m_model));
    m_naming->setCurrentIndex(static_cast<int>(m_model.naming));
    m_showing = false;

    auto const harp = harpOf(m_model);
    m_keep->setEnabled(harp.has_value());
    m_use->setEnabled(harp.has_value());
    m_wrong->setText(harp ? QString() : faultWords(harp.error()));
    m_wrong->setVisible(!harp);
    if (!harp) return;
    m_bank->setHarp(*harp);
    m_range->setText(
        tr("%1 to %2, %3 levers")
            .arg(shownText(stringName(*harp, 0)), shownText(stringName(*harp, harp->highest())))
            .arg(std::count(m_model.levers.begin(), m_model.levers.end(), true)));
}

} // namespace ui
