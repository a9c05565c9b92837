#pragma once

#include "core/tune/tune.h"
#include "ui/tunefields.h"

#include <QDialog>

class QCheckBox;
class QLabel;
class QPushButton;
class QSpinBox;

namespace ui {

// Key, time, kind, pick-up and tempo of the tune as it is written.
class TuneDialog final : public QDialog {
    Q_OBJECT
public:
    explicit TuneDialog(tune::Tune const& tune, QWidget* parent = nullptr);

    // The tune as it is wished.
    tune::Tune wished() const;
    // How all its notes move to another key; nowhere where only the signature changes.
    music::Interval moved() const;

private:
    void check();
    bool rebars() const;

    tune::Tune m_tune;
    KindField* m_kind;
    KeyField* m_key;
    QCheckBox* m_transposes;
    MeterField* m_meter;
    QCheckBox* m_rebars;
    PickUpField* m_pickUp;
    QSpinBox* m_tempo;
    QLabel* m_said;
    QPushButton* m_change;
};

} // namespace ui
