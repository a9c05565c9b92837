#include "core/arrange/leaning.h"

#include <algorithm>
#include <cstdint>

namespace arrange {

Weights leant(Weights weights, Leaning const& leaning)
{
    for (std::size_t t = 0; t < termCount; ++t)
        weights.byTerm[t] = static_cast<int>(std::int64_t{weights.byTerm[t]} *
                                             std::max(0, leaning.byTerm[t]) / Leaning::even);
    return weights;
}

} // namespace arrange
