#pragma once

#include "core/arrange/score.h"

namespace arrange {

// What an arranger cares about more or less than the manner does: factors of the weights, in
// thousandths; 1000 leaves a weight as it is.
struct Leaning {
    static constexpr int even = 1000;
    std::array<int, termCount> byTerm;

    Leaning() { byTerm.fill(even); }
    bool isEven() const { return *this == Leaning(); }
    friend bool operator==(Leaning const&, Leaning const&) = default;
};

// The weights with a leaning.
Weights leant(Weights weights, Leaning const& leaning);

} // namespace arrange
