#include "core/hands/fingerpath.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <utility>

namespace hands {

namespace {

// The cheapest way so far into one shape.
struct Way {
    int cost = 0;
    std::size_t parent = 0; // among the ways of the pluck before
    Fingers fingers;
    Join join = Join::Anew;
};

struct Layer {
    std::vector<HandShape> shapes;
    std::vector<Way> ways; // one for each shape
};

// Shapes are told apart by one number, which is compared faster than they are.
std::uint64_t numberOf(HandShape const& shape)
{
    constexpr unsigned bits = 12; // strings from -1 (nowhere) to far beyond any harp
    std::uint64_t number = static_cast<std::uint64_t>(shape.played);
    for (std::optional<harp::StringIndex> const& string : shape.placed)
        number = number << bits | static_cast<std::uint64_t>(string.value_or(-1) + 1);
    return number;
}

Layer after(Layer const& before, Stroke const& pluck, Player const& player)
{
    Layer next;
    std::vector<std::uint64_t> known; // the numbers of the shapes, which are few
    MovesInto const into(pluck, player);
    std::vector<HandMove> moves;
    for (std::size_t parent = 0; parent < before.shapes.size(); ++parent) {
        into.from(before.shapes[parent], moves);
        for (HandMove const& move : moves) {
            int const cost = before.ways[parent].cost + move.cost;
            std::uint64_t const number = numberOf(move.to);
            auto const place = std::find(known.begin(), known.end(), number);
            if (place == known.end()) {
                known.push_back(number);
                next.shapes.push_back(move.to);
                next.ways.push_back({cost, parent, move.fingers, move.join});
                continue;
            }
            Way& way = next.ways[static_cast<std::size_t>(place - known.begin())];
            if (cost < way.cost) way = {cost, parent, move.fingers, move.join};
        }
    }
    return next;
}

} // namespace

FingerPath cheapestFingers(std::vector<Stroke> const& plucks, Player const& player)
{
    std::vector<Layer> layers{{{HandShape{}}, {Way{}}}};
    for (Stroke const& pluck : plucks) layers.push_back(after(layers.back(), pluck, player));

    auto const& last = layers.back().ways;
    auto const best = std::min_element(
        last.begin(), last.end(), [](Way const& a, Way const& b) { return a.cost < b.cost; });
    FingerPath path{std::vector<Fingers>(plucks.size()), std::vector<Join>(plucks.size()),
                    best->cost};
    auto way = static_cast<std::size_t>(best - last.begin());
    for (std::size_t i = plucks.size(); i > 0; --i) {
        path.fingers[i - 1] = layers[i].ways[way].fingers;
        path.joins[i - 1] = layers[i].ways[way].join;
        way = layers[i].ways[way].parent;
    }
    return path;
}

} // namespace hands
