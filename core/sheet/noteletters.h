#pragma once

#include "core/sheet/helps.h"
#include "core/sheet/notesetting.h"
#include "core/sheet/pen.h"

namespace sheet {

// The ink of a note by its string.
Ink inkOf(music::Letter letter, Helps const& helps);
// Whether its head bears its letter.
bool bearsLetter(music::Letter letter, Helps const& helps);

// A notehead, its letter in it where it bears one.
void drawHead(Pen& pen, SetNote const& note, SetHead const& head, Point at, Helps const& helps);

} // namespace sheet
