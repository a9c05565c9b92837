#pragma once

#include "core/pattern/pattern.h"

namespace pattern {

// A shape as an arranger types it: "1 5 8 10 8", "1-5-8-10-8 (4-3-2-1-2)", "1-5+8", "1~5~8"
// for a roll, "1-low5" for a fifth below the root. Read by patternFrom and then looked at as a
// teacher would: one to eight notes, and fingers that a hand can have. Two notes of one placing
// have the higher finger number on the lower string; only a marked crossing, a slide, or the
// same finger moved along is otherwise. Fingers that she gives are part of the name: "1-5-8
// (4-3-1)". Faults: BadPattern, PatternTooLong, PatternFingers, each with the note.
base::Result<Pattern> ownPatternFrom(std::string_view text);

// The pattern of the book that bears this name; none where it has none.
Pattern const* named(PatternBook const& book, std::string_view name);

// A book with a pattern more, and the name under which it has it. A book that has the notes and
// the fingers already, or the notes where no fingers were given, gets no second one; what the book
// gives for some time signatures only becomes hers and may be used in any.
struct WithOwn {
    PatternBook book;
    std::string name;
};
WithOwn withOwn(PatternBook book, Pattern own);

// The arranger's own patterns of a book, in its order.
std::vector<Pattern> ownPatterns(PatternBook const& book);

} // namespace pattern
