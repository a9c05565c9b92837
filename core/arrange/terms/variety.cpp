#include "core/arrange/terms.h"

namespace arrange {

namespace {

constexpr Points dullSameChord = 260;
constexpr Points dull = 160;
constexpr Points restless = 110;
constexpr Points halfRest = 200; // the hand stops or starts inside a group

} // namespace

Points variety(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (before.rests() != after.rests()) return n.sameGroup ? halfRest : 0;
    if (before.rests()) return 0;
    bool const same = before.voicing.pattern == after.voicing.pattern &&
                      before.voicing.rhythm == after.voicing.rhythm;
    if (!same) return n.sameGroup ? restless : 0;
    bool const sameRoot = before.voicing.rootString == after.voicing.rootString;
    return n.sameChord && sameRoot ? dullSameChord : n.sameGroup ? 0 : dull;
}

} // namespace arrange
