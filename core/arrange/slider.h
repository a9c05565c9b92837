#pragma once

#include "core/arrange/score.h"

#include <string>
#include <vector>

namespace arrange {

// How a slider pulls at one thing of the score, in thousandths: with 1000 it goes with the
// slider (0 at 0 percent, twice as much at 200), with -1000 against it.
struct Pull {
    Term term = Term::Reach; // its weight
    int permille = 0;
    friend bool operator==(Pull const&, Pull const&) = default;
};

// How a slider pulls at a figure of the taste, in thousandths as for weights. All numbers of a
// figure that has several go together. A figure below 0 goes by the amount of it: what is liked
// is liked more.
struct FigurePull {
    std::string group; // "shape_fit", as in shared/taste.json
    std::string name;  // "missing_richness"
    int permille = 0;
    friend bool operator==(FigurePull const&, FigurePull const&) = default;
};

// What one end of a slider asks for, by what it moves: data of shared/sliders.json.
struct Slider {
    std::string id;   // "ease"
    std::string name; // for the arranger
    std::string less; // what stands at its low end, in plain words
    std::string more;
    std::vector<Pull> pulls;
    std::vector<FigurePull> figures{};
    friend bool operator==(Slider const&, Slider const&) = default;
};

inline constexpr int sliderMiddle = 100; // percent: as the style has it
inline constexpr int sliderMost = 200;

// A slider that the arranger has turned.
struct Turned {
    Slider slider;
    int percent = sliderMiddle; // 0 to sliderMost
    friend bool operator==(Turned const&, Turned const&) = default;
};

// The weights of a style with sliders turned: each weight and figure times what every slider makes
// of it.
// Weights do not fall below 0. With all sliders in the middle the weights stay as they are.
Weights turned(Weights weights, std::vector<Turned> const& sliders);

// The list with one slider set; a slider in the middle is none, and stands in no list.
std::vector<Turned> withSlider(std::vector<Turned> sliders, Slider const& slider, int percent);

// Where a slider stands.
int percentOf(std::vector<Turned> const& sliders, std::string const& id);

} // namespace arrange
