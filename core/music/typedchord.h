#pragma once

#include "core/music/chord.h"

namespace music {

// "N.C.", no chord: the left hand rests from here. A Chord without tones; its root means
// nothing. chordFrom reads it, too.
Chord noChord();
inline bool isNoChord(Chord const& chord) { return chord.tones.empty(); }

// A chord as an arranger types it: what chordFrom reads, and blanks and unicode signs do not
// matter; a lower-case root without another word for its kind is minor: "am7" is Am7, "e" is Em;
// "A-7" is Am7, "F♯m7♭5", "D/f#", "n.c.". Fault: BadChord with the text as detail.
base::Result<Chord> typedChordFrom(std::string_view text);

} // namespace music
