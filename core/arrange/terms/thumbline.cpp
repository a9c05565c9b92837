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

// A seventh over the root that is no tone of the chord wants to fall to the next string, there
// or in what follows, or to stay where the next shape has it [music-5].
bool seventhHangs(View const& view, Laid const& before, Laid const& after)
{
    for (std::size_t i = 0; i < before.plucks.size(); ++i) {
        Pluck const& p = before.plucks[i];
        bool const seventh = p.degree >= 7 && p.degree % 7 == 0;
        bool const isThird = view.chord.third && p.midi % 12 == *view.chord.third;
        if (!seventh || isThird || view.chord.slash) continue;
        bool falls = plucks(after, p.string - 1);
        for (std::size_t j = i + 1; j < before.plucks.size() && !falls; ++j)
            falls = before.plucks[j].string == p.string - 1;
        if (!falls) return true;
    }
    return false;
}

} // namespace

Points thumbLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    Taste::ThumbLine const& taste = n.before->taste->thumbLine;
    int const beyond = std::abs(after.top - before.top) - taste.freeStrings;
    return taste.stringBeyond * std::max(0, beyond) + leadIn(taste, before, after) +
           (seventhHangs(*n.before, before, after) ? taste.seventhHangs : 0);
}

} // namespace arrange
