#pragma once

#include "core/files/tables/tables.h"
#include "core/harp/model.h"

#include <QDialog>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace ui {

class StringBank;

// A harp as its owner describes it: its picture, on which a click puts a lever on a string or
// takes it off, and fields for all that a model holds. Edits a value and hands it back.
class HarpEditor final : public QDialog {
    Q_OBJECT
public:
    // `tables` for the names of tunings.
    HarpEditor(harp::HarpModel model, files::Tables const& tables, QWidget* parent = nullptr);

    harp::HarpModel const& model() const { return m_model; }
    // Whether the harp is to be kept among the user's own, not only used.
    bool toBeKept() const { return m_toBeKept; }

private:
    void edit(harp::HarpModel model);
    void toggleLever(harp::StringIndex string);
    void fill();
    QWidget* fields();
    QWidget* leverButtons();

    harp::HarpModel m_model;
    std::vector<files::NamedTuning> m_tunings;
    bool m_toBeKept = false;
    bool m_showing = false; // fields are being filled, their signals are no edits
    StringBank* m_bank;
    QLineEdit* m_name;
    QSpinBox* m_strings;
    QComboBox* m_lowest;
    QComboBox* m_tuning;
    QDoubleSpinBox* m_lowGap;
    QDoubleSpinBox* m_highGap;
    QSpinBox* m_wound;
    QComboBox* m_naming;
    QLabel* m_range;
    QLabel* m_wrong;
    QPushButton* m_keep;
    QPushButton* m_use;
};

} // namespace ui
