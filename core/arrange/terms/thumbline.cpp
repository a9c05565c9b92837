#include "core/arrange/terms.h"

#include <algorithm>
#include <cstdlib>

namespace arrange {

namespace {

bool plucks(Laid const& laid, harp::StringIndex string)
{
    return string >= 0 && (laid.strings >> (string % 64) & 1U) != 0;
}

// The last note of a broken shape leads by step into a string of the next one.
Points leadIn(Taste::ThumbLine const& taste, Laid const& before, Laid const& after)
{
    bool const block = before.plucks.front().at == before.plucks.back().at;
    if (block) return 0;
    harp::StringIndex const last = before.plucks.back().string;
    if (plucks(after, last - 1) || plucks(after, last + 1)) return 0;
    return plucks(after, last) ? taste.leadsBySame : taste.leadsNowhere;
}

bool fallsWithin(Laid const& laid, std::size_t note)
{
    for (std::size_t later = note + 1; later < laid.plucks.size(); ++later)
        if (laid.plucks[later].string == laid.plucks[note].string - 1) return true;
    return false;
}

// A seventh over the root that is no tone of the chord wants to fall to the next string, there
// or in what follows, or to stay where the next chord owns it [music-5].
Points sevenths(Neighbours const& n, Laid const& before, Laid const& after)
{
    View const& view = *n.before;
    if (view.chord.slash) return 0;
    Taste::ThumbLine const& taste = view.taste->thumbLine;
    for (std::size_t i = 0; i < before.plucks.size(); ++i) {
        Pluck const& p = before.plucks[i];
        bool const seventh = p.degree >= 7 && p.degree % 7 == 0;
        bool const isThird = view.chord.third && p.midi % 12 == *view.chord.third;
        if (!seventh || isThird || fallsWithin(before, i)) continue;
        bool const owned = n.after->chord.tone[static_cast<std::size_t>(p.midi % 12)];
        bool const leads =
            plucks(after, p.string - 1) || (owned && plucks(after, p.string));
        return leads ? taste.seventhLeads : taste.seventhHangs;
    }
    return 0;
}

// A ninth on top goes on to the tenth or back to the octave, or stays where the next chord owns
// it [music-5].
Points ninths(Neighbours const& n, Laid const& before, Laid const& after)
{
    View const& view = *n.before;
    Pluck const& last = before.plucks.back();
    if (last.degree != 9 || view.chord.tone[static_cast<std::size_t>(last.midi % 12)]) return 0;
    bool const owned = n.after->chord.tone[static_cast<std::size_t>(last.midi % 12)];
    bool const leads = plucks(after, last.string - 1) || plucks(after, last.string + 1) ||
                       (owned && plucks(after, last.string));
    return leads ? 0 : view.taste->thumbLine.ninthHangs;
}

} // namespace

Points thumbLine(Neighbours const& n, Laid const& before, Laid const& after)
{
    if (!n.adjacent || before.rests() || after.rests()) return 0;
    Taste::ThumbLine const& taste = n.before->taste->thumbLine;
    int const beyond = std::abs(after.top - before.top) - taste.freeStrings;
    return taste.stringBeyond * std::max(0, beyond) + leadIn(taste, before, after) +
           sevenths(n, before, after) + ninths(n, before, after);
}

} // namespace arrange
