#pragma once

#include "core/tune/edit/whole.h"
#include "ui/tunefields.h"

#include <QDialog>

#include <optional>

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace ui {

// What a new tune begins with. The time signature follows the kind until another is chosen.
class NewTuneDialog final : public QDialog {
    Q_OBJECT
public:
    explicit NewTuneDialog(QWidget* parent = nullptr);

    tune::NewTune wish() const;
    std::optional<tune::Tempo> tempo() const;  // none: as is usual for its kind
    bool playsIn() const { return m_playsIn; } // it is to be played, not typed
    QString said() const; // why it cannot begin; empty: it can

private:
    void check();

    QLineEdit* m_title;
    KindField* m_kind;
    KeyField* m_key;
    MeterField* m_meter;
    QSpinBox* m_bars;
    PickUpField* m_pickUp;
    QLabel* m_said;
    QSpinBox* m_tempo;
    QPushButton* m_begin;
    QPushButton* m_play;
    bool m_playsIn = false;
    bool m_meterChosen = false;
};

} // namespace ui
