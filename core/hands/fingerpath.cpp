#include "core/hands/fingerpath.h"

#include <algorithm>
#include <map>
#include <utility>

namespace hands {

namespace {

// The cheapest way so far into one shape.
struct Way {
    int cost = 0;
    std::size_t parent = 0; // among the ways of the pluck before
    std::vector<int> fingers;
    Join join = Join::Anew;
};

struct Layer {
    std::vector<HandShape> shapes;
    std::vector<Way> ways; // one for each shape
};

Layer after(Layer const& before, Pluck const& pluck, Player const& player)
{
    Layer next;
    std::map<HandShape, std::size_t> known;
    for (std::size_t parent = 0; parent < before.shapes.size(); ++parent)
        for (HandMove& move : movesTo(before.shapes[parent], pluck, player)) {
            int const cost = before.ways[parent].cost + move.cost;
            auto const [place, isNew] = known.try_emplace(move.to, next.shapes.size());
            if (isNew) {
                next.shapes.push_back(move.to);
                next.ways.push_back({cost, parent, std::move(move.fingers), move.join});
            } else if (cost < next.ways[place->second].cost) {
                next.ways[place->second] = {cost, parent, std::move(move.fingers), move.join};
            }
        }
    return next;
}

} // namespace

FingerPath cheapestFingers(std::vector<Pluck> const& plucks, Player const& player)
{
    std::vector<Layer> layers{{{HandShape{}}, {Way{}}}};
    for (Pluck const& pluck : plucks) layers.push_back(after(layers.back(), pluck, player));

    auto const& last = layers.back().ways;
    auto const best = std::min_element(
        last.begin(), last.end(), [](Way const& a, Way const& b) { return a.cost < b.cost; });
    FingerPath path{std::vector<std::vector<int>>(plucks.size()),
                    std::vector<Join>(plucks.size()), best->cost};
    auto way = static_cast<std::size_t>(best - last.begin());
    for (std::size_t i = plucks.size(); i > 0; --i) {
        path.fingers[i - 1] = layers[i].ways[way].fingers;
        path.joins[i - 1] = layers[i].ways[way].join;
        way = layers[i].ways[way].parent;
    }
    return path;
}

} // namespace hands
