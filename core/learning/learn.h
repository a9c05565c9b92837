#pragma once

#include "core/arrange/leaning.h"
#include "core/learning/choice.h"

#include <span>
#include <string_view>

namespace learning {

// What is learned from choices of one manner at one level.
struct Learned {
    arrange::Leaning leaning;                        // even while it is not in use
    std::array<double, arrange::termCount> factor{}; // as learned, 1 as shipped
    std::array<double, arrange::termCount> spread{}; // how unsure, given the other factors:
                                                     // the standard deviation
    int choices = 0;                                 // that it was learned from
    int heldBack = 0;   // choices that were each foretold by what the others taught
    int asShipped = 0;  // of those, foretold right by the weights of the manner
    int asLearned = 0;  // and by the learned ones
    bool inUse = false; // what is learned foretells more than the manner does
};

// Conditional logit: a shape is taken with a probability that falls with its cost (Bradley and
// Terry 1952, Luce 1959, McFadden 1974). The factors are those of the greatest posterior
// probability under a normal prior round 1, none below a fifth, and none below 1 that guards the
// hand (reach, rate, travel); how tight the prior and how sharp the
// choices are is chosen by how well choices that are held back are foretold. Where that is no
// better than with the manner's weights, these stay. `fewest`: below so many choices nothing is
// learned. Time: some milliseconds for 20 choices, a quarter of a second for 200.
inline constexpr int fewest = 5;
Learned learnedFrom(std::span<Choice const> choices);

// The choices of one manner at one level, the latest of them.
std::vector<Choice> choicesFor(std::span<Choice const> choices, std::string_view manner,
                               int level);

// What the leaning would take among the offers, an index; ties go to the first.
std::size_t best(Choice const& choice, std::array<double, arrange::termCount> const& factor);

} // namespace learning
