#include "core/arrange/terms.h"

#include <algorithm>

namespace arrange {

namespace {

// Shapes of one family begin alike and differ at their ends: 1-5-8 and 1-5-8-7.
bool sameFamily(Laid const& before, Laid const& after)
{
    constexpr std::size_t alike = 2;
    if (before.plucks.size() < alike || after.plucks.size() < alike) return false;
    for (std::size_t i = 0; i < alike; ++i)
        if (before.plucks[i].degree != after.plucks[i].degree ||
            before.plucks[i].at != after.plucks[i].at)
            return false;
    return true;
}

} // namespace

Points variety(Neighbours const& n, Laid const& before, Laid const& after)
{
    Taste::Variety const& taste = n.before->taste->variety;
    auto const seam = static_cast<std::size_t>(n.seam);
    bool const upbeat = n.before->upbeat || n.after->upbeat;
    if (before.rests() != after.rests()) return upbeat ? 0 : taste.dropsOut[seam];
    if (before.rests()) return 0;
    bool const samePulse =
        before.shortestStep == after.shortestStep || n.before->span != n.after->span;
    bool const sameRhythm =
        n.before->span != n.after->span || before.voicing.rhythm == after.voicing.rhythm;
    Points const pulse = (samePulse ? 0 : taste.otherPulse[seam]) +
                         (sameRhythm ? 0 : taste.otherRhythm[seam]);
    if (before.voicing.pattern == after.voicing.pattern) {
        bool const again = n.sameChord && before.bass == after.bass &&
                           before.voicing.rhythm == after.voicing.rhythm;
        return taste.keeps[seam] + (again ? taste.sameAgain : 0) + pulse;
    }
    return (sameFamily(before, after) ? taste.varies : taste.changes)[seam] + pulse;
}

} // namespace arrange
