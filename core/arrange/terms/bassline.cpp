#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

Points bassLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    auto const& byStrings = n.before->taste->bassLine.byStrings;
    auto const strings = static_cast<std::size_t>(std::abs(after.bass - before.bass));
    return byStrings[std::min(strings, byStrings.size() - 1)];
}

} // namespace arrange
