#pragma once

#include "core/tune/playing.h"

#include <vector>

namespace tune {

// A bar made from a written one.
struct MadeBar {
    Bar bar;
    BarIndex written = 0; // of the tune it was made from
    int firstNote = 0; // of that bar's notes, so many are left out before its first one
};

using MadeBars = base::List<BarIndex, MadeBar>;

// The last whole bars of a tune as they are played, so many or all there are, free of repeats,
// endings, parts and verses; what is tied or slurred beyond them ends there. Before them stands
// what leads into them: the pick-up of their section, or, where the tune begins with a pick-up,
// the notes that fill its place in the bar before. Chords that last into the phrase stand at
// its beginning.
MadeBars lastPhrase(Tune const& tune, Playing const& playing, int bars);

// The bar as it is played on one pass: no signs of repeats, no endings, no words of a way back,
// and the chords of that pass alone.
Bar asPlayed(Bar bar, int pass);

// Notes cut off, or the last one lengthened, so that the bar lasts so long; what a tuplet would
// be cut through stays whole, and then the bar is left as it is.
Bar lasting(Bar bar, music::Length length);

// The chord in force where a written bar begins, on one pass; none: none.
std::optional<music::Chord> chordEntering(std::vector<ChordSpan> const& spans, BarIndex bar,
                                          int pass);

} // namespace tune
