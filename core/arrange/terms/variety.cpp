#include "core/arrange/terms.h"

#include <algorithm>

namespace arrange {

namespace {

constexpr Points dullSameChord = 140; // the same again on the same strings
constexpr Points dull = 60;          // the same shape on another root
constexpr Points dullInGroup = 0;    // ... within two bars, where it holds a phrase together
constexpr Points restless = 60;       // another pulse
constexpr Points restlessInGroup = 130;
constexpr Points otherShape = 60; // another shape inside two bars
constexpr Points dropsOut = 200; // the hand stops or starts inside a group

// The shortest step between onsets; the whole span for a single one.
double pulse(View const& view, Laid const& laid)
{
    double shortest = view.span;
    for (std::size_t i = 0; i + 1 < laid.plucks.size(); ++i) {
        double const step = laid.plucks[i + 1].at - laid.plucks[i].at;
        if (step > 0) shortest = std::min(shortest, step);
    }
    return shortest;
}

Points dullness(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (before.voicing.pattern != after.voicing.pattern) return 0;
    bool const sameRoot = before.voicing.rootString == after.voicing.rootString;
    Points const full = sameRoot && n.sameChord ? dullSameChord
                        : n.sameGroup           ? dullInGroup
                                                : dull;
    return before.voicing.rhythm == after.voicing.rhythm ? full : full / 2;
}

Points restlessness(Neighbours const& n, Laid const& before, Laid const& after)
{
    Points const shape =
        n.sameGroup && before.voicing.pattern != after.voicing.pattern ? otherShape : 0;
    if (pulse(*n.before, before) == pulse(*n.after, after)) return shape;
    return shape + (n.sameGroup ? restlessInGroup : restless);
}

} // namespace

Points variety(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (before.rests() != after.rests()) return n.sameGroup ? dropsOut : 0;
    if (before.rests()) return 0;
    return dullness(n, before, after) + restlessness(n, before, after);
}

} // namespace arrange
