#include "core/arrange/terms.h"

#include <algorithm>
#include <cmath>

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
    auto const level = static_cast<std::size_t>(n.before->level->number - 1);
    bool const upbeat = n.before->upbeat || n.after->upbeat;
    if (before.rests() != after.rests()) return upbeat ? 0 : taste.dropsOut[seam];
    if (before.rests()) return 0;
    bool const sameSpan = n.before->span == n.after->span;
    bool const samePulse = before.shortestStep == after.shortestStep || !sameSpan;
    bool const sameRhythm = !sameSpan || before.voicing.rhythm == after.voicing.rhythm;
    bool const sameShape = before.voicing.pattern == after.voicing.pattern;
    Points changed = (samePulse ? 0 : taste.otherPulse[seam]) +
                     (sameRhythm ? 0 : taste.otherRhythm[seam]);
    // Over a named bass the shape is another by necessity.
    bool const asBuilt = n.before->chord.slash == n.after->chord.slash;
    if (n.sameBar && sameSpan && asBuilt && !(sameShape && sameRhythm)) changed += taste.inBar;
    if (!sameShape) changed += (sameFamily(before, after) ? taste.varies : taste.changes)[seam];
    Points kept = 0;
    if (sameShape) {
        bool const again = n.sameChord && before.bass == after.bass &&
                           before.voicing.rhythm == after.voicing.rhythm;
        bool const inside = n.seam < Seam::Phrases && !n.sameBar && sameSpan;
        kept = taste.keeps[seam] + (again    ? taste.sameAgain[level]
                                    : inside ? taste.keepsInside[level]
                                             : 0);
    }
    return std::lround(taste.change[level] * static_cast<double>(changed) +
                       taste.renewal[level] * static_cast<double>(kept));
}

} // namespace arrange
