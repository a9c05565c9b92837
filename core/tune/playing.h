#pragma once

#include "core/base/list.h"
#include "core/tune/indices.h"
#include "core/tune/tune.h"

#include <vector>

namespace tune {

// One bar as it is played, repeats and endings followed. Pass 1 is the first time through the
// bar.
struct PlayedBar {
    BarIndex bar = 0;
    int pass = 1;
    music::Moment at; // from the first played note, which is at 0
    friend bool operator==(PlayedBar const&, PlayedBar const&) = default;
};

using PlayedBars = base::List<PlayedBarIndex, PlayedBar>;

// One melody pitch as it is played, ties joined.
struct PlayedNote {
    music::Moment at;
    music::Length held;
    music::Pitch pitch;
    PlayedBarIndex playedBar = 0; // where the note begins
    NoteIndex note = 0;
    int ofChord = 0;              // index into Note::pitches
    friend bool operator==(PlayedNote const&, PlayedNote const&) = default;
};

// The tune played out. Notes are ordered by time, then from the lowest pitch.
struct Playing {
    PlayedBars bars;
    std::vector<PlayedNote> notes;
    music::Length total;
    bool jumps = false; // a D.C. or D.S. is followed
};

// Follows repeats, endings, the order of parts, D.C. and D.S. (core/tune/jumps.h). Unrolling is
// bounded (at most 4,000 bars); a tune that would go beyond is played as written once.
Playing played(Tune const& tune);

// One chord as it governs a stretch of one written bar: the frame for one left-hand voicing.
// Chords that last over bar lines give one span a bar.
struct ChordSpan {
    BarIndex bar = 0;
    music::Length at; // from the start of the bar
    music::Length length;
    music::Chord chord;
    std::optional<int> pass; // where this chord stands only one time through
    friend bool operator==(ChordSpan const&, ChordSpan const&) = default;
};

// In written order. Bars before the first chord have none; "first time" and "second time"
// chords give two spans at the same place.
std::vector<ChordSpan> chordSpans(Tune const& tune);

// Whether the span's chord stands on this pass through its bar. Where a repeated part comes
// again, its third pass is a first time and its fourth a second time.
constexpr bool standsOn(std::optional<int> spanPass, int pass)
{
    return !spanPass || *spanPass == (pass - 1) % 2 + 1;
}

} // namespace tune
