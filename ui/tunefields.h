#pragma once

#include "core/tune/kind.h"

#include <QComboBox>

#include <optional>

// Fields that dialogs about a whole tune share.
namespace ui {

// "slip jig": the kind as the tune says it.
QString kindWords(tune::Kind kind);

class KindField final : public QComboBox {
public:
    KindField(tune::Kind kind, QWidget* parent);
    tune::Kind kind() const;
};

// A home note and a mode, side by side.
class KeyField final : public QWidget {
    Q_OBJECT
public:
    KeyField(music::Key key, QWidget* parent);
    music::Key key() const;

signals:
    void changed();

private:
    QComboBox* m_tonic;
    QComboBox* m_mode;
};

// The time signatures that tunes have; another one can be typed.
class MeterField final : public QComboBox {
public:
    MeterField(music::Meter meter, QWidget* parent);
    std::optional<music::Meter> meter() const; // none: what is typed is none
    void setMeter(music::Meter meter);
};

// "none", "1 quaver" ... for a bar of this meter.
class PickUpField final : public QComboBox {
public:
    PickUpField(std::optional<music::Length> length, QWidget* parent);
    std::optional<music::Length> length() const;
};

} // namespace ui
