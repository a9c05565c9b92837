#pragma once

#include "core/sheet/drawing.h"
#include "core/sheet/musicfont.h"
#include "core/sheet/score.h"
#include "core/sheet/sheet.h"

namespace sheet {

// Sets a score on paper: lines, pages, heading, foot.
Document engraved(Score const& score, MusicFont const& font, SheetStyle const& style);

} // namespace sheet
