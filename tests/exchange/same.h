#pragma once

#include "core/tune/tune.h"

#include <string>

// Whether two tunes say the same music: bars, notes with ties, graces and tuplets, chords,
// keys, meters, repeats, endings, parts, tempo and title. Places, spellings of chord symbols
// where the writer left gaps between beams and where a repeat leaves its opening sign to a
// double bar line do not count.
namespace same {

// What else may differ, for a format that has no room for it.
struct Besides {
    bool splitNotes = false; // a note may come back as several that are tied
    bool marks = false;      // signs over notes
    bool words = false;      // annotations
};

// The tune with every pitch of its notes named the same way for the same sound: what is printed by
// the string that is plucked is then equal to what the tune calls it.
tune::Tune sounding(tune::Tune tune);

// Empty when they are the same, else the first difference, for the reader of a failed test.
std::string difference(tune::Tune const& a, tune::Tune const& b, Besides const& besides = {});

} // namespace same
