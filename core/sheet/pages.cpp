#include "core/sheet/pages.h"

#include "core/sheet/division.h"

#include <cstddef>

namespace sheet {

namespace {

constexpr double newPage = 200;        // fewest pages come first
constexpr double breakInsidePart = 10; // then no turn inside a part
constexpr double hardTurn = 5;         // no turn while both hands play
constexpr double loneSystem = 120;     // no last page of one system
constexpr double tooTall = 1e6;        // a system that does not fit alone
constexpr double emptiness = 45;       // unless it leaves more than half a page white
constexpr double lastEmptiness = 2;    // the last page may stay short

} // namespace

std::vector<int> pageStarts(std::vector<SystemHeight> const& systems, PageRoom const& room)
{
    std::size_t const count = systems.size();
    Division division(count);
    for (std::size_t first = 0; first < count; ++first) {
        double used = 0;
        for (std::size_t end = first + 1; end <= count; ++end) {
            used += systems[end - 1].height + (end > first + 1 ? room.leastGap : 0);
            bool const last = end == count;
            double const available =
                (first == 0 ? room.firstPage : room.page) - (last ? room.foot : 0);
            bool const fits = used <= available;
            if (!fits && end > first + 1 && !last) break;
            if (!fits && end > first + 1) continue;
            double const white = fits ? (available - used) / available : 0;
            double cost = division.cost(first) + newPage +
                          (last ? lastEmptiness : emptiness) * white * white;
            if (!fits) cost += tooTall;
            if (!last && !systems[end].beginsPart) cost += breakInsidePart;
            if (!last && !systems[end - 1].easyTurn) cost += hardTurn;
            if (last && first > 0 && end == first + 1) cost += loneSystem;
            division.offer(first, end, cost);
        }
    }
    return division.starts();
}

} // namespace sheet
