#pragma once

#include "core/tune/chordorigin.h"

#include <optional>
#include <vector>

namespace tune {

// A place where a chord may begin: a bar and how far into it.
struct ChordPlace {
    BarIndex bar = 0;
    music::Length at;
    friend auto operator<=>(ChordPlace const&, ChordPlace const&) = default;
};

// The chord that sounds at a place on the first time through, and where it begins in that bar;
// none where the hand rests.
struct ChordHere {
    music::Chord chord;
    ChordPlace from;      // in the same bar
    music::Length length; // to the next chord or the bar's end
    ChordOrigin origin = ChordOrigin::Written;
    bool begins = true; // a mark stands at `from`; else the chord is carried into the bar
};
std::optional<ChordHere> chordHere(Tune const& tune, ChordPlace place);

// Edits of chords. Each answers a new tune; bars that are not edited keep the chords they had,
// also where those were carried in from the bar that is edited. Places outside the tune change
// nothing. Chords that are put in are of origin Set.

// From this place to the next chord of the bar. A chord for one time through alone is replaced.
Tune withChord(Tune tune, ChordPlace place, music::Chord const& chord);

// The chord that begins at the place is taken out: the one before it goes on.
Tune withoutChord(Tune tune, ChordPlace place);

// The chord that sounds at the place begins anew there: two strokes of the hand.
Tune withChordSplit(Tune tune, ChordPlace place);

// The change of chord at the place moves by `by`, over the bar line if it must. None where
// another change is in the way, or the tune ends.
std::optional<Tune> withChangeMoved(Tune tune, ChordPlace place, music::Length by);

// Bars with the same notes as this one, itself among them.
std::vector<BarIndex> barsAlike(Tune const& tune, BarIndex bar);

// The chord at this place in every bar with the same notes.
Tune withChordEverywhere(Tune tune, ChordPlace place, music::Chord const& chord);

// The chords of some bars, bar by bar, to be put elsewhere; the first begins with the chord
// that is carried into it.
using ChordRow = std::vector<std::vector<ChordMark>>;
ChordRow chordRow(Tune const& tune, BarIndex firstBar, BarIndex lastBar);

// Those chords in as many bars from this one on, as far as the tune goes; what lies behind the
// end of a shorter bar is left out.
Tune withChordRow(Tune tune, BarIndex firstBar, ChordRow const& row);

} // namespace tune
