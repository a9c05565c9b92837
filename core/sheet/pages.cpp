#include "core/sheet/pages.h"

#include "core/sheet/division.h"

#include <cstddef>

namespace sheet {

namespace {

constexpr double newPage = 200;        // fewest pages come first
constexpr double breakInsidePart = 10; // then no page ends inside a part
constexpr double hardTurn = 15;        // and no turn while both hands play
constexpr double loneSystem = 120;     // no last page of one system
constexpr double tooTall = 1e6;        // a system that does not fit alone
constexpr double emptiness = 45;       // unless it leaves more than half a page white
constexpr double lastEmptiness = 2;    // the last page may stay short

// A place between systems, with an odd or even number of pages before it.
struct Node;
using NodeIndex = base::Index<Node>;
NodeIndex node(std::size_t place, int odd)
{
    return NodeIndex(2 * static_cast<int>(place) + odd);
}

// What speaks against a page that ends before this system and is not the last.
double costOfEnd(std::vector<SystemHeight> const& systems, std::size_t end, bool turns)
{
    double cost = systems[end].beginsPart ? 0 : breakInsidePart;
    if (turns && !systems[end - 1].easyTurn) cost += hardTurn;
    return cost;
}

} // namespace

std::vector<int> pageStarts(std::vector<SystemHeight> const& systems, PageRoom const& room)
{
    std::size_t const count = systems.size();
    NodeIndex const finish = node(count, 1) + 1;
    Division<NodeIndex> division(finish);
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
            double cost = newPage + (last ? lastEmptiness : emptiness) * white * white;
            if (!fits) cost += tooTall;
            if (last && first > 0 && end == first + 1) cost += loneSystem;
            for (int odd : {0, 1}) {
                // A page of an even number ends with a turn.
                double const ended = last ? 0 : costOfEnd(systems, end, odd == 1);
                division.offer(node(first, odd), node(end, 1 - odd),
                               division.cost(node(first, odd)) + cost + ended);
            }
        }
    }
    for (int odd : {0, 1})
        division.offer(node(count, odd), finish, division.cost(node(count, odd)));
    std::vector<NodeIndex> const nodes = division.starts(); // the last is where all ends
    std::vector<int> starts;
    for (std::size_t i = 0; i + 1 < nodes.size(); ++i) starts.push_back(nodes[i] / 2);
    return starts;
}

int hardTurns(std::vector<SystemHeight> const& systems, std::vector<int> const& pages)
{
    int count = 0;
    for (std::size_t p = 2; p < pages.size(); p += 2)
        if (!systems[static_cast<std::size_t>(pages[p]) - 1].easyTurn) ++count;
    return count;
}

} // namespace sheet
