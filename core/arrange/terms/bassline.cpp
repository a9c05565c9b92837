#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

namespace {

// The chord stands on its fifth although no bass is named.
bool isSixFour(View const& view, Laid const& laid)
{
    if (view.chord.slash || !view.chord.fifth) return false;
    int const lowest = std::ranges::min_element(laid.plucks, {}, &Pluck::midi)->midi % 12;
    return lowest == *view.chord.fifth && lowest != view.chord.lowest;
}

} // namespace

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
    bool const sixFour = isSixFour(*n.before, before) || isSixFour(*n.after, after);
    Taste::BassLine const& taste = n.before->taste->bassLine;
    return way + (byStep && !walks ? taste.stepLeaps : 0) +
           (sixFour && strings > 1 ? taste.sixFourLeaps : 0);
}

} // namespace arrange
