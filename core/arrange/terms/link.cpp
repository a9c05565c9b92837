#include "core/arrange/terms.h"

#include <bit>
#include <cmath>

namespace arrange {

Points link(Neighbours const& n, Ringing const& ringing, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    Taste::Link const& taste = n.before->taste->link;
    std::uint64_t const shared = before.strings & after.strings;
    if (shared == 0) return taste.nothingShared;
    double sum = std::popcount(shared) == 1 ? static_cast<double>(taste.oneShared) : 0;
    if ((ringing.mask & shared) == 0) return std::lround(sum);
    for (std::size_t i = 0; i < ringing.strings.size(); ++i) {
        bool const again = (after.strings >> (ringing.strings[i] % 64) & 1U) != 0;
        double const loud = ringing.amplitudes[i] - taste.loud;
        if (again && loud > 0)
            sum += static_cast<double>(taste.pluckedWhileLoud) * loud / (1 - taste.loud);
    }
    return std::lround(sum);
}

} // namespace arrange
