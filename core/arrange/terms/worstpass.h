#pragma once

#include "core/arrange/view.h"

#include <algorithm>

namespace arrange {

// The most that any time through costs, at least nothing.
template<typename Cost>
auto worstPass(View const& view, Cost cost) -> decltype(cost(view.passes.front()))
{
    decltype(cost(view.passes.front())) worst{};
    for (PassView const& pass : view.passes) worst = std::max(worst, cost(pass));
    return worst;
}

} // namespace arrange
