#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

namespace arrange {

Points passes(View const& view, Laid const& laid)
{
    if (view.turn.of == 1 || view.close == Close::Tune) return 0;
    Taste::Passes const& taste = view.taste->passes;
    // From the first pass, with fewer notes than usual, in even steps to the last.
    double const share = static_cast<double>(view.turn.number - 1) / (view.turn.of - 1);
    double const more = -taste.fewerAtFirst + share * (taste.moreAtLast + taste.fewerAtFirst);
    int const usual = notesWithoutHurry(view);
    auto const wanted = std::max<Points>(1, std::lround(usual + more));
    auto const notes = static_cast<Points>(laid.plucks.size());
    if (notes > wanted) return taste.noteTooMany * (notes - wanted);
    return taste.noteTooFew * (wanted - notes);
}

} // namespace arrange
