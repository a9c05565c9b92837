#include "core/harmony/follownotes.h"

#include "core/tune/chordorigin.h"

#include <algorithm>

namespace harmony {

namespace {

using tune::Bar;
using tune::ChordOrigin;
using tune::Tune;

bool hasChordOf(Tune const& tune, ChordOrigin origin)
{
    return std::ranges::any_of(tune.bars, [origin](Bar const& bar) {
        return std::ranges::any_of(bar.chords, [origin](tune::ChordMark const& mark) {
            return originOf(mark) == origin;
        });
    });
}

bool sameChords(Tune const& a, Tune const& b)
{
    return std::ranges::equal(a.bars, b.bars, {}, &Bar::chords, &Bar::chords);
}

} // namespace

bool sameNotes(Tune const& a, Tune const& b)
{
    return std::ranges::equal(a.bars, b.bars, {}, &Bar::notes, &Bar::notes);
}

std::optional<Tune> chordsAfterNotes(Learned const& learned, Tune const& before,
                                     Tune const& after)
{
    if (!hasNotes(after)) return std::nullopt;
    if (!hasChords(after)) return withFoundChords(learned, after);
    if (hasChordOf(after, ChordOrigin::Written) || !hasChordOf(after, ChordOrigin::Found) ||
        sameNotes(before, after))
        return std::nullopt;
    for (Way const way : allWays) {
        ChordWishes wishes;
        wishes.way = way;
        if (sameChords(withFoundChords(learned, before, wishes), before))
            return withFoundChords(learned, after, wishes);
    }
    return std::nullopt;
}

} // namespace harmony
