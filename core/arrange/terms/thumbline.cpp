#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

namespace {

bool plucks(Laid const& laid, int string)
{
    return string >= 0 && (laid.strings >> (string % 64) & 1U) != 0;
}

// The last note of a broken shape leads by step into a string of the next one.
Points leadIn(Taste::ThumbLine const& taste, Laid const& before, Laid const& after)
{
    bool const block = before.plucks.front().at == before.plucks.back().at;
    if (block) return 0;
    int const last = before.plucks.back().string;
    if (plucks(after, last - 1) || plucks(after, last + 1)) return 0;
    return plucks(after, last) ? taste.leadsBySame : taste.leadsNowhere;
}

} // namespace

Points thumbLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    Taste::ThumbLine const& taste = n.before->taste->thumbLine;
    int const beyond = std::abs(after.top - before.top) - taste.freeStrings;
    return taste.stringBeyond * std::max(0, beyond) + leadIn(taste, before, after);
}

} // namespace arrange
