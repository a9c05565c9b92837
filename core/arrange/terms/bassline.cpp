#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

Points bassLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    auto const& byStrings = n.before->taste->bassLine.byStrings;
    auto const strings = static_cast<std::size_t>(std::abs(after.bass - before.bass));
    Points const way = byStrings[std::min(strings, byStrings.size() - 1)];
    int const letters = (music::index(n.after->chord.lowestLetter) -
                         music::index(n.before->chord.lowestLetter) + 7) %
                        7;
    bool const byStep = letters == 1 || letters == 6;
    constexpr std::size_t fifth = 4;
    bool const walks = strings <= 1 || strings == fifth;
    return way + (byStep && !walks ? n.before->taste->bassLine.stepLeaps : 0);
}

} // namespace arrange
