#pragma once

#include "core/base/result.h"
#include "core/pattern/pattern.h"
#include "core/sheet/papers/exercise.h"
#include "core/sheet/sheet.h"
#include "core/tune/pagewords.h"

#include <vector>

namespace sheet {

// What a teacher hands out: chosen patterns in one key.
struct HandoutWish {
    harp::Harp harp;
    harp::HandModel hand;
    harp::Level level;
    pattern::PatternBook book;
    music::Key key;
    std::vector<pattern::Pattern> patterns; // at least one
    std::vector<music::Meter> meters;       // empty: two that suit each pattern
    tune::PageWords words; // of the teacher's; an empty title names the patterns
};

// Two meters in which a pattern is at home, 4/4 and 6/8 before others; one where it has no
// second.
std::vector<music::Meter> handoutMeters(pattern::Pattern const& pattern);

// The chords of the eight bars to practise: they begin and close on the first of the triads.
std::vector<music::Chord> practiceChords(std::vector<Triad> const& triads);

// A page a pattern: its string picture, the shape on the triads of the key, the same as music
// in two meters, eight bars to practise, and empty staves [trade-6]. Faults: KeyBeyondTuning,
// NothingPlayable where a pattern is wider than the harp.
base::Result<Document> handout(HandoutWish const& wish, MusicFont const& font,
                               SheetStyle const& style);

} // namespace sheet
