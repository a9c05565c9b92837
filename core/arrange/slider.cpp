#include "core/arrange/slider.h"

#include "core/arrange/tastefigures.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace arrange {

namespace {

constexpr std::int64_t wholeFactor = std::int64_t{sliderMiddle} * 1000;

std::int64_t factorOf(int permille, int percent)
{
    return wholeFactor + std::int64_t{permille} * (percent - sliderMiddle);
}

template<typename Number>
void scale(Number& number, double factor)
{
    if constexpr (std::is_arithmetic_v<Number>) {
        if constexpr (std::is_floating_point_v<Number>)
            number *= factor;
        else
            number = static_cast<Number>(std::lround(static_cast<double>(number) * factor));
    } else {
        for (auto& each : number) scale(each, factor);
    }
}

} // namespace

Weights turned(Weights weights, std::vector<Turned> const& sliders)
{
    for (Turned const& t : sliders) {
        for (Pull const& pull : t.slider.pulls) {
            int& weight = weights.byTerm[static_cast<std::size_t>(pull.term)];
            weight = static_cast<int>(std::max(
                std::int64_t{0}, weight * factorOf(pull.permille, t.percent) / wholeFactor));
        }
        for (FigurePull const& pull : t.slider.figures) {
            double const factor = static_cast<double>(std::max(
                                      std::int64_t{0}, factorOf(pull.permille, t.percent))) /
                                  static_cast<double>(wholeFactor);
            eachFigure(weights.taste, [&](std::string_view group, std::string_view name,
                                          auto& figure) {
                if (group == pull.group && name == pull.name) scale(figure, factor);
            });
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
