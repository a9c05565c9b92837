#include "ui/harpsounddialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace ui {

namespace {

QString const noDevice = QStringLiteral("-");
QString const ownCents = QStringLiteral("own");

void addDevice(QComboBox* list, QString const& device, bool there)
{
    if (device.isEmpty() || device == noDevice || list->findData(device) >= 0) return;
    list->addItem(there ? device : HarpSoundDialog::tr("%1 (not plugged in)").arg(device),
                  device);
}

void choose(QComboBox* list, QString const& data)
{
    list->setCurrentIndex(std::max(0, list->findData(data)));
}

} // namespace

HarpSoundDialog::HarpSoundDialog(
    HarpSound const& begin, QStringList const& fonts,
    std::vector<std::pair<QString, QString>> const& temperaments, QWidget* parent)
    : QDialog(parent), m_font(new QComboBox(this)), m_a4(new QDoubleSpinBox(this)),
      m_temperament(new QComboBox(this)), m_cents(new QLineEdit(this)),
      m_halo(new QSpinBox(this)), m_in(new QComboBox(this)), m_out(new QComboBox(this)),
      m_words(new QLabel(this)), m_said(begin)
{
    setWindowTitle(tr("Harp sound and MIDI"));
    m_font->setAccessibleName(tr("Sound font"));
    m_font->addItem(fonts.isEmpty() ? tr("None is installed")
                                    : tr("As usual: %1").arg(QFileInfo(fonts.front()).fileName()),
                    QString());
    for (QString const& font : fonts) m_font->addItem(QFileInfo(font).fileName(), font);
    if (!begin.font.isEmpty() && m_font->findData(begin.font) < 0)
        m_font->addItem(QFileInfo(begin.font).fileName(), begin.font);
    choose(m_font, begin.font);
    m_font->setToolTip(tr("Any General MIDI sound font (.sf2) with a harp; each of its keys is "
                          "measured and tuned"));
    m_a4->setRange(430, 450);
    m_a4->setDecimals(1);
    m_a4->setSuffix(tr(" Hz"));
    m_a4->setValue(begin.a4);
    m_a4->setKeyboardTracking(false);
    m_a4->setAccessibleName(tr("A above middle C"));
    m_temperament->setAccessibleName(tr("Temperament"));
    bool known = false;
    for (auto const& [id, name] : temperaments) {
        m_temperament->addItem(name, id);
        known = known || id == begin.temperament;
    }
    m_temperament->addItem(tr("Your own, in cents"), ownCents);
    choose(m_temperament, known ? begin.temperament : ownCents);
    m_cents->setAccessibleName(tr("Cents by note"));
    m_cents->setPlaceholderText(tr("such as E=-14,B=-12"));
    m_cents->setToolTip(tr("Cents above equal temperament, note by note"));
    if (!known) m_cents->setText(begin.temperament);
    m_cents->setVisible(!known);
    m_halo->setRange(0, 100);
    m_halo->setSingleStep(10);
    m_halo->setSuffix(tr(" %"));
    m_halo->setValue(begin.halo);
    m_halo->setKeyboardTracking(false);
    m_halo->setAccessibleName(tr("How much other strings answer"));
    m_halo->setToolTip(tr("How much the strings that nobody plucked answer"));
    m_in->setAccessibleName(tr("MIDI in"));
    m_out->setAccessibleName(tr("MIDI out"));
    m_in->setToolTip(tr("Its keys pluck strings, write notes and are listened to when you play "
                        "along"));
    m_out->setToolTip(tr("Plays what you hear: the right hand on channel 1, the left on 2, with "
                         "the timing clock"));
    setDevices({}, {});
    choose(m_in, begin.midiIn);
    choose(m_out, begin.midiOut);
    m_words->setWordWrap(true);

    auto* other = new QPushButton(tr("&Other font…"), this);
    auto* test = new QPushButton(tr("&Test note"), this);
    auto* fontRow = new QHBoxLayout;
    fontRow->addWidget(m_font, 1);
    fontRow->addWidget(other);
    auto* temperamentRow = new QHBoxLayout;
    temperamentRow->addWidget(m_temperament);
    temperamentRow->addWidget(m_cents, 1);
    auto* form = new QFormLayout;
    auto const row = [form, this](QString const& words, QLayout* fields, QWidget* buddy) {
        auto* label = new QLabel(words, this);
        label->setBuddy(buddy);
        label->setMinimumWidth(label->sizeHint().width() + 6);
        form->addRow(label, fields);
    };
    row(tr("Sound &font"), fontRow, m_font);
    form->addRow(tr("&A above middle C"), m_a4);
    row(tr("T&emperament"), temperamentRow, m_temperament);
    form->addRow(tr("Ot&her strings answer"), m_halo);
    form->addRow(tr("MIDI &in"), m_in);
    form->addRow(tr("&MIDI out"), m_out);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    buttons->addButton(test, QDialogButtonBox::ActionRole);
    // Enter ends what is typed, it does not press a button.
    for (QPushButton* button : findChildren<QPushButton*>()) button->setAutoDefault(false);
    auto* column = new QVBoxLayout(this);
    column->addLayout(form);
    column->addWidget(m_words);
    column->addWidget(buttons);
    setMinimumWidth(460);

    for (QComboBox* list : {m_font, m_in, m_out})
        connect(list, &QComboBox::currentIndexChanged, this, &HarpSoundDialog::say);
    connect(m_a4, &QDoubleSpinBox::valueChanged, this, &HarpSoundDialog::say);
    connect(m_halo, &QSpinBox::valueChanged, this, &HarpSoundDialog::say);
    connect(m_temperament, &QComboBox::currentIndexChanged, this, [this] {
        m_cents->setVisible(m_temperament->currentData() == ownCents);
        say();
    });
    connect(m_cents, &QLineEdit::editingFinished, this, &HarpSoundDialog::say);
    connect(other, &QPushButton::clicked, this, &HarpSoundDialog::otherFontClicked);
    connect(test, &QPushButton::clicked, this, &HarpSoundDialog::testNoteClicked);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

HarpSound HarpSoundDialog::chosen() const
{
    QString temperament = m_temperament->currentData().toString();
    if (temperament == ownCents)
        temperament = m_cents->text().trimmed().isEmpty()
                          ? m_temperament->itemData(0).toString()
                          : m_cents->text().remove(QLatin1Char(' '));
    return {m_font->currentData().toString(), m_a4->value(), temperament, m_halo->value(),
            m_in->currentData().toString(),   m_out->currentData().toString()};
}

void HarpSoundDialog::setDevices(QStringList const& inputs, QStringList const& outputs)
{
    QString const in = m_in->currentData().toString();
    QString const out = m_out->currentData().toString();
    QSignalBlocker const quietIn(m_in);
    QSignalBlocker const quietOut(m_out);
    m_in->clear();
    m_in->addItem(inputs.isEmpty() ? tr("The first that is plugged in")
                                   : tr("The first there is: %1").arg(inputs.front()),
                  QString());
    m_in->addItem(tr("None"), noDevice);
    m_out->clear();
    m_out->addItem(tr("None"), QString());
    for (QString const& device : inputs) addDevice(m_in, device, true);
    for (QString const& device : outputs) addDevice(m_out, device, true);
    for (QString const& device : {m_said.midiIn, in}) addDevice(m_in, device, false);
    for (QString const& device : {m_said.midiOut, out}) addDevice(m_out, device, false);
    choose(m_in, in);
    choose(m_out, out);
}

void HarpSoundDialog::tell(QString const& words) { m_words->setText(words); }

void HarpSoundDialog::addFont(QString const& file)
{
    if (m_font->findData(file) < 0) m_font->addItem(QFileInfo(file).fileName(), file);
    choose(m_font, file);
}

void HarpSoundDialog::say()
{
    HarpSound const now = chosen();
    if (now == m_said) return;
    m_said = now;
    m_words->clear();
    emit changed(now);
}

} // namespace ui
