#pragma once

#include "ui/practice.h"

#include <QFrame>

class QCheckBox;
class QComboBox;
class QLabel;
class QSpinBox;

namespace ui {

// The small card over the controls with what practising asks for now and then: a bar before, a
// click, faster by itself, swing or lilt, and how far rolls are spread.
class PracticeCard final : public QFrame {
    Q_OBJECT
public:
    explicit PracticeCard(QWidget* parent = nullptr);

    Practice practice() const;
    void setPractice(Practice const& practice); // says so once
    // What the lilt of the open tune is called; empty: it has none.
    void setLilt(QString const& name, QString const& help, int percent);
    // What the open tune begins with.
    void setSlowing(int percent);
    void openAbove(QWidget const& button);

public slots:
    void toggleBarBefore();
    void toggleClicks();
    void toggleFaster();
    void toggleListens();

signals:
    void changed();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void fit();

    QCheckBox* m_barBefore;
    QCheckBox* m_clicks;
    QCheckBox* m_faster;
    QSpinBox* m_from;
    QSpinBox* m_to;
    QSpinBox* m_by;
    QSpinBox* m_every;
    QWidget* m_steps;
    QLabel* m_liltName;
    QSpinBox* m_lilt;
    QSpinBox* m_slowing;
    QComboBox* m_roll;
    QCheckBox* m_waits;
    QCheckBox* m_tuneAlone;
    QSpinBox* m_balance;
    QCheckBox* m_listens;
    QCheckBox* m_rightString;
};

} // namespace ui
