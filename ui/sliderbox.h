#pragma once

#include "core/arrange/slider.h"

#include <QWidget>

#include <vector>

class QSlider;

namespace ui {

class Button;

// The sliders of the score, each with what its two ends ask for. Reports every step of a
// slider; what it does to the arrangement is decided elsewhere.
class SliderBox final : public QWidget {
    Q_OBJECT
public:
    explicit SliderBox(std::vector<arrange::Slider> sliders, QWidget* parent = nullptr);

    void setTurned(std::vector<arrange::Turned> const& turned);
    QSlider* slider(int index) const { return m_bars[index]; }
    Button* reset() const { return m_reset; }

signals:
    void turned(int index, int percent); // of the sliders as they were given
    void resetClicked();

private:
    std::vector<arrange::Slider> m_sliders;
    std::vector<QSlider*> m_bars;
    Button* m_reset;
};

} // namespace ui
