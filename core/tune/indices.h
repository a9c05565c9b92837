#pragma once

#include "core/base/index.h"

namespace tune {

struct Bar;
struct Note;
struct PlayedBar;
using BarIndex = base::Index<Bar>;             // into Tune::bars
using NoteIndex = base::Index<Note>;           // into Bar::notes
using PlayedBarIndex = base::Index<PlayedBar>; // into Playing::bars

} // namespace tune
