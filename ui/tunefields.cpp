#include "ui/tunefields.h"

#include "core/base/words.h"
#include "core/tune/kindwords.h"

#include <QHBoxLayout>
#include <QRegularExpression>

#include <array>

namespace ui {

namespace {

constexpr int fewestFifths = -4; // A flat
constexpr int mostFifths = 7;    // C sharp, of C sharp minor and the like
constexpr std::array modes{music::Mode::Ionian, music::Mode::Aeolian,
                           music::Mode::Dorian, music::Mode::Mixolydian,
                           music::Mode::Lydian, music::Mode::Phrygian};
constexpr std::array meters{"2/4",  "3/4", "4/4", "6/8", "9/8",
                            "12/8", "3/2", "2/2", "5/4", "7/8"};
constexpr int mostPickUp = 6; // quavers

QString meterText(music::Meter meter) { return QString::fromStdString(text(meter)); }

} // namespace

QString kindWords(tune::Kind kind) { return QString::fromStdString(tune::kindShown(kind)); }

KindField::KindField(tune::Kind kind, QWidget* parent) : QComboBox(parent)
{
    for (tune::Kind each : tune::allKinds) addItem(kindWords(each), static_cast<int>(each));
    setCurrentIndex(findData(static_cast<int>(kind)));
    setMaxVisibleItems(count());
}

tune::Kind KindField::kind() const { return static_cast<tune::Kind>(currentData().toInt()); }

KeyField::KeyField(music::Key key, QWidget* parent)
    : QWidget(parent), m_tonic(new QComboBox(this)), m_mode(new QComboBox(this))
{
    for (int fifths = fewestFifths; fifths <= mostFifths; ++fifths)
        m_tonic->addItem(QString::fromStdString(shown(music::nameAtFifths(fifths))), fifths);
    for (music::Mode mode : modes) {
        m_mode->addItem(QString::fromStdString(base::said(music::modeName(mode))),
                        static_cast<int>(mode));
    }
    m_tonic->setCurrentIndex(std::max(m_tonic->findData(music::fifths(key.tonic)), 0));
    m_mode->setCurrentIndex(std::max(m_mode->findData(static_cast<int>(key.mode)), 0));
    m_tonic->setAccessibleName(tr("Home note"));
    m_mode->setAccessibleName(tr("Mode"));
    m_tonic->setMaxVisibleItems(m_tonic->count());
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_tonic);
    row->addWidget(m_mode, 1);
    setFocusProxy(m_tonic);
    connect(m_tonic, &QComboBox::currentIndexChanged, this, &KeyField::changed);
    connect(m_mode, &QComboBox::currentIndexChanged, this, &KeyField::changed);
}

music::Key KeyField::key() const
{
    return {music::nameAtFifths(m_tonic->currentData().toInt()),
            static_cast<music::Mode>(m_mode->currentData().toInt())};
}

MeterField::MeterField(music::Meter meter, QWidget* parent) : QComboBox(parent)
{
    setEditable(true);
    for (char const* each : meters) addItem(QLatin1String(each));
    setMeter(meter);
}

std::optional<music::Meter> MeterField::meter() const
{
    static QRegularExpression const two(
        QStringLiteral("^\\s*(\\d{1,2})\\s*/\\s*(1|2|4|8|16)\\s*$"));
    auto const found = two.match(currentText());
    int const beats = found.captured(1).toInt();
    if (!found.hasMatch() || beats < 1) return std::nullopt;
    return music::Meter{beats, found.captured(2).toInt(), false};
}

void MeterField::setMeter(music::Meter meter) { setCurrentText(meterText(meter)); }

PickUpField::PickUpField(std::optional<music::Length> length, QWidget* parent)
    : QComboBox(parent)
{
    addItem(tr("none", "pickup"), 0);
    addItem(tr("1 quaver"), 1);
    addItem(tr("1 crotchet"), 2);
    for (int quavers = 3; quavers <= mostPickUp; ++quavers)
        addItem(quavers % 2 == 0 ? tr("%1 crotchets").arg(quavers / 2)
                                 : tr("%1 quavers").arg(quavers),
                quavers);
    int at = 0;
    if (length) {
        music::Rational const quavers = length->wholes * music::Rational(8);
        at = quavers.denominator() == 1 ? findData(static_cast<int>(quavers.numerator())) : -1;
        if (at < 0) {
            addItem(QString::fromStdString(text(length->wholes)), -1);
            at = count() - 1;
        }
    }
    setCurrentIndex(at);
}

std::optional<music::Length> PickUpField::length() const
{
    int const quavers = currentData().toInt();
    if (quavers == 0) return std::nullopt;
    if (quavers > 0) return music::Length{music::Rational(quavers, 8)};
    QStringList const parts = currentText().split(QLatin1Char('/')); // one that stood there
    return music::Length{music::Rational(parts.value(0).toInt(), parts.value(1, "1").toInt())};
}

} // namespace ui
