#include "ui/sliderbox.h"

#include "ui/button.h"
#include "ui/theme.h"

#include <QGridLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>

namespace ui {

namespace {

constexpr int step = 10; // percent
constexpr int barWidth = 150;

} // namespace

SliderBox::SliderBox(std::vector<arrange::Slider> sliders, QWidget* parent)
    : QWidget(parent), m_sliders(std::move(sliders)),
      m_reset(new Button(tr("All to the middle"), this))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(14, 8, 14, 10);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(3);
    auto const words = [this](std::string const& text, bool strong) {
        auto* label = new QLabel(QString::fromStdString(text), this);
        label->setFont(strong ? scaledFont(*this, 1, QFont::DemiBold)
                              : scaledFont(*this, 0.92));
        return label;
    };
    int row = 0;
    for (arrange::Slider const& slider : m_sliders) {
        auto* bar = new QSlider(Qt::Horizontal, this);
        bar->setRange(0, arrange::sliderMost);
        bar->setSingleStep(step);
        bar->setPageStep(5 * step);
        bar->setValue(arrange::sliderMiddle);
        bar->setFixedWidth(barWidth);
        bar->setAccessibleName(QString::fromStdString(slider.name));
        bar->setToolTip(tr("%1: from “%2” to “%3”")
                            .arg(QString::fromStdString(slider.name),
                                 QString::fromStdString(slider.less),
                                 QString::fromStdString(slider.more)));
        grid->addWidget(words(slider.name, true), row, 0);
        grid->addWidget(words(slider.less, false), row, 1, Qt::AlignRight | Qt::AlignVCenter);
        grid->addWidget(bar, row, 2);
        grid->addWidget(words(slider.more, false), row, 3);
        connect(bar, &QSlider::valueChanged, this,
                [this, row](int percent) { emit turned(row, percent); });
        m_bars.push_back(bar);
        ++row;
    }
    grid->addWidget(m_reset, row, 2, 1, 2, Qt::AlignLeft);
    connect(m_reset, &Button::clicked, this, &SliderBox::resetClicked);
    setTurned({});
}

void SliderBox::setTurned(std::vector<arrange::Turned> const& turned)
{
    for (std::size_t i = 0; i < m_bars.size(); ++i) {
        QSignalBlocker const quiet(m_bars[i]);
        m_bars[i]->setValue(arrange::percentOf(turned, m_sliders[i].id));
    }
    m_reset->setEnabled(!turned.empty());
}

} // namespace ui
