#include "core/arrange/slider.h"

#include <algorithm>

namespace arrange {

Weights turned(Weights weights, std::vector<Turned> const& sliders)
{
    constexpr std::int64_t whole = std::int64_t{sliderMiddle} * 1000;
    for (Turned const& t : sliders) {
        for (Pull const& pull : t.slider.pulls) {
            std::int64_t const factor =
                whole + std::int64_t{pull.permille} * (t.percent - sliderMiddle);
            int& weight = weights.byTerm[static_cast<std::size_t>(pull.term)];
            weight = static_cast<int>(std::max(std::int64_t{0}, weight * factor / whole));
        }
    }
    return weights;
}

std::vector<Turned> withSlider(std::vector<Turned> sliders, Slider const& slider, int percent)
{
    auto const known = std::find_if(sliders.begin(), sliders.end(),
                                    [&](Turned const& t) { return t.slider.id == slider.id; });
    int const set = std::clamp(percent, 0, sliderMost);
    if (known != sliders.end())
        known->percent = set;
    else
        sliders.push_back({slider, set});
    std::erase_if(sliders, [](Turned const& t) { return t.percent == sliderMiddle; });
    return sliders;
}

int percentOf(std::vector<Turned> const& sliders, std::string const& id)
{
    for (Turned const& t : sliders)
        if (t.slider.id == id) return t.percent;
    return sliderMiddle;
}

} // namespace arrange
