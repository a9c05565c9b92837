#pragma once

#include "core/arrange/arrangement.h"
#include "core/notation/notation.h"
#include "core/perform/slowing.h"

#include <string>

namespace files {

// MusicXML 4.0, score-partwise, UTF-8: the same notes, values, beams, ties, fingers, words and
// signs as the printed sheet of that kind. The right hand is voice 1 on the first staff, the
// left hand voice 2 on the second, or on the first where the sheet prints it there. What is
// placed together is a bracket; times through that differ are written out. Lever set-up and
// changes stand as words between the staves, pattern labels as words below the bass. What
// MusicXML has no element for (rhythm, origin, order of parts) is kept as miscellaneous fields.
// A slowing is told in words alone: its many tempos would hold each time through.
// It says who wrote what only where the tune does, and no date, so that the same arrangement
// gives the same bytes.
std::string musicXml(arrange::Arrangement const& arrangement, notation::Kind kind,
                     perform::Slowing slowing = {});

} // namespace files
