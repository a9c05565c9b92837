#pragma once

#include "core/arrange/arrangement.h"
#include "core/pattern/pattern.h"

#include <array>
#include <span>
#include <string>
#include <vector>

namespace hands {

// How demands are measured that the levels' limits say nothing of (shared/difficulty.json).
struct DifficultyScale {
    std::array<double, 5> reachStrings{6, 8, 9, 10, 12}; // widest left-hand shape, by level
    double crossingLevel = 3;  // a bar in which the right hand crosses asks for this level
    double hardestPart = 0.6;  // how much the hardest of hands and levers counts in a bar; the
                               // rest goes to the mean of both hands
    double hardestBars = 0.25; // the share of bars that the whole is the mean of
    friend bool operator==(DifficultyScale const&, DifficultyScale const&) = default;
};

enum class Demand {
    LeftRate,
    RightRate,
    LeftSameString,
    RightSameString,
    Reach,
    Leap,
    Pattern,
    Crossing,
    Flip,
};

// One thing that is asked of the player, and which level's limit it is equal to: 2.5 lies half
// way from the limit of level 2 to that of level 3.
struct Asked {
    Demand demand = Demand::LeftRate;
    double level = 0;
    std::string words; // "left hand: 3.3 notes a second"
    friend bool operator==(Asked const&, Asked const&) = default;
};

struct BarDifficulty {
    double level = 0;
    std::vector<Asked> reasons; // the hardest first
    friend bool operator==(BarDifficulty const&, BarDifficulty const&) = default;
};

struct Difficulty {
    double level = 0;                // of the whole: the mean of its hardest bars
    base::List<tune::BarIndex, BarDifficulty> bars; // over all its passes
    std::vector<Asked> reasons;      // the hardest of each demand anywhere, the hardest first
    friend bool operator==(Difficulty const&, Difficulty const&) = default;
};

// Measures a finished arrangement against the limits of the levels, from 1 up.
Difficulty difficultyOf(arrange::Arrangement const& arrangement,
                        std::span<harp::Level const> levels, pattern::PatternBook const& book,
                        DifficultyScale const& scale);

} // namespace hands
