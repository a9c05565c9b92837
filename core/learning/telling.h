#pragma once

#include "core/learning/learn.h"

#include <string>

namespace learning {

// What is learned in sentences, the surest first: which shapes are taken where others were
// proposed, how often, and what the arranger cares about more or less than her manner does.
// Empty where nothing stands out.
std::vector<std::string> tasteSentences(std::span<Choice const> choices,
                                        Learned const& learned);

// "Of 24 choices held back, what was learned foretells 19, the manner as it comes 15."; or why
// nothing is in use.
std::string tasteStanding(Learned const& learned);

} // namespace learning
