#pragma once

#include "core/pattern/pattern.h"

#include <string>
#include <string_view>

namespace pattern {

// Every way to lay a pattern on a span of a bar of this meter, best known first: the rhythms
// that the book has for this meter and span; else those it has for a whole bar of that length
// with the same beat (half a bar of 4/4 goes like a bar of 2/4). Where the book has none there
// is one all the same: notes on the beats, or on halves (thirds) of beats where the beats are
// too few (quarters for a shape of the arranger's own), the last one ringing on; what does not
// fit is left out, last notes first. Notes that the pattern plucks together stay together.
// Never empty for a pattern with notes.
std::vector<Rhythm> rhythmsFor(PatternBook const& book, Pattern const& pattern,
                               music::Meter meter, music::Length span);

// Whether a rhythm can carry a pattern: it is made for as many notes, keeps together what the
// pattern plucks together, and plucks all notes at once only where the pattern is a block.
bool fits(Rhythm const& rhythm, Pattern const& pattern);

// The name of a rhythm for the reader, in the language in use; what is stored and compared is
// the name itself.
std::string rhythmWords(std::string_view name);

} // namespace pattern
