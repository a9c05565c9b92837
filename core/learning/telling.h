#pragma once

#include "core/learning/learn.h"

#include <string>

namespace learning {

// What is learned in sentences, the surest first: which shapes are taken where others were
// proposed, how often, and what the arranger cares about more or less than her manner does.
// Empty where nothing stands out.
std::vector<std::string> tasteSentences(std::span<Choice const> choices,
                                        Learned const& learned);

// "Going by your other choices, Sallow would have got 19 of 24 right; by the manner as it is, 15.";
// or why nothing is in use.
std::string tasteStanding(Learned const& learned);

} // namespace learning
